import { significant } from "../reading/index";
import type { KnownCheckResult } from "../verification/index";

/** A tolerance as an amount: one for both sides, or the two of one in decibels, which differ: `+0.593, -0.559`. */
export function toleranceText({
  tolerance,
  toleranceBelow,
}: Pick<KnownCheckResult, "tolerance" | "toleranceBelow">): string {
  const above = significant(tolerance);
  const below = significant(toleranceBelow ?? tolerance);
  return above === below ? above : `+${above}, -${below}`;
}

/** Whether the uncertainty is larger than the tolerance, so that by the rule no error passes, not even none. */
export function passesNothing({
  rule,
  uncertainty,
  tolerance,
  toleranceBelow = tolerance,
  acceptance: { below, above },
}: Pick<KnownCheckResult, "rule" | "uncertainty" | "tolerance" | "toleranceBelow" | "acceptance">): boolean {
  const isBeyond = uncertainty !== null && uncertainty > Math.min(tolerance, toleranceBelow);
  return rule === "guard band" && isBeyond && below === 0 && above === 0;
}
