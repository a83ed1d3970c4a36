import { requireChoice, requireKnownKeys, requireList, shown, VeladisError } from "../core/index";
import { TIME_TOLERANCE, type TripRules } from "../device/index";
import { assumptionNames } from "../reading/index";
import { requireFirstOut } from "./stored-first-out";
import {
  factorNow,
  initialState,
  isBlockedByFault,
  isInhibited,
  isSet,
  remaining,
  type TripState,
  timeOf,
} from "./trip-state";

const words: Readonly<Record<string, readonly unknown[]>> = /* @__PURE__ */ Object.freeze({
  phase: ["normal", "timing", "set", "clearing"],
  signal: ["none", "good", "fault", "above range"],
});

const ASSUMED = "a snapshot of a trip logic, with what was assumed";

/** A rule that every state keeps which a run with its settings has left. */
type Rule = readonly [field: keyof TripState, is: string, holds: (state: TripState, rules: TripRules) => boolean];

/** How far a delay may have run: not to its end, for there it has run out. */
function isRunning(limit: number, timer: number): boolean {
  return timer >= 0 && remaining(limit, timer) > 0;
}

/** Whether the level has been held against the limits since power-up or the last start: a start alone does not do so. */
function isTaken(rules: TripRules, state: TripState): boolean {
  return state.sinceStart > 0 && !isBlockedByFault(rules, state);
}

/** What the limits are multiplied with; right after a start, or while a fault holds the channel, 1: it may have been. */
function leastFactor(rules: TripRules, state: TripState): number {
  return isTaken(rules, state) ? factorNow(rules, state) : 1;
}

const rulesOfStates: readonly Rule[] = /* @__PURE__ */ Object.freeze<Rule[]>([
  ["count", "a whole number of steps, 0 or more", ({ count }) => Number.isSafeInteger(count) && count >= 0],
  ["dt", "a time of 0 s or more", ({ dt }) => dt >= 0],
  ["base", "a time on the clock that a number can hold", (state) => Number.isFinite(timeOf(state))],
  ["level", "a level of 0 or more", ({ level }) => level >= 0],
  [
    "sinceStart",
    "a time from 0 s to the end of the start-up windows",
    ({ sinceStart }, { windows }) => sinceStart >= 0 && sinceStart <= windows,
  ],
  [
    "phase",
    "one that a latching output has: it does not clear by itself",
    ({ phase }, { latching }) => phase !== "clearing" || !latching,
  ],
  [
    "timer",
    "a time that the on-delay has run, less than the whole of it",
    ({ phase, timer }, { onDelay }) => phase !== "timing" || isRunning(onDelay, timer),
  ],
  [
    "timer",
    "a time that the off-delay has run, less than the whole of it",
    ({ phase, timer }, { offDelay }) => phase !== "clearing" || isRunning(offDelay, timer),
  ],
  ["timer", "0 s while no delay runs", ({ phase, timer }) => phase === "timing" || phase === "clearing" || timer === 0],
  [
    "phase",
    "normal without power, or set where the output latches",
    ({ powered, phase }, { latching }) => powered || phase === "normal" || (latching && phase === "set"),
  ],
  [
    "signal",
    "good or failed once time has passed",
    (state) => state.signal !== "none" || (timeOf(state) === 0 && state.sinceStart === 0),
  ],
  [
    "phase",
    "normal and no level before the first one",
    ({ signal, phase, level }) => signal !== "none" || (phase === "normal" && level === 0),
  ],
  [
    "phase",
    "no on-delay that runs on a level below the one at which it starts over",
    (state, rules) =>
      state.phase !== "timing" ||
      state.signal !== "good" ||
      state.level >= rules.startOverAt * leastFactor(rules, state),
  ],
  [
    "phase",
    "no on-delay that runs while a start inhibits new trips",
    (state, rules) => state.phase !== "timing" || !isTaken(rules, state) || !isInhibited(rules, state),
  ],
  [
    "phase",
    "no on-delay that runs while the signal is bad",
    ({ phase, signal }, { sensorFault }) => phase !== "timing" || signal !== "fault" || sensorFault !== "bad",
  ],
  [
    "phase",
    "no output that clears by itself and stays set on a level below the reset level",
    (state, rules) =>
      state.phase !== "set" ||
      rules.latching ||
      state.signal !== "good" ||
      state.level >= rules.resetAt * leastFactor(rules, state),
  ],
  [
    "phase",
    "no off-delay that runs above the reset level",
    ({ phase, signal, level }, { resetAt, factor, sensorFault }) =>
      phase !== "clearing" ||
      (signal === "good" ? level < resetAt * factor : signal === "fault" && sensorFault !== "alarm"),
  ],
]);

function refuse(field: string, is: string, received: unknown): never {
  throw new VeladisError("out-of-range", {
    expected: `a snapshot of a trip logic, with ${field}: ${is}`,
    received: shown(received),
    option: field,
  });
}

/** By how much of float noise, in s, two times of a channel may be apart that are one. */
export function clockNoise(state: TripState, { onDelay, windows }: TripRules): number {
  return TIME_TOLERANCE * Math.max(Math.abs(timeOf(state)), state.dt, onDelay, windows);
}

/** A stored state whose fields are what they have to be, each for itself. */
function requireFields(from: TripState): TripState {
  const fresh = initialState([]);
  for (const [field, value] of Object.entries(fresh)) {
    const given: unknown = from?.[field as keyof TripState];
    const fits = typeof given === typeof value && (typeof given !== "number" || Number.isFinite(given));
    if (fits && (words[field] ?? [given]).includes(given)) continue;
    throw new VeladisError("wrong-type", {
      expected: `a snapshot of a trip logic, with ${field}`,
      received: shown(given),
      option: field,
    });
  }
  requireKnownKeys(from, fresh, "a part of a snapshot of a trip logic");
  for (const one of requireList(from.assumed, ASSUMED, { option: "assumed" }))
    requireChoice(one, assumptionNames, ASSUMED, { option: "assumed" });
  return { ...from, assumed: [...from.assumed] };
}

/**
 * A stored state, copied, refused when no run with these settings could have left it: it would trip late or never.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `out-of-range`, with the field
 */
export function requireState(from: TripState, rules: TripRules): TripState {
  const state = requireFields(from);
  for (const [field, is, holds] of rulesOfStates) {
    if (!holds(state, rules)) refuse(field, is, state[field]);
  }
  if (!isSet(state)) {
    if (state.firstOut !== null) refuse("firstOut", "null while the output is not set", state.firstOut);
    return state;
  }
  state.firstOut = requireFirstOut(state.firstOut, rules);
  const now = timeOf(state);
  if (!(state.firstOut.time <= now + clockNoise(state, rules))) {
    refuse("firstOut", `a trip at ${now} s or before, the time on the clock`, `${state.firstOut.time} s`);
  }
  return state;
}
