import { significant } from "../reading/index";
import type { Proposal, ProposedSetpoint } from "./proposal";
import { setpointRules } from "./reason";

/** What the rules allow, in words; `at most ...` where the machine runs above it all. */
export function rangeText({ range: [lowest, highest] }: ProposedSetpoint): string {
  const most = significant(highest, 4);
  return lowest < highest ? `${significant(lowest, 4)} to ${most}` : `at most ${most}`;
}

/** What setpoints are asked for by, as the heading of their column. */
export function askedHeading({ alarm, trip }: Proposal): string {
  const isMultiple = [alarm, trip].map((one) => one?.reasons.includes(setpointRules["multiple of baseline"]) ?? false);
  if (!isMultiple.includes(true)) return "by the rules";
  return isMultiple.includes(false) ? "by rule or multiple" : "by multiple";
}
