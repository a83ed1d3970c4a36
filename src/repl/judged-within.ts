import { boundNotes, decidedVerdict, intervalText, type ZonesWithin, zonesWithin } from "../conformity/index";
import { type Amplitude, isUncertain, significant } from "../reading/index";
import type { Verdict } from "../severity/index";

/** A verdict, and lines on how it was decided within the uncertainty of its reading. */
interface Decided {
  readonly verdict: Verdict;
  readonly lines: readonly string[];
}

/** How a verdict was decided within the uncertainty of its reading. */
export function withinLines(within: ZonesWithin): readonly string[] {
  return [
    ...boundNotes(within).map((text) => `  ${text}`),
    `  within ${intervalText(within)} (U = ${significant(within.interval.expanded)}, k = 2): ${within.zones.join(", ")}`,
    `  decided by guard band: the worst zone that the interval touches; by the best value ${within.bestValue.headline}`,
  ];
}

/**
 * A verdict by the guard band, where its reading has an uncertainty: the worst zone that the interval touches. As it is
 * where none is known.
 */
export function decidedWithin(reading: Amplitude, ofBest: Verdict): Decided {
  if (!isUncertain(reading.history ?? [])) return { verdict: ofBest, lines: [] };
  const within = zonesWithin(ofBest);
  return { verdict: decidedVerdict(ofBest, within), lines: withinLines(within) };
}
