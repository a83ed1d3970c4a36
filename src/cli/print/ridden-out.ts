import type { TripEvent } from "../../trip/index";

/** What an on-delay rode out, and what it had left. */
export interface RiddenOut {
  /** Times that the level was up and fell again before the delay had run; one that is up at the end is none. */
  readonly times: number;
  /** The longest of them in s; null for none. */
  readonly longest: number | null;
  /** How much longer it could have lasted without a trip, in s; null for none, and where there was a trip. */
  readonly margin: number | null;
}

/**
 * What an on-delay rode out.
 *
 * @param events - of a run with excursions
 */
export function riddenOut(events: readonly TripEvent[], onDelay: number): RiddenOut {
  let [times, longest, began] = [0, -1, Number.NaN];
  let hasTripped = false;
  const note = (time: number): void => {
    times++;
    longest = Math.max(longest, time - began);
    began = Number.NaN;
  };
  for (const { time, event } of events) {
    if (event === "timing") began = time;
    else if (event === "rode out") note(time);
    else if (event === "trip") {
      hasTripped = true;
      began = Number.NaN;
    } else if (event === "power lost") began = Number.NaN;
  }
  if (times === 0) return { times, longest: null, margin: null };
  return { times, longest, margin: hasTripped ? null : onDelay - longest };
}
