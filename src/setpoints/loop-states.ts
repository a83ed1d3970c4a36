import type { LoopState } from "../reading/index";

/** The states of a loop, the worst first. */
const worstFirst = ["above range", "below range", "in range"] as const satisfies readonly LoopState[];

/** The worst of some states; undefined where no reading came by a loop. */
export function worstState(states: readonly LoopState[]): LoopState | undefined {
  return worstFirst.find((one) => states.includes(one));
}

/** What is to be said of readings outside the range of their loop. */
export function rangeWarnings(states: readonly LoopState[], count: number): string[] {
  return (["above range", "below range"] as const).flatMap((state) => {
    const many = states.filter((one) => one === state).length;
    if (many === 0) return [];
    const which = count === 1 ? "the reading" : `${many} of ${count} readings`;
    return [`${which} came with the loop signal ${state}: the true level is not known`];
  });
}
