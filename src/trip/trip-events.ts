import type { Assumption, Step } from "../reading/index";

/** What can happen to a trip channel. */
export const tripEvents = /* @__PURE__ */ Object.freeze({
  timing: "the level reached the threshold and the on-delay began",
  "rode out": "the on-delay started over before it had run",
  trip: "the output set",
  clear: "the output cleared by itself",
  reset: "the output was reset by hand",
  "reset refused": "a reset by hand was refused",
  start: "the machine was started and the start-up windows began anew",
  "bypass on": "new trips were blocked",
  "bypass off": "new trips were allowed again",
  "power lost": "the device lost its power",
  "power back": "the device has power again",
  fault: "the sensor signal failed",
  "fault over": "the sensor signal is good again",
  "above range": "the signal is above the range of its loop and counts as a level above every threshold",
  "in range": "the signal is within the range of its loop again",
} as const);

/** The name of something that can happen: a key of {@link tripEvents}. */
export type TripEventName = keyof typeof tripEvents;

/** Something that happened. */
export interface TripEvent {
  /** Seconds on the clock of the logic. */
  readonly time: number;
  readonly event: TripEventName;
  /** Level at the time, in the unit of the threshold; above the range of its loop at least this; null without a signal. */
  readonly level: number | null;
  /** Why it happened, where there is more than one way. */
  readonly cause?: "level" | "sensor fault" | "above range";
  /** Why a reset was refused, or why the signal counts as failed where it is not gone. */
  readonly reason?: string;
  /** What was assumed in the threshold and in the levels up to this one; left out where nothing was. */
  readonly assumed?: readonly Assumption[];
  /** The steps to the level, where a run was given levels in another unit than the threshold's. */
  readonly history?: readonly Step[];
}
