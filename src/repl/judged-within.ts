import { decidedVerdict, intervalText, zonesWithin } from "../conformity/index";
import { type Amplitude, isUncertain, significant } from "../reading/index";
import type { Verdict } from "../severity/index";

/** A verdict, and lines on how it was decided within the uncertainty of its reading. */
interface Decided {
  readonly verdict: Verdict;
  readonly lines: readonly string[];
}

/**
 * A verdict by the guard band, where its reading has an uncertainty: the worst zone that the interval touches. As it is
 * where none is known.
 */
export function decidedWithin(reading: Amplitude, ofBest: Verdict): Decided {
  if (!isUncertain(reading.history ?? [])) return { verdict: ofBest, lines: [] };
  const within = zonesWithin(ofBest);
  const isBare = within.history.some((step) =>
    [step.uncertainty, step.hertzUncertainty].some((one) => one?.distribution === "rectangular"),
  );
  return {
    verdict: decidedVerdict(ofBest, within),
    lines: [
      ...(isBare ? ["  ± without k taken as a bound with equal chance within"] : []),
      `  within ${intervalText(within)} (U = ${significant(within.interval.expanded)}, k = 2): ${within.zones.join(", ")}`,
      `  decided by guard band: the worst zone that the interval touches; by the best value ${within.bestValue.headline}`,
    ],
  };
}
