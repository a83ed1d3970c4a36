import { lazily } from "../core/index";
import { findDetector } from "../detectors/index";
import { findUnit } from "../units/index";

/** Units of what a sensor or a loop gives, and words and signs of a sentence or a state: none names a point. */
const foreign = /* @__PURE__ */ lazily(
  () =>
    /^(?:m[av](?:dc|ac)?|vdc|volts?|hz|r\/min|rpm|of|to|by|at|was|is|were|least|most|over|under|above|below|about|approx\.?|than|less|more|from|between|not|fault|failed|failure|bad|ol|overload|over-?range|ovld?|overflow|clip(?:ped|ping)?|saturat(?:ed|ion)|pegged|exceed(?:s|ed|ing)?|min(?:imum|\.)?|max(?:imum|\.)?|mindestens|h(?:ö|oe)chstens|war|gain|scale|filter(?:ed)?|unfiltered|stopped|running|idle|coast-?down|run-?up|load|acceleration|velocity|displacement|delta|change|alarm|trip|danger|limit|[x×]\d+|\d+[x×]|nan|inf|infinity|n\/a|null|error|err|off)$/i,
);

/** Words before a number that is no reading but part of a name: a thing that is counted, in any language, longer than an end or a direction. */
const COUNTED = /* @__PURE__ */ lazily(() => /^(?:brg|pos|no\.?|nr\.?|pt|ch|fan|pump|\p{L}{4,})\.?$/iu);

/** A number by itself, as it stands in a name: `3`, `(3)`, `#3`, `3.`, `3e0`. */
const ALONE = /^[([#]*\d+(?:\.|e\d+)?[)\].:]*$/i;

/** An end, behind which a digit numbers a bearing: `DE 1`. */
const END = /^(?:n?de|[io]b)$/i;

/** Words of a direction or an end, behind which no number is part of a name. */
const DIRECTED = /^(?:horizontal|vertical|axial|radial|inboard|outboard|drive|driven|free|side|left|right)(?:ly)?$/i;

/** Words that may follow a number within a name: an end, a direction, a letter or a tag, a part of the machine. */
const BEHIND_NUMBER =
  /^(?:n?de|fe|[io]b|[io]d|[a-z]|[a-z]+-[a-z]|free|drive|driven|non|non-?drive|inboard|outboard|end|side|top|bottom|left|right|horizontal|vertical|axial|radial|bearing|brg|pump|fan|motor|gearbox|gear|shaft|stage|pinion|wheel|rotor|generator|turbine|engine|compressor|blower)(?:[-_]?\d{1,2}[a-z]?|[-_][a-z])?$/i;

/** Where readings of a machine may be taken, or how its support is: facts of the machine, which name no point by themselves. */
const FACT =
  /^(?:on\s+)?(?:the\s+)?(?:bearing\s+)?(?:housings?|shaft|casing|pedestal|rigid|flexible|springs?|absolute|relative)$/i;

/** True for a name that is a fact of the machine: `housing 3.9 mm/s rms` says where the reading was taken, not at which point. */
export function isFactName(name: string): boolean {
  return FACT.test(name.trim());
}

/** Words of a place that is beside the shaft. */
const HOUSED = /\b(?:housings?|casings?|pedestals?)\b/i;

/** True for a name that says that its reading was taken beside the shaft: `bearing housing H`, `casing vertical`. */
export function isHousedName(name: string): boolean {
  return HOUSED.test(name);
}

/** True where a number behind a name may be part of it: `ID fan 1`, `bearing 3`. */
export function isNumbered(name: string): boolean {
  const last = name.split(/[\s:]+/).at(-1) ?? "";
  return COUNTED().test(last) && !DIRECTED.test(last) && last.toLowerCase() !== "reading";
}

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
    if (/^\d$/.test(word) && i === 1 && END.test(before ?? "")) return false;
    if (ALONE.test(word) && i > 0 && (!COUNTED().test(before ?? "") || DIRECTED.test(before ?? ""))) return true;
    return i > 0 && /^\d+$/.test(before ?? "") && !BEHIND_NUMBER.test(plain);
  });
}
