import type { LoopState } from "../reading/index";

/** What is to be said of readings outside the range of their loop. */
export function rangeWarnings(states: readonly LoopState[], count: number): string[] {
  return (["above range", "below range"] as const).flatMap((state) => {
    const many = states.filter((one) => one === state).length;
    if (many === 0) return [];
    const which = count === 1 ? "the reading" : `${many} of ${count} readings`;
    return [`${which} came with the loop signal ${state}: the true level is not known`];
  });
}
