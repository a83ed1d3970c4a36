import type { LoopState } from "../reading/index";
import { rangeWarnings } from "./loop-states";
import { differingModesText, type ModesFound } from "./modes";

/** What is known of the readings of a baseline. */
interface ReadingsKnown {
  readonly as: string;
  readonly median: number;
  readonly spread: number;
  /** How many readings are enough. */
  readonly enough: number;
  /** How many there are, how many of them count, how many of those lie far off. */
  readonly read: number;
  readonly kept: number;
  readonly outliers: number;
  /** How many have an uncertainty of their own. */
  readonly uncertain: number;
  readonly states: readonly LoopState[];
  readonly found: ModesFound;
}

/** How many steady readings are enough where nobody says otherwise; common practice, no source. */
export const ENOUGH = 10;

/** Spread over the median beyond which readings are called widely scattered; common practice, no source. */
const WIDE = 0.3;

/** What is to be said of the worth of a baseline: count, spread, operating modes. */
export function baselineWarnings(known: ReadingsKnown): readonly string[] {
  const { as, median, spread, enough, read, kept, outliers, uncertain, states, found } = known;
  const { modes, modesDiffer, unjudged } = found;
  const all: readonly (readonly [isSo: boolean, text: () => string])[] = [
    [
      kept < enough,
      () => `${kept} steady readings are few; take at least ${enough} over the usual range of load and temperature`,
    ],
    [outliers > 0, () => `${outliers} of ${kept} readings lie more than 3.5 spreads from the median; look at each`],
    [spread === 0, () => "the readings show no scatter; a device that rounds coarsely hides it"],
    [
      median > 0 && spread > WIDE * median,
      () =>
        `the readings scatter widely: their spread is ${Math.round((100 * spread) / median)} % of the median; are they of one steady state?`,
    ],
    [modesDiffer, () => differingModesText(modes, as)],
    [
      unjudged > 0,
      () => `modes with fewer than 3 readings are not compared with the others (${unjudged} of ${kept} readings)`,
    ],
    [
      uncertain > 0,
      () =>
        `${uncertain} of ${read} readings have an uncertainty of their own, which the statistics do not carry: their scatter is all that is told`,
    ],
  ];
  return [...all.flatMap(([isSo, text]) => (isSo ? [text()] : [])), ...rangeWarnings(states, kept)];
}
