import { format, type ReadingType } from "../reading/index";
import type { Verdict } from "../severity/index";
import type { ZonesWithin } from "./zones-within";

/** A verdict on the best value with what a decision rule says of it in front; where that is another, the rule is named. */
export function decidedVerdict(
  verdict: Verdict,
  { rule, zone, zones, worst, headline, word: ofRule, cautions, assumed, assumedFacts }: ZonesWithin,
): Verdict {
  const word = headline === verdict.headline ? ofRule : `by ${rule}, ${ofRule}`;
  return { ...verdict, zone, possible: zones, worst, headline, word, cautions, assumed, assumedFacts };
}

/** The interval of a reading: `4.60 to 5.20 mm/s rms`; in three digits at least, since fewer would draw its ends in. */
export function intervalText({ interval: { low, high, type } }: ZonesWithin, digits?: number): string {
  const options = digits === undefined ? {} : { digits: Math.max(3, digits) };
  const upper = format(high, type as ReadingType, options);
  return low === Number.NEGATIVE_INFINITY
    ? `up to ${upper}`
    : `${format(low, type as ReadingType, options).split(" ")[0]} to ${upper}`;
}

/** What was taken of uncertainties without a coverage factor that bear on a reading; nothing where none does. */
export function boundNotes({ uncertainty: { parts } }: ZonesWithin): readonly string[] {
  const isBare = parts.some(({ standard, stated }) => standard > 0 && !/k=[^()]*\)$/.test(stated));
  return isBare ? ["± without k taken as a bound with equal chance within"] : [];
}
