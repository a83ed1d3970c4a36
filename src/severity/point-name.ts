import { lazily } from "../core/index";
import { findDetector } from "../detectors/index";
import { findUnit } from "../units/index";

/** Units of what a sensor or a loop gives, and words and signs of a sentence or a state: none names a point. */
const foreign = /* @__PURE__ */ lazily(
  () =>
    /^(?:m[av](?:dc|ac)?|vdc|volts?|hz|r\/min|rpm|of|to|by|at|was|is|were|least|most|over|under|above|below|about|approx\.?|than|less|more|from|between|not|no|fault|failed|failure|bad|ol|overload|over-?range|nan|inf|infinity|n\/a|null|error|err|off)$/i,
);

/** Words that may follow a number within a name: an end, a direction, a letter or a tag, a part of the machine. */
const BEHIND_NUMBER =
  /^(?:n?de|fe|[io]b|[io]d|[a-z]|[a-z]+-[a-z]|free|drive|driven|non|non-?drive|inboard|outboard|end|side|top|bottom|left|right|horizontal|vertical|axial|radial|bearing|brg|pump|fan|motor|gearbox|gear|shaft|stage|pinion|wheel|rotor|generator|turbine|engine|compressor|blower)(?:[-_]?\d{1,2}[a-z]?|[-_][a-z])?$/i;

function isUnit(word: string, before: string | undefined): boolean {
  // bearing G, gear m: a letter alone is a unit behind a number alone
  if (word.length === 1 && !/^\d/.test(before ?? "")) return false;
  if (/^v$/i.test(word)) return false;
  return findUnit(word) !== undefined || findDetector(word) !== undefined;
}

/**
 * True where a name of a point holds what belongs to a reading: a unit, a sign, a word of a sentence or a state, a number
 * beside another number, or one before a word that names no place: `DE-H 22 mA of 0 to`, `DE-H > `, `DE-H fault`.
 */
export function holdsReading(name: string): boolean {
  if (/[<>~=±≤≥≈?%°"]/.test(name)) return true;
  const words = name.split(/[\s:]+/).filter((word) => word !== "");
  return words.some((word, i) => {
    const before = words[i - 1];
    const plain = word.replace(/^[([]+|[)\].]+$/g, "");
    if (/^[-–—+/&|.…]+$/.test(word) && /^\d/.test(before ?? "")) return true;
    if (/^[-+−–]\d/.test(word) || foreign().test(plain) || isUnit(plain, before)) return true;
    // 4mA, 3mm/s
    if (/^\d[\d.,]*(?!d?e$)[a-z%µμ/²]{2,}\d?$/i.test(plain) && !BEHIND_NUMBER.test(plain.replace(/^[\d.,]+/, "")))
      return true;
    return i > 0 && /^\d+$/.test(before ?? "") && !BEHIND_NUMBER.test(plain);
  });
}
