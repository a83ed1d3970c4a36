import { findDetector } from "../detectors/index";
import { findUnit } from "../units/index";

/** True for words that name a reading type: a unit and a detector, or a level with its reference. */
export function namesReading(text: string): boolean {
  if (/^dB re[:f]? \S/i.test(text)) return true;
  const words = text.split(" ");
  for (let at = 1; at < words.length; at++) {
    if (findDetector(words.slice(at).join(" ")) !== undefined)
      return findUnit(words.slice(0, at).join(" ")) !== undefined;
  }
  return false;
}
