import { finiteResult, withParameters } from "../core/index";
import { kilogramMetres, unbalanceIn } from "./mass";

/**
 * An unbalance in another unit.
 *
 * @param unbalance - e.g. `"1200 g·mm"`
 * @param unit - e.g. `"oz·in"`
 * @throws {@link VeladisError} `missing-option`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { convertUnbalance } from "veladis/protection";
 *
 * convertUnbalance("16205 g·mm", "oz·in").toFixed(1); // => "22.5"
 * ```
 */
export function convertUnbalance(unbalance: string, unit: string): number {
  return withParameters({ unbalance, unit }, () => finiteResult(unbalanceIn(kilogramMetres(unbalance), unit)));
}
