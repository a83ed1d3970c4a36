import type { TripRules } from "../device/index";
import type { TripEvent, TripEventName } from "./trip-events";
import type { TripState } from "./trip-state";

/** A trip channel at work: its settings, what it remembers, and where its events go. */
export interface Channel {
  readonly rules: TripRules;
  readonly state: TripState;
  readonly emit: (event: TripEvent) => void;
}

/** Records an event of a channel, and the first-out with it. */
export function recordEvent(
  { state, emit }: Channel,
  time: number,
  event: TripEventName,
  detail?: Pick<TripEvent, "cause" | "reason">,
): void {
  const level = state.signal === "good" ? state.level : null;
  const { assumed } = state;
  const bare = { time, event, level };
  const happened: TripEvent =
    detail === undefined && assumed.length === 0
      ? bare
      : { ...bare, ...detail, ...(assumed.length > 0 && { assumed }) };
  if (event === "trip") state.firstOut = happened;
  if (event === "clear" || event === "reset") state.firstOut = null;
  emit(happened);
}
