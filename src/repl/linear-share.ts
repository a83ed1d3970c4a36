import { type Amplitude, isLevelType, linearOf, parsedType, type Step } from "../reading/index";

/** Behind a sum or a difference of one reading with itself: nothing is uncertain about its phase. */
export const ONE_READING = "one reading with itself";

/** The linear value that a step came to, also where it is written as a level; a signal in volts or mA is linear. */
function linearValue({ value, type }: Step): number {
  return isLevelType(type) ? linearOf(value, parsedType(type).reference) : value;
}

/** What a value is multiplied with on the way through a step, so that its parts go along. */
function ratio(step: Step, from: Step): number {
  const before = linearValue(from);
  return before === 0 ? 0 : linearValue(step) / before;
}

/** True for a step that puts readings together as if they rose and fell together. */
export function isInPhase({ does, assumed, note }: Step): boolean {
  if (does !== "sum" && does !== "difference") return false;
  return note === ONE_READING || assumed?.includes("in-phase") === true;
}

/** A reading that went into an amplitude in phase: the step that gave it, and how often it comes in. */
interface Share {
  readonly from: Step;
  readonly times: number;
}

/** The readings that an amplitude was put together of in phase, each once; one that was taken off with a minus. */
export function sharesInPhase({ history = [] }: Amplitude): readonly Share[] {
  const shares = new Map<number, number>();
  const last = history.at(-1);
  if (last !== undefined) shares.set(history.length - 1, 1);
  for (let at = history.length - 1; at >= 0; at--) {
    const share = shares.get(at);
    const step = history[at] as Step;
    const of = step.of ?? [];
    if (share === undefined || of.length === 0) continue;
    const [first] = of as readonly [number];
    const goesOn = (step.does === "convert" || step.does === "scale") && of.length === 1;
    if (!goesOn && !isInPhase(step)) continue;
    shares.delete(at);
    of.forEach((from, i) => {
      const sign = step.does === "difference" && i > 0 ? -1 : 1;
      const by = goesOn ? ratio(step, history[first] as Step) : sign;
      shares.set(from, (shares.get(from) ?? 0) + share * by);
    });
  }
  return [...shares].map(([at, times]) => ({ from: history[at] as Step, times }));
}

/**
 * The parts of an amplitude that was put together in phase, each as it goes into it, one that was taken off with a minus;
 * the amplitude itself where it was not put together. A reading that came in twice is one.
 */
export function partsInPhase(amplitude: Amplitude): readonly number[] {
  return sharesInPhase(amplitude)
    .map(({ from, times }) => times * linearValue(from))
    .filter((part) => part !== 0);
}

/** True for two amplitudes that were made of one reading by scales and conversions alone. */
export function isOneReading(a: Amplitude, b: Amplitude): boolean {
  const [one, ...more] = sharesInPhase(a);
  const [other, ...others] = sharesInPhase(b);
  return one !== undefined && more.length === 0 && others.length === 0 && one.from === other?.from;
}
