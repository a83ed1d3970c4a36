import type { Amplitude } from "../reading/index";
import type { RelaySettings } from "./relay";

/** When the on-delay starts over: the moment the level falls below the threshold, or below the reset level. */
export const timerResets = /* @__PURE__ */ Object.freeze(["below threshold", "below reset level"] as const);

/**
 * What a sensor fault does.
 *
 * - `alarm`: it counts as a level above the threshold, through the same on-delay;
 * - `hold`: output and timers stand still while it lasts;
 * - `bad`: the output stays, the on-delay starts over, and a voter is told that the channel is bad.
 */
export const sensorFaults = /* @__PURE__ */ Object.freeze(["alarm", "hold", "bad"] as const);

/** Settings of one measured channel. What changes when a machine trips has no default. */
export interface ChannelSettings {
  /** The setpoint with its unit and detector, e.g. `"9 mm/s rms"`; the output sets at this level or above. */
  readonly threshold: string | Amplitude;
  /** How far below the threshold the level must fall to clear: `"8 %"` of it, or an amount such as `"0.4 mm/s rms"`. */
  readonly hysteresis: string;
  /** Seconds that the level must stay up before the output sets; 0 for none. */
  readonly onDelay: number;
  /** When the on-delay starts over. */
  readonly timerResets: (typeof timerResets)[number];
  /** What a sensor fault does. */
  readonly sensorFault: (typeof sensorFaults)[number];
  /** Seconds that the level must stay below the reset level before a non-latching output clears; 0 if not given. */
  readonly offDelay?: number;
  /** Seconds from power-up and from each start in which no trip is set; 0 if not given. */
  readonly startInhibit?: number;
  /** Factor on threshold and reset level for some seconds from power-up and from each start. */
  readonly multiplier?: { readonly factor: number; readonly seconds: number };
}

/** All settings of a {@link TripLogic}: the channel and the relay behind it. */
export interface TripSettings extends ChannelSettings, RelaySettings {}
