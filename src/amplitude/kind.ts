import { memo, numeral, positive, shown, splitNumeral, text, VeladisError } from "../core/index";
import { type Detector, detectors, findDetector, nearestDetectors } from "../detectors/index";
import { findUnit, type Quantity, quantities, type UnitSymbol, unitSymbol, units } from "../units/index";
import { type LevelReferenceName, levelReferences } from "./references";

/** A reading type taken apart: what a conversion needs of it. */
export interface Kind {
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

function kind(unit: UnitSymbol, detector: Detector, reference = 0): Kind {
  const { num, den, quantity } = units[unit];
  const { sine } = detectors[detector];
  return {
    unit,
    detector,
    quantity,
    order: quantities[quantity],
    num: num * sine.den,
    den: den * sine.num,
    pi: sine.pi,
    rootTwo: sine.rootTwo,
    reference,
  };
}

/** The last words that name a detector, and the words before them that name the unit. */
function linearKind(words: readonly string[], written: string): Kind {
  for (let at = Math.max(1, words.length - 4); at < words.length; at++) {
    const detector = findDetector(words.slice(at).join(" "));
    if (detector !== undefined) return kind(unitSymbol(words.slice(0, at).join(" ")), detector);
  }
  const unit = words.slice(0, -1).join(" ");
  const last = words[words.length - 1] as string;
  if (findUnit(words.join(" ")) !== undefined || unit === "") {
    if (findUnit(last) === undefined) unitSymbol(last);
    throw new VeladisError("missing-detector", {
      expected: `a detector after the unit, as in "${words.join(" ")} rms"`,
      received: shown(written),
      allowed: Object.keys(detectors),
    });
  }
  unitSymbol(unit);
  throw new VeladisError("unknown-detector", {
    expected: "a detector after the unit",
    received: shown(last),
    didYouMean: nearestDetectors(last),
    allowed: Object.keys(detectors),
  });
}

const byName: ReadonlyMap<string, LevelReferenceName> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.keys(levelReferences) as LevelReferenceName[]).map((name) => [name.toLowerCase(), name]),
);

/** The kind of a level, from the words behind "dB". */
function levelKind(words: readonly string[], written: string): Kind {
  const rest = words.slice(/^re[:f]?$/i.test(words[0] ?? "") ? 1 : words.length);
  const last = findDetector(rest[rest.length - 1] ?? "");
  if (last !== undefined && last !== "rms") {
    throw new VeladisError("unknown-detector", {
      expected: "a level of the RMS value, as decibel levels are defined",
      received: shown(written),
      allowed: ["rms"],
    });
  }
  const reference = (last === undefined ? rest : rest.slice(0, -1)).join(" ");
  const name = byName.get(reference.toLowerCase());
  if (name !== undefined) return kind(levelReferences[name].unit, "rms", levelReferences[name].value);
  const [value, unit] = splitNumeral(reference) ?? [];
  if (value === undefined || unit === undefined || unit === "") {
    throw new VeladisError(reference === "" ? "missing-reference" : "unknown-reference", {
      expected: 'a level with its reference, as in "dB re 1e-9 m/s"',
      received: shown(written),
      allowed: Object.keys(levelReferences).map((known) => `dB re ${known}`),
    });
  }
  return kind(unitSymbol(unit), "rms", positive(numeral(value), "a reference above zero"));
}

/**
 * The kind that a reading type names.
 *
 * @throws {@link VeladisError} `syntax`, `unknown-unit`, `unknown-detector`, `missing-detector`,
 *   `missing-reference`, `unknown-reference`, `not-positive`
 */
export const kindOf: (type: string) => Kind = /* @__PURE__ */ memo((type) => {
  const written = text(type, FORM);
  if (written.length > LONGEST) throw new VeladisError("syntax", { expected: FORM, received: shown(type) });
  const words = written
    .replace(/[()[\]_,]/g, " ")
    .trim()
    .split(/\s+/);
  if (/^dB$/i.test(words[0] as string)) return levelKind(words.slice(1), written);
  if (words[0] === "") throw new VeladisError("syntax", { expected: FORM, received: shown(type) });
  return linearKind(words, written);
});
