import { VeladisError } from "../core/index";
import type { Scheme } from "./scheme";

/**
 * Refuses a scheme whose limits are informative: ranges for orientation are no criterion.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireCriterion({ informative, standard, edition }: Scheme): void {
  if (!informative) return;
  throw new VeladisError("out-of-range", {
    expected: "a scheme whose limits are a criterion",
    received: `${standard} (${edition}), whose ranges are informative: for orientation, never a verdict or a setpoint`,
  });
}
