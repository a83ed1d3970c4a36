import type { TripRules } from "../device/index";
import type { TripEvent, TripEventName } from "./trip-events";
import type { TripState } from "./trip-state";

/** A trip channel at work: its settings, what it remembers, and where its events go. */
export interface Channel {
  readonly rules: TripRules;
  readonly state: TripState;
  readonly emit: (event: TripEvent) => void;
}

/** An event as data; written out case by case, since a history may hold millions. */
function eventOf(state: TripState, time: number, event: TripEventName, why: string | undefined): TripEvent {
  const level = state.signal === "good" || state.signal === "above range" ? state.level : null;
  const bare: TripEvent =
    why === undefined
      ? { time, event, level }
      : event === "trip"
        ? { time, event, level, cause: why as NonNullable<TripEvent["cause"]> }
        : { time, event, level, reason: why };
  return state.assumed.length === 0 ? bare : { ...bare, assumed: state.assumed };
}

/**
 * Records an event of a channel, and the first-out with it.
 *
 * @param why - the cause of a trip, or the reason of a refused reset or of a fault
 */
export function recordEvent(channel: Channel, time: number, event: TripEventName, why?: string): void {
  const { state } = channel;
  const happened = eventOf(state, time, event, why);
  if (event === "trip") state.firstOut = happened;
  else if (event === "clear" || event === "reset") state.firstOut = null;
  channel.emit(happened);
}

/** Keeps the first-out as it is now: the event itself is handed out, and may be written over by whoever has it. */
export function keepFirstOut(state: TripState): void {
  const { firstOut } = state;
  if (firstOut !== null && !Object.isFrozen(firstOut)) state.firstOut = Object.freeze({ ...firstOut });
}
