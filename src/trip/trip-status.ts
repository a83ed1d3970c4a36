import { type RelaySettings, type RelayStatus, relayNow, type TripRules } from "../device/index";
import type { Assumption } from "../reading/index";
import type { TripEvent } from "./trip-events";
import { factorNow, isBlockedByFault, isInhibited, isSet, type TripState, timeOf } from "./trip-state";

/** What a trip channel is doing, in one word; the first that holds. */
export const tripStates = /* @__PURE__ */ Object.freeze({
  "no power": "the device has no power",
  tripped: "the output is set and the level is not below the reset level",
  latched: "the output stays set although the level is below the reset level: a reset by hand is accepted",
  clearing: "the output is set, the level is below the reset level, the off-delay runs",
  "sensor fault": "there is no good signal, and the channel is held as it was",
  bypassed: "new trips are blocked",
  inhibited: "new trips are inhibited after a start",
  timing: "the level is up and the on-delay runs",
  normal: "the level is below the threshold",
} as const);

/** The word for what a trip channel is doing: a key of {@link tripStates}. */
export type TripStateName = keyof typeof tripStates;

/** State and contact after a step. */
export interface TripStatus extends RelayStatus {
  /** Seconds on the clock of the logic. */
  readonly time: number;
  readonly state: TripStateName;
  /** What the signal is; above the range of its loop the true level is not known and taken as above every threshold. */
  readonly signal: TripState["signal"];
  /** Whether a level above the threshold would lead to a trip at present. */
  readonly protecting: boolean;
  /** What happened in this step, in order. */
  readonly events: readonly TripEvent[];
  /** What was assumed in threshold, reset level and all levels so far. */
  readonly assumed: readonly Assumption[];
}

/** The word for what the channel is doing. */
function stateName(rules: TripRules, state: TripState): TripStateName {
  if (!state.powered) return "no power";
  const blockedByFault = isBlockedByFault(rules, state);
  if (isSet(state)) {
    if (state.phase === "clearing") return "clearing";
    const below = state.signal === "good" && state.level < rules.resetAt * factorNow(rules, state);
    return below && rules.latching ? "latched" : "tripped";
  }
  if (blockedByFault) return "sensor fault";
  if (state.bypassed) return "bypassed";
  if (isInhibited(rules, state)) return "inhibited";
  return state.phase === "timing" ? "timing" : "normal";
}

/** State and contact of a channel. */
export function statusOf(
  rules: TripRules,
  relay: RelaySettings,
  state: TripState,
  events: readonly TripEvent[],
): TripStatus {
  const blocked = !state.powered || state.bypassed || isInhibited(rules, state) || isBlockedByFault(rules, state);
  return {
    time: timeOf(state),
    state: stateName(rules, state),
    signal: state.signal,
    ...relayNow(relay, isSet(state), state.powered),
    protecting: !blocked,
    events,
    assumed: state.assumed,
  };
}
