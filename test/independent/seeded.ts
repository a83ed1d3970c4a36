/** Repeatable choices from a seed. */
export interface Seeded {
  /** A number from 0 up to 1. */
  readonly next: () => number;
  /** A whole number from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number;
  readonly oneOf: <T>(list: readonly T[]) => T;
  readonly chance: (part: number) => boolean;
  /** A number between, each decade as likely as any other. */
  readonly between: (low: number, high: number) => number;
}

/** A generator of 32 bits (multiply and mix; no library, so that a seed gives the same cases in any version). */
export function seeded(seed: number): Seeded {
  let state = seed | 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    whole: (low, high) => low + Math.floor(next() * (high - low + 1)),
    oneOf: (list) => list[Math.floor(next() * list.length)] as (typeof list)[number],
    chance: (part) => next() < part,
    between: (low, high) => low * (high / low) ** next(),
  };
}
