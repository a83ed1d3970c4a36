import { convertAmplitude } from "../amplitude/index";
import { requireText, shown, splitNumeral, VeladisError, withParameters } from "../core/index";
import { type FrequencyText, hertz } from "../frequency/index";
import {
  type Amplitude,
  hasPlusMinus,
  ownHistory,
  PLUS_MINUS,
  parseAmplitude,
  requireTolerance,
  type Step,
  type Uncertainty,
  writtenIn,
  writtenValue,
} from "../reading/index";
import { type Coverage, hasCoverage, withoutCoverage } from "./coverage";
import { requireOwnUncertainty } from "./require-own-uncertainty";
import { isTwoSided, requireOneSided, type Stated, statedBehind, uncertaintyFrom, uncertaintyNote } from "./stated";
import { byInterval, statedInterval } from "./stated-interval";

const FORM = 'a reading with its uncertainty, such as "4.9 ± 0.3 mm/s rms (k=2) at 25 ± 0.5 Hz"';

const TOLERANCE = 'a frequency with its tolerance, such as "25 ± 0.5 Hz" or "1500 r/min ± 1 %"';

/** Beyond any reading a person writes. */
const LONGEST = 200;

/** `(4.9 ± 0.3) mm/s rms` without its brackets. */
function withoutBrackets(text: string): string {
  const [whole = "", within = ""] = /^\(([^()]*)\)(?=\s*[^\s\d(])/.exec(text) ?? [];
  return hasPlusMinus(within) ? within + text.slice(whole.length) : text;
}

/** A text taken apart at its plus-minus sign, if it may have one, with its coverage factor apart. */
export function halves(
  text: string,
  reading: string,
  isKnown = false,
  expected = FORM,
): [before: string, behind: string | undefined, coverage: Coverage | undefined] {
  const [rest, coverage] = withoutCoverage(text);
  const [before = "", behind, ...more] = rest.split(PLUS_MINUS);
  if (more.length > 0 || (behind === undefined ? coverage !== undefined : isKnown)) {
    throw new VeladisError("syntax", { expected, received: shown(reading), parameter: "reading" });
  }
  return [before.trim(), behind?.trim(), coverage];
}

/** `4.9` and `0.3 mm/s rms`: the unit behind both is that of the number, and the amount is in it, in % or in dB. */
export function sharedUnit(before: string, stated: Stated): [reading: string, stated: Stated] {
  const [digits, type] = splitNumeral(before);
  if (digits === "" || type !== "") return [before, stated];
  const [, sign = "", rest = ""] = /^(%|dB(?!\s+re))?\s*(.*)$/i.exec(stated.unit) ?? [];
  return [`${before} ${rest}`, { ...stated, unit: sign }];
}

/** The amount in what the reading is written in, or in dB. */
function amountIn(reading: Amplitude, { amount, digits, unit }: Stated): { amount: number; isDecibels: boolean } {
  if (/^dB$/i.test(unit)) return { amount, isDecibels: reading.level === undefined };
  if (reading.level !== undefined && unit !== "") {
    throw new VeladisError("wrong-type", {
      expected: "an uncertainty of a level in dB, such as ± 0.5 dB",
      received: shown(`± ${digits} ${unit}`),
    });
  }
  if (unit === "%") return { amount: (reading.value * amount) / 100, isDecibels: false };
  if (unit === "") return { amount, isDecibels: false };
  const own = parseAmplitude(`${digits} ${unit}`);
  if (own.quantity !== reading.quantity || own.detector !== reading.detector || own.level !== undefined) {
    throw new VeladisError("wrong-type", {
      expected: `an uncertainty in ${writtenIn(reading)}, % or dB`,
      received: shown(`± ${digits} ${unit}`),
    });
  }
  return { amount: convertAmplitude(own, writtenIn(reading)).value, isDecibels: false };
}

/** The uncertainty of a reading, by what was stated behind it. */
export function uncertaintyOn(reading: Amplitude, stated: Stated): Uncertainty | undefined {
  const { amount, isDecibels } = amountIn(reading, stated);
  if (reading.level === undefined && !isDecibels && amount > reading.value) {
    throw new VeladisError("out-of-range", {
      expected: `an uncertainty of at most the reading, ${writtenValue(reading)} ${writtenIn(reading)}`,
      received: shown(`± ${stated.digits}${stated.unit === "" ? "" : ` ${stated.unit}`}`),
    });
  }
  // what it is listed beside may be in another unit
  const unit = stated.unit !== "" ? stated.unit : reading.level === undefined ? writtenIn(reading) : "dB";
  return uncertaintyFrom(amount, { ...stated, unit }, isDecibels);
}

/** A frequency with its tolerance: `25 ± 0.5 Hz`, `1500 r/min ± 1 %`. */
export function uncertainHertz(text: string, reading: string): [hertz: number, uncertainty: Uncertainty | undefined] {
  const [before, behind, k] = halves(text, reading);
  if (behind === undefined) return [hertz(before as FrequencyText), undefined];
  const [written, stated] = sharedUnit(before, statedBehind(behind, k));
  const hz = hertz(written as FrequencyText);
  if (/^dB$/i.test(stated.unit)) throw new VeladisError("syntax", { expected: TOLERANCE, received: shown(text) });
  // 2x 1500 r/min ± 10 r/min may mean the speed or twice it
  if (stated.unit !== "%" && /^[^a-z]*x/i.test(written)) {
    throw new VeladisError("missing-unit", {
      expected: "a tolerance of an order of a speed in %, such as 2x 1500 r/min ± 1 %",
      received: shown(text),
    });
  }
  // an amount without a unit of its own is in that of the frequency
  const inUnit = stated.unit === "" ? splitNumeral(written)[1] : stated.unit;
  const amount =
    stated.unit === "%"
      ? (hz * stated.amount) / 100
      : stated.amount === 0
        ? 0
        : hertz(`${stated.digits} ${inUnit}` as FrequencyText);
  const uncertainty = uncertaintyFrom(amount, { ...stated, unit: inUnit }, false);
  requireTolerance(hz, uncertainty);
  return [hz, uncertainty];
}

/** A reading with what is known of its uncertainty written into its history; as it is where nothing is. */
function stateInHistory(
  reading: Amplitude,
  uncertainty: Uncertainty | undefined,
  hertzUncertainty: Uncertainty | undefined,
): Amplitude {
  const told = [
    ...(uncertainty === undefined ? [] : [uncertaintyNote(uncertainty)]),
    ...(hertzUncertainty === undefined ? [] : [`frequency ${uncertaintyNote(hertzUncertainty)}`]),
  ];
  if (told.length === 0) return reading;
  const { hertz: hz, history = [] } = reading;
  // what was written behind it, such as "(sine)", is a part of how it was given
  const [said] = history;
  const step: Step = Object.freeze({
    does: "given",
    value: writtenValue(reading),
    type: writtenIn(reading),
    ...said,
    ...(hz !== undefined && { hertz: hz }),
    ...(uncertainty !== undefined && { uncertainty }),
    ...(hertzUncertainty !== undefined && { hertzUncertainty }),
    note: [...(said?.note === undefined ? [] : [said.note]), ...told].join("; "),
  });
  return Object.freeze({ ...reading, history: ownHistory([step]) });
}

/** A reading with an uncertainty that was stated beside it. */
export function withStated(reading: Amplitude, stated: Stated): Amplitude {
  return stateInHistory(reading, uncertaintyOn(reading, stated), undefined);
}

/** True for a text that states an uncertainty, well or badly: by ±, two sides, a coverage factor or a 95 % interval. */
export function isStated(text: string): boolean {
  return hasPlusMinus(text) || isTwoSided(text) || hasCoverage(text) || statedInterval(text) !== null;
}

/**
 * The reading that a text says, with its uncertainty and that of its frequency; without them as {@link parseAmplitude}.
 *
 * An uncertainty is `±` (or `+/-`) and an amount in the unit of the reading, in `%` of it or in `dB`, with its coverage
 * factor in brackets, `(k=2)`. Without a coverage factor it is a bound: all within is equally likely, so that the
 * standard uncertainty is the bound over root 3 (JCGM 100:2008, 4.3.7), and the history says so. It stays with the
 * history of the reading through every conversion, and comes out by {@link uncertaintyOf}.
 *
 * `95 % within 0.248 to 9.56`, as {@link formatUncertain} writes a skewed answer, is read by its wider side.
 *
 * A `±` behind the frequency in `%` or without a unit is the frequency's only where the reading has one of its own; else
 * it may be either's, and is refused.
 *
 * @param reading - e.g. `"4.9 ± 0.3 mm/s rms (k=2) at 25 ± 0.5 Hz"`, `"0.25 in/s pk ± 5 % (k=3)"`,
 *   `"95 ± 0.5 dB re 1e-9 m/s"`
 * @returns an amplitude, whose first step has `uncertainty` and `hertzUncertainty`
 * @throws {@link VeladisError} `negative`, `not-finite`, `out-of-range` for a coverage factor below 1 and for an
 *   uncertainty above the reading, `wrong-type` for one that is in another quantity or detector, `syntax`, and as
 *   {@link parseAmplitude}
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 * import { formatUncertain, parseUncertain } from "veladis/uncertainty";
 *
 * const reading = parseUncertain("4.9 ± 0.3 mm/s rms (k=2)");
 * formatUncertain(reading); // => "4.90 ± 0.30 mm/s rms (k=2)"
 * formatUncertain(convertAmplitude(reading, "in/s rms")); // => "0.193 ± 0.012 in/s rms (k=2)"
 * parseUncertain("4.9 ± 0.3 mm/s rms").history?.[0]?.note;
 * // => "± 0.3 mm/s rms, taken as a bound with equal chance within"
 * parseUncertain("4.9 ± -0.3 mm/s rms"); // throws negative
 * ```
 */
export function parseUncertain(reading: string): Amplitude {
  return withParameters({ reading }, () => {
    const given = requireText(reading, FORM, { parameter: "reading" }).trim();
    if (given.length > LONGEST)
      throw new VeladisError("syntax", { expected: FORM, received: shown(reading), parameter: "reading" });
    const written = withoutBrackets(given);
    if (!isStated(written)) return parseAmplitude(written);
    requireOneSided(written);
    const [subject = "", at, ...more] = written.split(/\sat(?:\s|$)|@/i);
    if (more.length > 0)
      throw new VeladisError("syntax", { expected: FORM, received: shown(reading), parameter: "reading" });
    const ends = statedInterval(subject);
    const [before, behind, k] = halves(ends === null ? subject : subject.replace(ends[0], ""), reading, ends !== null);
    if (at !== undefined && ends === null && behind === undefined) {
      const [frequency, amount, coverage] = halves(at, reading);
      const isShared = splitNumeral(frequency)[1] === "";
      if (amount !== undefined && !isShared) requireOwnUncertainty(before, frequency, statedBehind(amount, coverage));
    }
    const [hz, hertzUncertainty] = at === undefined ? [undefined, undefined] : uncertainHertz(at, reading);
    const [plain, stated] = behind === undefined ? [before, undefined] : sharedUnit(before, statedBehind(behind, k));
    const bare = parseAmplitude(plain);
    const known = hz === undefined ? bare : Object.freeze({ ...bare, hertz: hz });
    const own = ends === null ? stated && uncertaintyOn(bare, stated) : byInterval(bare, ends);
    return stateInHistory(known, own, hertzUncertainty);
  });
}
