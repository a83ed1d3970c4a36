import type { Step } from "./step";

/** Gives back what it is called with, so that a class derived from it puts its private fields on that. */
class Given {
  constructor(given: object) {
    // biome-ignore lint/correctness/noConstructorReturn: the one way to put a private field on what is there already
    return given;
  }
}

/**
 * A mark that no other module can set, see or copy. A weak set would do the same, but takes longer than all else that
 * is done to a history.
 */
class Own extends Given {
  readonly #here: undefined;

  static is(one: unknown): boolean {
    return Array.isArray(one) && #here in one;
  }
}

/** A history that was made here, frozen to its last part: it need not be checked again. */
export function ownHistory(steps: readonly Step[]): readonly Step[] {
  // what is frozen already may not be marked in engines to come
  const made = Object.isFrozen(steps) ? [...steps] : steps;
  new Own(made);
  return Object.freeze(made);
}

/** True for a history that was made here, not one that came from outside. */
export function isOwnHistory(history: readonly Step[]): boolean {
  return Own.is(history);
}
