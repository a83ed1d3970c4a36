import type { TripRules } from "../device/index";
import type { TripEvent, TripEventName } from "./trip-events";
import type { TripState } from "./trip-state";

/** A trip channel at work: its settings, what it remembers, and where its events go. */
export interface Channel {
  readonly rules: TripRules;
  readonly state: TripState;
  readonly emit: (event: TripEvent) => void;
}

/** Why something happened, where there is more than one way. */
type Detail = Pick<TripEvent, "cause" | "reason">;

/** An event as data; written out case by case, since a history may hold millions. */
function eventOf({ signal, level: last, assumed }: TripState, time: number, event: TripEventName, detail?: Detail) {
  const level = signal === "good" ? last : null;
  if (assumed.length > 0) return { time, event, level, ...detail, assumed };
  if (detail === undefined) return { time, event, level };
  const { cause, reason } = detail;
  return cause === undefined ? { time, event, level, reason: reason as string } : { time, event, level, cause };
}

/** Records an event of a channel, and the first-out with it. */
export function recordEvent({ state, emit }: Channel, time: number, event: TripEventName, detail?: Detail): void {
  const happened: TripEvent = eventOf(state, time, event, detail);
  // a copy: what is handed out may be written over by whoever has it
  if (event === "trip") state.firstOut = Object.freeze({ ...happened });
  if (event === "clear" || event === "reset") state.firstOut = null;
  emit(happened);
}
