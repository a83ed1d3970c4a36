import { ownHistory, type Step } from "../reading/index";
import type { LevelConversion } from "./level-conversion";
import type { TripEvent } from "./trip-events";

/** The steps to a level in the unit of the threshold, from the level as it was written, but for the noise of its digits. */
function stepsTo(level: number, { factor, ofOne }: LevelConversion): readonly Step[] {
  const [given, ...more] = ofOne as readonly [Step, ...Step[]];
  const written = Number((level / factor).toPrecision(15));
  const value = (of: Step, number: number): Step => Object.freeze({ ...of, value: number });
  return ownHistory([value(given, written), ...more.map((step) => value(step, level))]);
}

/**
 * Events of a run, each with the steps to its level where that was written in another unit than the threshold's.
 *
 * @param conversionOf - how the levels that an event tells of were converted; undefined for none
 */
export function eventsWithHistory<Event extends TripEvent | (Omit<TripEvent, "event"> & { readonly event: string })>(
  events: Event[],
  conversionOf: (event: Event) => LevelConversion | undefined,
): Event[] {
  return events.map((event) => {
    const conversion = conversionOf(event);
    if (event.level === null || conversion === undefined || conversion.ofOne.length === 0) return event;
    const told = { ...event, history: stepsTo(event.level, conversion) };
    return Object.isFrozen(event) ? Object.freeze(told) : told;
  });
}
