import { linearTypeOf } from "../amplitude/index";
import { VeladisError, withParameters } from "../core/index";
import { format } from "../reading/index";
import { vectorAnswer } from "./answer";
import { combined, requireOneOrder } from "./combined";
import { convertedVector } from "./convert-vector";
import { oneName } from "./names";
import { twoVectors } from "./two-vectors";
import type { Vector, VectorAnswer } from "./vector";

/** What is taken for granted of the two sensors. */
const SENSORS: readonly string[] = [
  "both sensors stand at one place and call motion in one sense positive; otherwise the casing is taken off and not added",
  "the phase of the casing is that of its motion: what its sensor and filters turn is taken off already",
];

/**
 * The vibration of a shaft in space: that of the shaft against its casing, read by a proximity probe, and that of the casing
 * itself, added as vectors. The casing may be a displacement, a velocity or an acceleration; it is brought to displacement
 * with its phase.
 *
 * `assumedFacts` say what was not stated: the direction, where not both name it, the sense of the sensors, the mark.
 *
 * @param relative - the displacement of the shaft against the casing
 * @param casing - that of the casing, at the same order and speed, in the same direction
 * @returns the sum, in unit and detector of `relative`; it is by no single probe, so it names none
 * @throws {@link VeladisError} `wrong-frequency`, `wrong-quantity` for a relative vibration that is no displacement,
 *   `out-of-range` for two directions and a casing less a slow roll, `missing-fact` where one has no phase, and as {@link parseVector}
 * @example
 * ```ts
 * import { formatVector, shaftAbsolute } from "veladis/vector";
 *
 * const relative = "40 um pp ∠ 60° at 1x of 5400 r/min, direction vertical";
 * const casing = "4 mm/s pk ∠ 30° at 1x of 5400 r/min, direction vertical";
 * formatVector(shaftAbsolute(relative, casing)); // => "48.6 um pp ∠ 74.6° at 1x of 5400 r/min, direction vertical"
 * ```
 */
export function shaftAbsolute(relative: string | Vector, casing: string | Vector): VectorAnswer {
  return withParameters({ relative, casing }, () => {
    const [shaft, housing] = twoVectors({ relative, casing });
    if (shaft.amplitude.quantity !== "displacement") {
      throw new VeladisError("wrong-quantity", {
        expected: "a displacement of the shaft against its casing, as a proximity probe reads it",
        received: format(shaft.amplitude),
      });
    }
    if (housing.slowRollSpeed !== undefined) {
      throw new VeladisError("out-of-range", {
        expected: "a casing as its sensor read it, which sees no run-out of the shaft",
        received: "one less a slow roll",
      });
    }
    requireOneOrder(shaft, housing);
    const assumed = oneName(shaft.direction, housing.direction, "direction");
    const moved = convertedVector(housing, linearTypeOf(shaft.amplitude));
    const { probe: _, ...sum } = combined(shaft, moved, 180, "casing added: its opposite taken off");
    const direction = shaft.direction ?? housing.direction;
    return vectorAnswer({
      ...sum,
      ...(direction !== undefined && { direction }),
      assumedFacts: [...sum.assumedFacts, ...assumed, ...SENSORS],
    });
  });
}
