import { hertz } from "../frequency/index";
import { type Amplitude, amplitudeOf } from "./amplitude";
import type { Assumption } from "./assumptions";
import { checkedOptions } from "./checked-options";
import { factorOf } from "./factor";
import { type Pair, pairOf } from "./pair";
import { typeText } from "./reading-type";
import { decibelsOf, scaled } from "./scaled";
import type { ConvertOptions } from "./types";

/** A converted reading, with what was assumed on the way. */
export interface ConvertedAmplitude extends Amplitude {
  readonly assumed: readonly Assumption[];
  /** The crest factor that was stated and used, if one was. */
  readonly crestFactor?: number;
}

function assumedBetween({ from, to, steps }: Pair, crestFactor: number | undefined): Assumption[] {
  const assumed: Assumption[] = [];
  if (steps !== 0) assumed.push("one-frequency");
  if (from.pi !== to.pi || from.rootTwo !== to.rootTwo)
    assumed.push(crestFactor === undefined ? "sine" : "crest-factor");
  return assumed;
}

/**
 * A reading in another type, as data: value, unit, detector, quantity, frequency and what was assumed.
 *
 * The run-time-checked path: both the reading and the type may be texts of unknown content.
 *
 * @param reading - a text as for {@link parseAmplitude}, or what it returned
 * @param to - what it shall be written in, any text that names a reading type
 * @param options - `at`, which stands above the reading's own frequency, and `crestFactor`
 * @throws {@link VeladisError} as {@link parseAmplitude} and {@link convert}
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 *
 * const answer = convertAmplitude("0.25 in/s pk at 1500 r/min", "mil pp");
 * answer.value.toFixed(3); // => "3.183"
 * answer.assumed; // => ["one-frequency"]
 * convertAmplitude("2 g rms", "g pk").assumed; // => ["sine"]
 * convertAmplitude("2 g rms", "g pk", { crestFactor: 4 }).assumed; // => ["crest-factor"]
 * ```
 */
export function convertAmplitude(
  reading: string | Amplitude,
  to: string,
  options?: ConvertOptions,
): ConvertedAmplitude {
  const { at, crestFactor } = checkedOptions(options);
  const amplitude = amplitudeOf(reading);
  const pair = pairOf(`${amplitude.unit} ${amplitude.detector}`, to);
  const after = pair.to;
  const hz = at === undefined ? amplitude.hertz : hertz(at);
  const factor = factorOf(pair, hz === undefined ? undefined : { hertz: hz }, crestFactor);
  const value = scaled(amplitude.value, factor);
  const assumed = Object.freeze(assumedBetween(pair, crestFactor));
  return Object.freeze({
    value,
    unit: after.unit,
    detector: after.detector,
    quantity: after.quantity,
    hertz: hz,
    ...(after.reference !== 0 && {
      level: Object.freeze({
        decibels: decibelsOf(value, after.reference),
        re: typeText(after).slice("dB re ".length),
      }),
    }),
    assumed,
    ...(assumed.includes("crest-factor") && {
      crestFactor: crestFactor as number,
    }),
  });
}
