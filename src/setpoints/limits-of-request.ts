import { parseMachine } from "../severity/index";
import { limitsOfApiShaft } from "./api-shaft-limits";
import { limitsOfMachine } from "./machine-limits";
import { limitsOfSite } from "./own-limits";
import type { ProposalRequest } from "./proposal-request";
import { type RunningSpeed, runningSpeed } from "./running-speed";
import { limitsOfScheme } from "./scheme-limits";
import type { SetpointLimits } from "./setpoint-limits";

/** What of a request says which limits to set from. */
export type LimitsRequest = Pick<ProposalRequest, "limits" | "scheme" | "schemes" | "machine" | "rule">;

/**
 * The limits to set from: those of the site, of the scheme that is named, or of those that the machine's facts admit.
 *
 * @param hertz - the frequency of setpoints and limits, where it is one
 * @param running - the speed by which limits of other quantities are carried
 */
export function limitsOfRequest(
  { limits: own, scheme, schemes, machine, rule }: LimitsRequest,
  type: string,
  hertz: number | undefined,
  running: RunningSpeed | undefined = runningSpeed(machine),
): SetpointLimits | null {
  if (rule !== undefined) return limitsOfApiShaft(typeof machine === "string" ? parseMachine(machine) : machine, type);
  if (own !== undefined) return limitsOfSite(own, type, hertz);
  if (scheme === "none") return null;
  const question = { type, running };
  if (scheme !== undefined) return limitsOfScheme({ ...question, scheme, machine });
  return machine === undefined ? null : limitsOfMachine(machine, question, schemes);
}
