import { parseMachine } from "../severity/index";
import { limitsOfApiShaft } from "./api-shaft-limits";
import { limitsOfMachine } from "./machine-limits";
import { limitsOfSite } from "./own-limits";
import type { ProposalRequest } from "./proposal-request";
import { runningSpeed } from "./running-speed";
import { limitsOfScheme } from "./scheme-limits";
import type { SetpointLimits } from "./setpoint-limits";

/** The limits to set from: those of the site, of the scheme that is named, or of those that the machine's facts admit. */
export function limitsOfRequest(
  { limits: own, scheme, schemes, machine, rule }: ProposalRequest,
  type: string,
  hertz: number | undefined,
): SetpointLimits | null {
  if (rule !== undefined) return limitsOfApiShaft(typeof machine === "string" ? parseMachine(machine) : machine, type);
  if (own !== undefined) return limitsOfSite(own, type, hertz);
  if (scheme === "none") return null;
  const question = { type, running: runningSpeed(machine) };
  if (scheme !== undefined) return limitsOfScheme({ ...question, scheme, machine });
  return machine === undefined ? null : limitsOfMachine(machine, question, schemes);
}
