import { type ConvertedAmplitude, convertAmplitude } from "../amplitude/index";
import { inPlace, withParameters } from "../core/index";
import { linearType, type ReadingTypeText } from "../reading/index";
import { quantities } from "../units/index";
import { vectorAnswer } from "./answer";
import { withinTurn } from "./degrees";
import { vectorOf } from "./parse-vector";
import type { Vector, VectorAnswer } from "./vector";

/**
 * A vector in another type. Where the quantity changes, the phase turns: velocity leads displacement by 90 degrees and
 * acceleration by 180, so the lag of displacement is that of velocity and 90 degrees.
 *
 * @param to - what it shall be written in, such as `"mm/s pk"`; no level
 * @throws {@link VeladisError} `not-a-sine` for a true peak, `out-of-range` for a level, and as {@link parseVector} and
 *   `convertAmplitude`
 * @example
 * ```ts
 * import { convertVector, formatVector } from "veladis/vector";
 *
 * const casing = convertVector("4 mm/s pk ∠ 30° at 1x of 5400 r/min", "um pp");
 * formatVector(casing); // => "14.1 um pp ∠ 120° at 1x of 5400 r/min"
 * casing.assumed; // => ["one-frequency"]
 * ```
 */
export function convertVector(vector: string | Vector, to: ReadingTypeText): VectorAnswer {
  return withParameters({ to, vector }, () => {
    return convertedVector(vectorOf(vector), to);
  });
}

/** As {@link convertVector}, of a vector that was checked. */
export function convertedVector(vector: Vector, to: string): VectorAnswer {
  const { quantity, type } = inPlace({ parameter: "to" }, () => linearType(to));
  const amplitude: ConvertedAmplitude = convertAmplitude(vector.amplitude, type);
  const leads = 90 * (quantities[quantity] - quantities[vector.amplitude.quantity]);
  return vectorAnswer({ ...vector, amplitude, phase: withinTurn(vector.phase - leads) });
}
