import type { Step } from "./step";

/** Gives back what it is called with, so that a class derived from it puts its private fields on that. */
const Given = function given(one: object) {
  return one;
} as unknown as new (
  one: object,
) => object;

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

/**
 * A history that was made here, frozen to its last part: it need not be checked again.
 *
 * @param steps - a list that is not frozen yet, of steps that are: in engines to come a frozen one may not be marked
 */
export function ownHistory(steps: readonly Step[]): readonly Step[] {
  // what it gives back is the list itself, marked; a bundler drops a call of which nothing is used
  return Object.freeze(new Own(steps) as unknown as readonly Step[]);
}

/** True for a history that was made here, not one that came from outside. */
export function isOwnHistory(history: readonly Step[]): boolean {
  return Own.is(history);
}
