import { type ZonesWithin, zonesWithin } from "../conformity/index";
import { type Amplitude, format, isUncertain, type ReadingType, significant } from "../reading/index";
import type { Verdict } from "../severity/index";

/** A verdict, and lines on how it was decided within the uncertainty of its reading. */
interface Decided {
  readonly verdict: Verdict;
  readonly lines: readonly string[];
}

function intervalLine({ interval, zones }: ZonesWithin): string {
  const { low, high, type, expanded } = interval;
  const upper = format(high, type as ReadingType);
  const lower = low === Number.NEGATIVE_INFINITY ? "up" : format(low, type as ReadingType).split(" ")[0];
  return `  within ${lower} to ${upper} (U = ${significant(expanded)}, k = 2): ${zones.join(", ")}`;
}

/**
 * A verdict by the guard band, where its reading has an uncertainty: the worst zone that the interval touches. As it is
 * where none is known.
 */
export function decidedWithin(reading: Amplitude, ofBest: Verdict): Decided {
  if (!isUncertain(reading.history ?? [])) return { verdict: ofBest, lines: [] };
  const within = zonesWithin(ofBest);
  const { zone, zones, worst, headline, word, cautions, assumed, assumedFacts, bestValue } = within;
  return {
    verdict: { ...ofBest, zone, possible: zones, worst, headline, word, cautions, assumed, assumedFacts },
    lines: [
      intervalLine(within),
      `  decided by guard band: the worst zone that the interval touches; by the best value ${bestValue.headline}`,
    ],
  };
}
