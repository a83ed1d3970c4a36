import type { Uncertainty } from "./uncertainty";

/** ln 10 / 20: the share of a linear value that a decibel is. */
export const perDecibel = 0.11512925464970229;

/** What a linear number `of` this size is multiplied with so many standard uncertainties away from it; never below zero. */
export function factorAway({ standard, in: scale }: Uncertainty, of: number, away: number): number {
  return scale === "dB" ? Math.exp(perDecibel * standard * away) : Math.max(0, 1 + (standard * away) / of);
}
