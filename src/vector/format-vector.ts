import { requireKnownOptions, withParameters } from "../core/index";
import { type FormatOptions, format } from "../reading/index";
import { vectorOf } from "./parse-vector";
import { orderText, phaseText, SLOW_ROLL, speedText } from "./texts";
import { uncertainTexts } from "./uncertain-texts";
import type { Vector } from "./vector";

/**
 * A vector as it is written and as {@link parseVector} reads it back: amplitude, phase lag, order and speed, then probe and
 * direction if it has them, and that slow roll was taken off it.
 *
 * Where anything has an uncertainty, amplitude and phase are written with their ± (k=2): two digits of that, the value to the
 * same place. Where the draws lie unevenly, their 95 % interval stands in place of ±, and where the phase is not determined
 * those words stand for it, and the length of which nothing may be left is written as `95 % at most`: none is read back. How well the speed is known stands behind it in %.
 *
 * @param options - `digits` of amplitude and phase and of their ±, 1 to 17; 3 if not given. With 17 what is read back is the
 *   same to the last bit. The speed is always written whole.
 * @throws {@link VeladisError} `out-of-range` for the digits, `unknown-option`, and as {@link parseVector}
 * @example
 * ```ts
 * import { differenceOfVectors, formatVector } from "veladis/vector";
 *
 * const answer = differenceOfVectors("40 um pp ∠ 60° at 1x of 5400 r/min", "30 um pp ∠ 330° at 1x of 5400 r/min");
 * formatVector(answer); // => "50.0 um pp ∠ 96.9° at 1x of 5400 r/min"
 * formatVector(answer, { digits: 5 }); // => "50.000 um pp ∠ 96.87° at 1x of 5400 r/min"
 * formatVector("3 ± 0.1 mil pp (k=2) ∠ 45° ± 3° (k=2) at 1x of 1480 r/min");
 * // => "3.00 ± 0.10 mil pp (k=2) ∠ 45.0 ± 3.0° (k=2) at 1x of 1480 r/min"
 * ```
 */
export function formatVector(vector: string | Vector, options: Pick<FormatOptions, "digits"> = {}): string {
  return withParameters({ options, vector }, () => {
    const { digits } = requireKnownOptions(
      options,
      { digits: true },
      { what: "an option of a format", form: "options such as { digits: 4 }" },
    );
    const whole = vectorOf(vector);
    const { amplitude, phase, probe, direction, slowRollSpeed } = whole;
    const behind = [
      probe && `, probe ${probe}`,
      direction && `, direction ${direction}`,
      slowRollSpeed && `, ${SLOW_ROLL} ${speedText(slowRollSpeed)}`,
    ];
    const own = format(amplitude, digits === undefined ? {} : { digits });
    const told = uncertainTexts(whole, digits) ?? {
      amplitude: own,
      phase: phaseText(phase, digits ?? 3),
      orderOfSpeed: orderText(whole),
    };
    return `${told.amplitude} ∠ ${told.phase} at ${told.orderOfSpeed}${behind.filter(Boolean).join("")}`;
  });
}
