import { type Amplitude, amplitudeOf, checkedSteps, historyOf, historyTo, type Step } from "../reading/index";
import { checkedVoltage, isVoltage } from "./signal-voltage";

/** A history that stands in an answer, by the place where it does: `"trip.reset"`, `"steps[2].level"`. */
export type PlacedHistory = readonly [place: string, history: readonly Step[]];

/** Deeper than any answer of the library. */
const DEEPEST = 12;

/** The history of one thing, if it is an amplitude or a voltage or keeps one way. */
export function ownHistoryOf(part: object): readonly Step[] | undefined {
  const { history, value, unit, detector } = part as Partial<Amplitude>;
  const isReading = value !== undefined && unit !== undefined && detector !== undefined;
  if (isReading && isVoltage(part)) return historyTo(value, `${unit} ${detector}`, checkedVoltage(part));
  if (isReading) return historyOf(amplitudeOf(part as Amplitude));
  return Array.isArray(history) && history.length > 0 ? checkedSteps(history) : undefined;
}

/** What two histories have in common of a step, whatever its place in them. */
function keyOf({ does, value, type, note }: Step): string {
  return `${does} ${value} ${type} ${note}`;
}

/** Histories without those that another goes on from, and without what is told already. */
function withoutParts(all: readonly PlacedHistory[]): PlacedHistory[] {
  const passed = new Set(all.flatMap(([, steps]) => steps.slice(0, -1).map(keyOf)));
  const told = new Set<string>();
  return all.filter(([, steps]) => {
    const key = keyOf(steps.at(-1) as Step);
    if (passed.has(key) || told.has(key)) return false;
    told.add(key);
    return true;
  });
}

/**
 * The histories of all amplitudes in an answer that is made of several, each once: one that is a step on the way to
 * another is told there.
 */
export function historiesIn(answer: object): PlacedHistory[] {
  const all: PlacedHistory[] = [];
  const seen = new Set<object>();
  const walk = (part: unknown, place: string, depth: number): void => {
    if (typeof part !== "object" || part === null || ArrayBuffer.isView(part)) return;
    if (seen.has(part) || depth > DEEPEST) return;
    seen.add(part);
    if (Array.isArray(part)) {
      for (const [i, one] of part.entries()) walk(one, `${place}[${i}]`, depth + 1);
      return;
    }
    const own = ownHistoryOf(part);
    if (own !== undefined) all.push([place, own]);
    for (const [key, one] of Object.entries(part)) {
      if (key !== "history") walk(one, place === "" ? key : `${place}.${key}`, depth + 1);
    }
  };
  walk(answer, "", 0);
  return withoutParts(all);
}
