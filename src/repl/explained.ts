import { explain } from "../amplitude/index";
import { VeladisError } from "../core/index";
import type { Proposal, ProposedSetpoint } from "../setpoints/index";
import { isAmplitude, isList, isReport, kindText, type Value } from "./value";

function hasHistory(data: unknown): data is object {
  return typeof data === "object" && data !== null && "history" in data && Array.isArray(data.history);
}

function isProposal(data: unknown): data is Pick<Proposal, "alarm" | "trip"> {
  return typeof data === "object" && data !== null && "alarm" in data && "trip" in data;
}

/** A setpoint by its name: the steps to what was asked, to what is stored and to where it resets, which are one way. */
function setpointText(name: string, setpoint: ProposedSetpoint | null): string {
  return `${name}\n${setpoint === null ? "none" : explain(setpoint.reset).text}`.replaceAll("\n", "\n  ");
}

/**
 * The arithmetic that led to a value, a line a step; of several, one block each, and of proposed setpoints
 * one for the alarm and one for the trip.
 *
 * @throws {@link VeladisError} `wrong-type` for a value that keeps no steps, such as a number
 */
export function explanationText(value: Value): string {
  if (isList(value) && value.length > 0) return value.map(explanationText).join("\n\n");
  if (isAmplitude(value)) return explain(value).text;
  if (typeof value === "object" && hasHistory(value)) return explain(value).text;
  if (isReport(value) && isProposal(value.data)) {
    return [setpointText("alarm", value.data.alarm), setpointText("trip", value.data.trip)].join("\n");
  }
  if (isReport(value) && hasHistory(value.data)) return explain(value.data).text;
  throw new VeladisError("wrong-type", {
    expected: "an amplitude to explain, or what was made of one; numbers keep no steps",
    received: kindText(value),
  });
}
