import { finiteResult } from "../core/index";
import { relayNow } from "../device/index";
import type { BenchSettings } from "./bench-settings";

/** Position of the contact in words; empty when the relay is not stated. */
export function contactText({ contact, coil }: BenchSettings, output: "healthy" | "tripped" | "without power"): string {
  if (contact === undefined || coil === undefined) return "";
  return `, contact ${relayNow({ contact, coil }, output === "tripped", output !== "without power").contact}`;
}

/** When an output that does not latch clears. */
export function clearsText({ offDelay = 0 }: BenchSettings): string {
  return `the output clears ${offDelay > 0 ? `after ${offDelay} s` : "at once"}`;
}

/** Seconds in which an output that is to set has set: twice the on-delay. */
export function waitOf({ onDelay }: BenchSettings): number {
  return finiteResult(Math.max(2 * onDelay, 2));
}
