import { finiteResult, inPlace, requirePositive, shown, VeladisError } from "../core/index";
import { type Amplitude, amplitudeOf } from "../reading/index";
import { quantities } from "../units/index";
import { convertAmplitude } from "./convert-amplitude";

const WHAT = "an amplitude above zero";

/**
 * The frequency at which one sine wave has both amplitudes, in hertz: the crossover of a displacement limit and an
 * acceleration limit, for example.
 *
 * @param one - a reading of one quantity, above zero
 * @param other - a reading of another quantity, above zero
 * @throws {@link VeladisError} `wrong-quantity` when both are of one quantity, `not-positive`, and as
 *   {@link parseAmplitude}
 * @example
 * ```ts
 * import { sineFrequency } from "veladis/signal";
 *
 * sineFrequency("5 mm pp", "6 g pk").toFixed(1); // => "24.4"
 * ```
 */
export function sineFrequency(one: string | Amplitude, other: string | Amplitude): number {
  const [first, second] = Object.entries({ one, other }).map(([parameter, reading]) =>
    inPlace({ parameter }, () => {
      const amplitude = amplitudeOf(reading);
      requirePositive(amplitude.value, WHAT, { option: "value" });
      return amplitude;
    }),
  ) as [Amplitude, Amplitude];
  const steps = quantities[second.quantity] - quantities[first.quantity];
  if (steps === 0) {
    throw new VeladisError("wrong-quantity", {
      expected: `another quantity than ${first.quantity} to compare with`,
      received: shown(`${second.value} ${second.unit} ${second.detector}`),
      parameter: "other",
    });
  }
  const atOneHertz = convertAmplitude({ ...first, hertz: undefined }, `${second.unit} ${second.detector}`, {
    at: { hertz: 1 },
  });
  const ratio = second.value / atOneHertz.value;
  const power = ratio ** Math.sign(steps);
  return finiteResult(Math.abs(steps) === 1 ? power : Math.sqrt(power));
}
