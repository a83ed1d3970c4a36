import {
  cached,
  parseNumeral,
  requirePositive,
  requireText,
  shown,
  splitNumeral,
  symbolsByName,
  unknownName,
  VeladisError,
  type VeladisErrorCode,
} from "../core/index";
import { type Detector, detectors, findDetector, unknownDetector } from "../detectors/index";
import { findUnit, type Quantity, quantities, type UnitSymbol, unitSymbol, units } from "../units/index";
import { levelReferences } from "./references";
import type { ReadingType } from "./types";

/** A reading type as a value: all that parsing, converting and judging need of it. */
export interface ParsedType {
  /** Its plain spelling: `"mm/s rms"`, `"dB re 1 nm/s"`. */
  readonly type: ReadingType;
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  readonly quantity: Quantity;
  /** How many times the quantity is the time derivative of displacement. */
  readonly order: number;
  /** Peak of a sine in SI units, over the reading: `num / den * pi^-pi * sqrt(2)^-rootTwo`. */
  readonly num: number;
  readonly den: number;
  readonly pi: number;
  readonly rootTwo: number;
  /** The RMS value in `unit` that is 0 dB; 0 for a linear type. */
  readonly reference: number;
}

const FORM = 'an amplitude type such as "mm/s rms" or "dB re 1e-9 m/s"';
const LONGEST = 80;

function parsed(unit: UnitSymbol, detector: Detector, reference = 0): ParsedType {
  const { num, den, quantity } = units[unit];
  const sine = detectors[detector];
  return Object.freeze({
    type: reference === 0 ? `${unit} ${detector}` : `dB re ${reference} ${unit}`,
    unit,
    detector,
    quantity,
    order: quantities[quantity],
    num: num * sine.den,
    den: den * sine.num,
    pi: sine.pi,
    rootTwo: sine.rootTwo,
    reference,
  });
}

/** The last words that name a detector, and the words before them that name the unit. */
function linear(words: readonly string[]): ParsedType {
  for (let at = 1; at < words.length; at++) {
    const detector = findDetector(words.slice(at).join(""));
    if (detector !== undefined) return parsed(unitSymbol(words.slice(0, at).join(" ")), detector);
  }
  const all = words.join(" ");
  const last = words.at(-1) as string;
  if (words.length === 1 || findUnit(all) !== undefined) {
    throw new VeladisError("missing-detector", {
      expected: `a detector after the unit, as in "${unitSymbol(all)} rms"`,
      received: shown(all),
      allowed: Object.keys(detectors),
    });
  }
  unitSymbol(all.slice(0, -last.length));
  throw unknownDetector(last);
}

const byName = /* @__PURE__ */ symbolsByName(levelReferences, true);

/** The type of a level, from the words behind "dB". */
function level([re, ...words]: readonly string[], written: string): ParsedType {
  const refusal = (code: VeladisErrorCode): VeladisError =>
    unknownName(code, 'a level of the RMS value with its reference, as in "dB re 1e-9 m/s"', written, [
      byName(),
      levelReferences,
    ]);
  const detector = findDetector(words.at(-1) ?? "");
  if (detector !== undefined) words.pop();
  if (words.length === 0 || !/^re[:f]?$/i.test(re as string)) throw refusal("missing-reference");
  if (detector !== undefined && detector !== "rms") throw refusal("unknown-detector");
  const reference = words.join(" ");
  const name = byName().get(reference.toLowerCase());
  if (name !== undefined) return parsed(levelReferences[name].unit, "rms", levelReferences[name].value);
  const [value, unit] = splitNumeral(reference);
  if (!value || !unit) throw refusal("unknown-reference");
  return parsed(unitSymbol(unit), "rms", requirePositive(parseNumeral(value), "a reference above zero"));
}

/**
 * The reading type that a text names, taken apart. The one parser of reading types; every floor above takes its value.
 *
 * @throws {@link VeladisError} `syntax`, `unknown-unit`, `unknown-detector`, `missing-detector`,
 *   `missing-reference`, `unknown-reference`, `not-positive`
 */
export const parsedType: (type: string) => ParsedType = /* @__PURE__ */ cached((type) => {
  const [first, ...more] = requireText(type, FORM)
    .slice(0, LONGEST)
    .replace(/[()[\]_,]/g, " ")
    .trim()
    .split(/\s+/) as [string, ...string[]];
  if (type.length > LONGEST || first === "")
    throw new VeladisError("syntax", { expected: FORM, received: shown(type) });
  return first.toLowerCase() === "db" ? level(more, type) : linear([first, ...more]);
});

const byUnit = /* @__PURE__ */ cached((unit) => cached((detector) => parsedType(`${unit} ${detector}`)));

/** The linear type of a unit and a detector, each in any of its spellings. */
export function typeOf(unit: string, detector: string): ParsedType {
  return byUnit(unit)(detector);
}
