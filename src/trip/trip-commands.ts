import type { TripRules } from "../device/index";
import { type Emit, note, refusal } from "./trip-advance";
import { isSet, type TripState, timeOf } from "./trip-state";

/** What a person or the plant can tell a trip channel. */
export const tripCommands = /* @__PURE__ */ Object.freeze([
  "reset",
  "start",
  "bypass on",
  "bypass off",
  "power lost",
  "power back",
] as const);

/** The name of a command. */
export type TripCommandName = (typeof tripCommands)[number];

/** A command in a history: what is done, and when on the clock of the logic. */
export interface TripCommand {
  /** Seconds. */
  readonly at: number;
  readonly do: TripCommandName;
}

/** What became of a reset by hand. */
export interface ResetOutcome {
  readonly accepted: boolean;
  /** Why not, when it was refused. */
  readonly reason?: string;
}

/** Clears a latched output, unless the level or the state of the device speaks against it. */
export function resetByHand(rules: TripRules, state: TripState, emit: Emit): ResetOutcome {
  const reason = refusal(rules, state);
  if (reason !== undefined) {
    note(state, timeOf(state), "reset refused", emit, undefined, reason);
    return Object.freeze({ accepted: false, reason });
  }
  state.phase = "normal";
  state.timer = 0;
  note(state, timeOf(state), "reset", emit);
  return Object.freeze({ accepted: true });
}

function loseTimers(state: TripState, latching: boolean): void {
  state.timer = 0;
  if (latching && isSet(state)) state.phase = "set";
  else {
    state.phase = "normal";
    state.firstOut = null;
  }
}

/** Carries a command out; a command that changes nothing leaves no event. */
export function command(rules: TripRules, state: TripState, name: TripCommandName, emit: Emit): void {
  if (name === "reset") {
    resetByHand(rules, state, emit);
    return;
  }
  if (name === "start") state.sinceStart = 0;
  else if (name === "bypass on" || name === "bypass off") {
    if (state.bypassed === (name === "bypass on")) return;
    state.bypassed = name === "bypass on";
  } else {
    if (state.powered === (name === "power back")) return;
    state.powered = name === "power back";
    state.sinceStart = 0;
    if (!state.powered) loseTimers(state, rules.latching);
  }
  note(state, timeOf(state), name, emit);
}
