import {
  inPlace,
  requireGiven,
  requireKnownOptions,
  requireNonNegative,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import type { Detector } from "../detectors/index";
import { type Frequency, hertz } from "../frequency/index";
import type { Quantity, UnitSpelling } from "../units/index";
import type { Amplitude } from "./amplitude";
import { checkedSteps } from "./checked-steps";
import { requireCrestFactor } from "./crest-factor";
import { type ParsedType, parsedType } from "./parsed-type";
import { linearOf } from "./scaled";
import type { Step } from "./step";
import type { LevelType } from "./types";
import type { Uncertainty } from "./uncertainty";

/** A reading as data, as a form, a row of a table or a message holds it. */
export interface AmplitudeData {
  /** Zero or more in `unit`, or any level in dB. */
  readonly value: number;
  /** In any spelling; of a level, `"dB"` with its reference: `"dB re 1 nm/s"`. */
  readonly unit: UnitSpelling | LevelType | (string & {});
  /** In any spelling; a level may leave it out, since it is one of an RMS value. */
  readonly detector?: Detector | (string & {});
  /** That of the unit; another one is refused. */
  readonly quantity?: Quantity;
  /** The frequency of the vibration, if it is known. */
  readonly at?: Frequency | (string & {});
  /** Peak over RMS of this vibration, 1 or more, if it is known. */
  readonly crestFactor?: number;
  /** How well the value is known: the uncertainty of a step. */
  readonly uncertainty?: Uncertainty;
}

const keys: Readonly<Record<keyof AmplitudeData, true>> = /* @__PURE__ */ Object.freeze({
  value: true,
  unit: true,
  detector: true,
  quantity: true,
  at: true,
  crestFactor: true,
  uncertainty: true,
});

const UNIT = 'a unit such as "mm/s" or "dB re 1 nm/s"';

/** The type that a unit and a detector make; a refusal says which of the two it is about. */
function typeOfParts(unit: string, detector: string | undefined): ParsedType {
  try {
    return parsedType(detector === undefined ? unit : `${unit} ${detector}`);
  } catch (error) {
    if (!VeladisError.is(error)) throw error;
    throw Object.assign(error, { parameter: "data", option: /detector/.test(error.code) ? "detector" : "unit" });
  }
}

/**
 * A reading made of data: the same frozen amplitude that {@link parseAmplitude} makes of a text, with nothing glued together.
 *
 * @throws {@link VeladisError} `unknown-option` for a key that it does not have, `wrong-quantity` for a quantity that is not
 *   the unit's, `not-a-number`, `not-finite`, `negative`, `not-positive`, `out-of-range`, and as {@link readingType} and
 *   {@link hertz}
 * @example
 * ```ts
 * import { amplitude } from "veladis";
 *
 * amplitude({ value: 0.25, unit: "in/s", detector: "pk", at: "1500 r/min" });
 * // => { value: 0.25, unit: "in/s", detector: "pk", quantity: "velocity", hertz: 25 }
 * amplitude({ value: 95, unit: "dB re 1 nm/s" }).level; // => { decibels: 95, re: "1 nm/s" }
 * amplitude({ value: 7.1, unit: "mm/s", detector: "rms", quantity: "displacement" }); // throws wrong-quantity
 * ```
 */
export function amplitude(data: AmplitudeData): Amplitude {
  const form = 'a reading as data such as { value: 0.25, unit: "in/s", detector: "pk" }';
  const { value, unit, detector, quantity, at, crestFactor, uncertainty } = requireKnownOptions(data, keys, {
    what: "a part of a reading as data",
    form,
    place: { parameter: "data" },
  });
  const place = (option: keyof AmplitudeData) => ({ parameter: "data", option });
  const written = requireText(requireGiven(unit, UNIT, place("unit")), UNIT, place("unit"));
  const type = typeOfParts(
    written,
    detector === undefined ? undefined : requireText(detector, 'a detector such as "rms"', place("detector")),
  );
  if (quantity !== undefined && quantity !== type.quantity) {
    throw new VeladisError("wrong-quantity", {
      expected: `the quantity ${type.quantity}, as the unit ${type.unit} says`,
      received: shown(quantity),
      ...place("quantity"),
    });
  }
  const { type: as, reference } = type;
  const hz = at === undefined ? undefined : inPlace(place("at"), () => hertz(at as Frequency));
  if (reference === 0) requireNonNegative(value, "a value of zero or more", place("value"));
  const linear = reference === 0 ? value : inPlace(place("value"), () => linearOf(value, reference));
  const level = reference !== 0 && { level: Object.freeze({ decibels: value, re: `${reference} ${type.unit}` }) };
  const crest = crestFactor !== undefined && {
    crestFactor: requireCrestFactor(crestFactor, place("crestFactor")),
  };
  const step: Step = { does: "given", value, type: as, ...(hz !== undefined && { hertz: hz }), ...crest };
  const way = uncertainty !== undefined && {
    history: inPlace(place("uncertainty"), () => checkedSteps([{ ...step, uncertainty, note: uncertainty?.stated }])),
  };
  const { unit: plain, detector: by, quantity: whose } = type;
  return Object.freeze({
    value: linear,
    unit: plain,
    detector: by,
    quantity: whose,
    hertz: hz,
    ...level,
    ...crest,
    ...way,
  });
}
