import { significant } from "../reading/index";
import type { ProposedSetpoint } from "./proposal";

/** What the rules allow, in words; `at most ...` where the machine runs above it all. */
export function rangeText({ range: [lowest, highest] }: ProposedSetpoint): string {
  const most = significant(highest, 4);
  return lowest < highest ? `${significant(lowest, 4)} to ${most}` : `at most ${most}`;
}
