import { type Amplitude, linearOf, parsedType, type Step } from "../reading/index";

/** The linear value that a step came to, also where it is written as a level. */
function linearValue({ value, type }: Step): number {
  const { reference } = parsedType(type);
  return reference === 0 ? value : linearOf(value, reference);
}

/** What a value is multiplied with on the way through a step, so that its parts go along. */
function ratio(step: Step, from: Step): number {
  const before = linearValue(from);
  return before === 0 ? 0 : linearValue(step) / before;
}

/** True for a step that puts readings together as if they rose and fell together. */
function isInPhase({ does, assumed }: Step): boolean {
  return (does === "sum" || does === "difference") && assumed?.includes("in-phase") === true;
}

/**
 * The readings that an amplitude was put together of in phase, each as it goes into it, one that was taken off with a
 * minus; the amplitude itself where it was not put together. A reading that came in twice is one: nothing is uncertain
 * about its phase to itself.
 */
export function partsInPhase({ history = [] }: Amplitude): readonly number[] {
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
  return [...shares].map(([at, share]) => share * linearValue(history[at] as Step)).filter((part) => part !== 0);
}
