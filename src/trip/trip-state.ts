import { TIME_TOLERANCE, type TripRules } from "../device/index";
import type { Assumption } from "../reading/index";
import type { TripEvent } from "./trip-events";

/** All that a trip channel remembers; plain data, so that it can be stored and resumed. */
export interface TripState {
  /** The clock: `base + count * dt`, which gathers no error over many equal steps. */
  base: number;
  count: number;
  dt: number;
  phase: "normal" | "timing" | "set" | "clearing";
  /** Seconds that the on-delay (timing) or off-delay (clearing) has run. */
  timer: number;
  /** Seconds since power-up or the last start, counted as far as a start-up window reaches. */
  sinceStart: number;
  powered: boolean;
  bypassed: boolean;
  signal: "none" | "good" | "fault" | "above range";
  /** The last level that was no fault, in the unit of the threshold; above the range of its loop the end of it. */
  level: number;
  /** The trip that set the present output. */
  firstOut: TripEvent | null;
  /** What was assumed in the threshold, the reset level and the levels so far. */
  assumed: readonly Assumption[];
}

/** The state at power-up, time 0. */
export function initialState(assumed: readonly Assumption[]): TripState {
  return {
    base: 0,
    count: 0,
    dt: 0,
    phase: "normal",
    timer: 0,
    sinceStart: 0,
    powered: true,
    bypassed: false,
    signal: "none",
    level: 0,
    firstOut: null,
    assumed,
  };
}

/** Seconds on the clock. */
export function timeOf({ base, count, dt }: TripState): number {
  return base + count * dt;
}

/** Moves the clock on. */
export function tick(state: TripState, seconds: number): void {
  if (seconds !== state.dt) {
    state.base = timeOf(state);
    state.count = 0;
    state.dt = seconds;
  }
  state.count++;
}

/** Seconds until a timer has run, 0 once it has within the tolerance. */
export function remaining(limit: number, run: number): number {
  const left = limit - run;
  return left <= limit * TIME_TOLERANCE ? 0 : left;
}

/** Whether the output calls for a trip. */
export function isSet({ phase }: TripState): boolean {
  return phase === "set" || phase === "clearing";
}

/** The level that is held against the limits: a fault and a signal above the range of its loop are above all of them. */
export function levelNow({ signal, level }: TripState): number {
  return signal === "fault" || signal === "above range" ? Number.POSITIVE_INFINITY : level;
}

/** What a trip at present is for. */
export function causeOf({ signal }: TripState): NonNullable<TripEvent["cause"]> {
  return signal === "fault" ? "sensor fault" : signal === "above range" ? signal : "level";
}

/** What the thresholds are multiplied with at present. */
export function factorNow(rules: TripRules, state: TripState): number {
  return remaining(rules.multiplied, state.sinceStart) > 0 ? rules.factor : 1;
}

/** Whether new trips are inhibited by a start at present. */
export function isInhibited(rules: TripRules, state: TripState): boolean {
  return remaining(rules.inhibit, state.sinceStart) > 0;
}

/** Whether a sensor fault holds the channel as it was. */
export function isBlockedByFault(rules: TripRules, state: TripState): boolean {
  return state.signal === "fault" && rules.sensorFault !== "alarm";
}
