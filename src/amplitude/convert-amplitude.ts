import { requireGiven, same, VeladisError, withParameters } from "../core/index";
import { requireRelated } from "../detectors/index";
import {
  type Amplitude,
  type Assumption,
  agreedHertz,
  amplitudeOf,
  decibelsOf,
  type Factor,
  type Level,
  madeOfOne,
  type ReadingTypeText,
  type Step,
  scaled,
  typeOf,
  type Unfinished,
} from "../reading/index";
import type { ConvertOptions } from "./convert-options";
import { factorOf } from "./factor";
import { type Pair, pairOf } from "./pair";
import { plainOptions } from "./plain-options";

/** A converted reading: an amplitude that says what was assumed on the whole way to it. */
export interface ConvertedAmplitude extends Amplitude {
  readonly assumed: readonly Assumption[];
}

/** What a conversion can assume: by whether the quantity changes and the detector does, and whether a crest factor was stated. */
const assumedLists: readonly (readonly Assumption[])[] = [
  /* @__PURE__ */ Object.freeze([]),
  /* @__PURE__ */ Object.freeze(["one-frequency"] as const),
  /* @__PURE__ */ Object.freeze(["sine"] as const),
  /* @__PURE__ */ Object.freeze(["one-frequency", "sine"] as const),
  /* @__PURE__ */ Object.freeze(["crest-factor"] as const),
  /* @__PURE__ */ Object.freeze(["one-frequency", "crest-factor"] as const),
];

/** What the conversion of a pair assumes, by a crest factor if one is stated. */
export function assumedBetween({ from, to, steps }: Pair, crestFactor?: number): readonly Assumption[] {
  const related = from.pi !== to.pi || from.rootTwo !== to.rootTwo;
  const ratio = !related ? 0 : crestFactor === undefined ? 2 : 4;
  return assumedLists[ratio + (steps === 0 ? 0 : 1)] as readonly Assumption[];
}

/**
 * What a conversion from one reading type to the other assumes.
 *
 * @throws {@link VeladisError} as {@link readingType}
 */
export function conversionAssumes(from: string, to: string, crestFactor?: number): Assumption[] {
  const pair = pairOf(from, to);
  requireRelated(pair.from.detector, pair.to.detector, crestFactor, pair.steps);
  return [...assumedBetween(pair, crestFactor)];
}

/** The crest factor that the reading itself brings along, where it can be applied: between peak and RMS of one quantity. */
function broughtAlong({ crestFactor }: Amplitude, { from, to, steps }: Pair): number | undefined {
  return steps === 0 && from.pi === to.pi && from.rootTwo !== to.rootTwo ? crestFactor : undefined;
}

/** Refuses a crest factor that is not the one the reading itself brings along: one vibration has one. */
function requireOneCrestFactor(own: number | undefined, stated: number | undefined): void {
  if (own === undefined || stated === undefined || same(own, stated)) return;
  throw new VeladisError("out-of-range", {
    expected: `one crest factor for the reading, which itself says ${Number(own.toPrecision(12))}`,
    received: `${Number(stated.toPrecision(12))} beside it`,
    parameter: "options",
    option: "crestFactor",
  });
}

/**
 * A reading in another type, as data: value, unit, detector, quantity, frequency, and the way it came by: all that was
 * assumed, and the steps, those of the reading and this one.
 *
 * The run-time-checked path: both the reading and the type may be texts of unknown content.
 *
 * @param reading - a text as for {@link parseAmplitude}, or what it returned
 * @param to - what it shall be written in, any text that names a reading type
 * @param options - `at` and `crestFactor`, for a reading that does not say them itself
 * @throws {@link VeladisError} `out-of-range` for an `at` or a `crestFactor` that is not the one that the reading itself
 *   says, and as {@link parseAmplitude} and {@link convert}
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 *
 * const answer = convertAmplitude("0.25 in/s pk at 1500 r/min", "mil pp");
 * answer.value.toFixed(3); // => "3.183"
 * answer.assumed; // => ["one-frequency"]
 * convertAmplitude("2 g rms", "g pk").assumed; // => ["sine"]
 * convertAmplitude("2 g rms", "g pk", { crestFactor: 4 }).assumed; // => ["crest-factor"]
 * convertAmplitude("2 mm/s rms at 50 Hz", "um pp", { at: "1500 r/min" }); // throws out-of-range
 * // what was assumed stays with the answer
 * convertAmplitude(convertAmplitude("2 g rms", "g pk"), "m/s2 pk").assumed; // => ["sine"]
 * ```
 */
export function convertAmplitude(
  reading: string | Amplitude,
  to: ReadingTypeText,
  options?: ConvertOptions,
): ConvertedAmplitude {
  return withParameters({ options, to, reading }, () => {
    const { at, crestFactor } = plainOptions(options);
    const type = requireGiven(to, 'a reading type such as "mm/s rms"', { parameter: "to" });
    return convertChecked(amplitudeOf(reading), type, crestFactor, at);
  });
}

/** What one conversion shares with all others between the same types, at one frequency and by one crest factor. */
export interface Way {
  readonly pair: Pair;
  readonly hertz: number | undefined;
  readonly crestFactor: number | undefined;
  readonly factor: Factor;
  readonly assumed: readonly Assumption[];
}

/** The way between two types; the frequency has passed its checks. */
export function wayBetween(pair: Pair, hertz: number | undefined, crestFactor: number | undefined): Way {
  const isPlain = pair.ofSine && crestFactor === undefined && (hertz !== undefined || pair.steps === 0);
  const at = hertz === undefined ? undefined : { hertz };
  const factor = isPlain ? pair.sine(hertz ?? 1) : factorOf(pair, at, crestFactor);
  return { pair, hertz, crestFactor, factor, assumed: assumedBetween(pair, crestFactor) };
}

/** An amplitude carried by a way, to which parts may still be added. */
export function carriedBy(
  amplitude: Amplitude,
  { pair, hertz, crestFactor, factor, assumed }: Way,
): Unfinished<ConvertedAmplitude> {
  const { unit, detector, quantity, type, reference } = pair.to;
  const value = scaled(amplitude.value, factor);
  const step: Unfinished<Step> = { does: "convert", value, type };
  const answer: Unfinished<Amplitude> = { value, unit, detector, quantity, hertz };
  if (reference !== 0) {
    const level: Level = Object.freeze({ decibels: decibelsOf(value, reference), re: `${reference} ${unit}` });
    step.value = level.decibels;
    answer.level = level;
  }
  if (pair.steps !== 0) step.hertz = hertz as number;
  if (crestFactor !== undefined && assumed.includes("crest-factor")) step.crestFactor = crestFactor;
  if (assumed.length > 0) step.assumed = assumed;
  const { assumed: whole, crestFactor: known, state, history } = madeOfOne(amplitude, step);
  answer.assumed = whole as readonly Assumption[];
  // another quantity has another waveform, so another crest factor
  if (known !== undefined && pair.steps === 0) answer.crestFactor = known;
  if (state !== undefined) answer.state = state;
  answer.history = history as readonly Step[];
  return answer as Unfinished<ConvertedAmplitude>;
}

/** As {@link convertAmplitude}, of an amplitude that has passed its checks: judging holds every reading to them once. */
export function convertChecked(
  amplitude: Amplitude,
  to: string,
  stated?: number,
  at?: ConvertOptions["at"],
): ConvertedAmplitude {
  const pair = pairOf(typeOf(amplitude.unit, amplitude.detector).type, to);
  requireOneCrestFactor(amplitude.crestFactor, stated);
  const crestFactor = stated === undefined ? broughtAlong(amplitude, pair) : stated;
  return Object.freeze(carriedBy(amplitude, wayBetween(pair, agreedHertz(amplitude.hertz, at), crestFactor)));
}
