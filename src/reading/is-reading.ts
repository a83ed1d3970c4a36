import { isAnswered } from "../core/index";
import { parseAmplitude } from "./parse-amplitude";

/** Whether a text is a whole reading, such as `4.1 mm/s rms`. */
export function isReading(text: string): boolean {
  return isAnswered(() => parseAmplitude(text));
}
