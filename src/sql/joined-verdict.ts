import { numberLiteral } from "./literal";
import { stepsFrom } from "./side-by-side";

/** The parts of a verdict as SQL, each an expression over a reading and the bounds of its machine beside it. */
export interface JoinedVerdict {
  /** The zone that is judged. */
  readonly zone: string;
  /** All zones that are possible, best first, with commas between. */
  readonly zones: string;
  /** The worst of them. */
  readonly worst: string;
  /** The limit next to the reading, over the reading: the one that ends its zone, or the last one that it exceeds. */
  readonly margin: string;
  /** What was assumed, set aside and not judged; of a reading without a verdict too. */
  readonly assumed: string;
  /** Why the machine has no limits; NULL where it has, and where it is on no list. */
  readonly refused: string;
}

/** What a level in decibels, and the divisor of a margin, can be at least. */
const LEAST_LEVEL = -5000;
const LEAST_DIVISOR = 1e-290;

/**
 * The verdict on readings that stand beside the bounds of their machines. A reading that is none (NULL, negative,
 * infinite, NaN) is within no bound and not below the greatest number. A machine without limits has neither bounds nor a
 * last zone, and nothing is below NULL. All texts come out of the row of the machine as they are: none is put together
 * for each reading.
 *
 * @param value - the reading, as SQL
 * @param bounds - the name of the joined table of `machineBounds`
 */
export function joinedVerdict(
  value: string,
  { bounds, steps, isLevel }: { readonly bounds: string; readonly steps: number; readonly isLevel: boolean },
): JoinedVerdict {
  const at = (name: string): string => `${bounds}.${name}`;
  const [lowest, highest] = isLevel ? [LEAST_LEVEL, -LEAST_LEVEL] : [0, Number.MAX_VALUE];
  const within = (bound: string, first: number, answerOf: (step: number) => string): string =>
    stepsFrom(first, steps)
      .map((step) => ` WHEN ${value} <= ${at(`${bound}_${step}`)} THEN ${answerOf(step)}`)
      .join("");
  /**
   * The answer of the first step that holds the reading, or of what is above all. What is below all readings is within
   * the first bound, or in no bound where there is none; it is looked for there alone, not in every row.
   */
  const ladder = (bound: string, answerOf: (step: number) => string, last: string, least = lowest): string => {
    const isReading = `${value} >= ${numberLiteral(least)}`;
    const first = (step: number): string =>
      step === 1 ? `CASE WHEN ${isReading} THEN ${answerOf(1)} END` : answerOf(step);
    return `CASE${within(bound, 1, first)} WHEN ${value} <= ${numberLiteral(highest)} AND ${isReading} THEN ${at(last)} END`;
  };
  const zoneOf = (step: number): string => at(`zone_${step}`);
  const zonesFrom = (step: number): string =>
    `CASE${within("worst", step, (to) => at(to === step ? `zone_${step}` : `zones_${step}_${to}`))} ELSE ${at(`zones_${step}_end`)} END`;
  const divided = isLevel ? lowest : LEAST_DIVISOR;
  const margin = ladder("bound", (step) => at(`limit_${step}`), "limit_end", divided);
  return {
    zone: ladder("bound", zoneOf, "top_zone"),
    zones: ladder("bound", zonesFrom, "top_zone"),
    worst: ladder("worst", zoneOf, "top_zone"),
    margin: isLevel ? `POWER(1e1, (${margin} - ${value}) / 2e1)` : `${margin} / ${value}`,
    assumed: at("all_assumed"),
    refused: at("why_refused"),
  };
}
