import { finiteResult, inPlace, withParameters } from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { kilogramMetres, kilograms, metres, unbalanceIn } from "./mass";

/** The angular speed of a shaft, in rad/s. */
export function angularSpeed(speed: Frequency): number {
  return inPlace({ parameter: "speed" }, () => finiteResult(2 * Math.PI * hertzOf(speed)));
}

/**
 * The centrifugal force of an unbalance, in N: `U omega²`.
 *
 * @throws {@link VeladisError} `missing-option`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { centrifugalForce } from "veladis/protection";
 *
 * centrifugalForce("1000 g·mm", "3000 r/min").toFixed(1); // => "98.7"
 * ```
 */
export function centrifugalForce(unbalance: string, speed: Frequency): number {
  return withParameters({ speed, unbalance }, () => {
    const omega = angularSpeed(speed);
    return finiteResult(kilogramMetres(unbalance) * omega * omega);
  });
}

/**
 * The unbalance of a mass at a radius, or of a part off its centre, in another unit.
 *
 * @param mass - e.g. `"4 oz"`
 * @param radius - e.g. `"2 in"`
 * @param unit - e.g. `"oz·in"`; `"g·mm"` if not given
 * @throws {@link VeladisError} `missing-option`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { unbalanceOf } from "veladis/protection";
 *
 * unbalanceOf("4 oz", "2 in", "oz·in"); // => 8
 * unbalanceOf("50 lb", "0.001 in", "oz·in").toFixed(2); // => "0.80"
 * ```
 */
export function unbalanceOf(mass: string, radius: string, unit = "g·mm"): number {
  return withParameters({ mass, radius, unit }, () => {
    return finiteResult(unbalanceIn(kilograms(mass) * metres(radius, { parameter: "radius" }), unit));
  });
}
