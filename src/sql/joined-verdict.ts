import { type Ladder, mostSteps, stepsFrom } from "./ladders";
import { numberLiteral } from "./literal";

/** The parts of a verdict as SQL, each an expression over a reading and the bounds of its machine beside it. */
export interface JoinedVerdict {
  /** The zone that is judged. */
  readonly zone: string;
  /** All zones that are possible, best first, with commas between. */
  readonly zones: string;
  /** The worst of them. */
  readonly worst: string;
  /** The limit next to the reading, divided by the reading: the one that ends its zone, or the last one that it exceeds. */
  readonly margin: string;
  /** What was assumed, set aside and not judged; of a reading without a verdict too. */
  readonly assumed: string;
  /** Why the machine has no limits; NULL where it has, and where it is on no list. */
  readonly refused: string;
}

/** What a level in decibels, and the divisor of a margin, can be at least. */
const LEAST_LEVEL = -5000;
const LEAST_DIVISOR = 1e-290;

/** Texts of SQL as one text, with commas between. */
function listed(texts: readonly string[]): string {
  return `'${texts.map((text) => text.slice(1, -1)).join(", ")}'`;
}

/**
 * The verdict on readings that stand beside the bounds of their machines. A reading that is none (NULL, negative,
 * infinite, NaN) is within no bound and not below the greatest number; a machine without limits has no ladder. The zones
 * of the few ladders of a plant stand in the query: none is fetched, or put together, for each reading.
 *
 * @param value - the reading, as SQL
 * @param bounds - the name of the joined table of `machineBounds`
 */
export function joinedVerdict(
  value: string,
  {
    bounds,
    ladders,
    isLevel,
  }: { readonly bounds: string; readonly ladders: readonly Ladder[]; readonly isLevel: boolean },
): JoinedVerdict {
  const at = (name: string): string => `${bounds}.${name}`;
  const [lowest, highest] = isLevel ? [LEAST_LEVEL, -LEAST_LEVEL] : [0, Number.MAX_VALUE];
  const within = (
    bound: string,
    [first, last]: readonly [number, number],
    answerOf: (step: number) => string,
  ): string =>
    stepsFrom(first, last)
      .map((step) => ` WHEN ${value} <= ${at(`${bound}_${step}`)} THEN ${answerOf(step)}`)
      .join("");
  /**
   * The answer of the first step that holds the reading, or of what is above all. What is below all readings is within
   * the first bound, or in no bound where there is none; it is looked for there alone, not in every row.
   */
  const climbed = (bound: string, steps: number, answerOf: (step: number) => string, least = lowest): string => {
    const isReading = `${value} >= ${numberLiteral(least)}`;
    const first = (step: number): string =>
      step === 1 ? `CASE WHEN ${isReading} THEN ${answerOf(1)} END` : answerOf(step);
    return `CASE${within(bound, [1, steps], first)} WHEN ${value} <= ${numberLiteral(highest)} AND ${isReading} THEN ${answerOf(steps + 1)} END`;
  };
  // each branch has its condition: of CASE with a value behind it, ClickHouse 18 makes a look-up of constants, and errs
  const byLadder = (of: (ladder: Ladder, steps: number) => string): string =>
    `CASE${ladders.map((ladder, i) => ` WHEN ${at("ladder")} = ${i + 1} THEN ${of(ladder, ladder.length - 1)}`).join("")} END`;
  const zoneBy = (bound: string): string =>
    byLadder((ladder, steps) => climbed(bound, steps, (step) => ladder[step - 1] as string));
  const zones = byLadder((ladder, steps) =>
    climbed("bound", steps, (step) => {
      if (step > steps) return ladder[steps] as string;
      const upTo = (to: number): string => listed(ladder.slice(step - 1, to));
      return `CASE${within("worst", [step, steps], upTo)} ELSE ${upTo(steps + 1)} END`;
    }),
  );
  const steps = mostSteps(ladders);
  const nextLimit = (step: number): string => at(step > steps ? "limit_end" : `limit_${step}`);
  const margin = climbed("bound", steps, nextLimit, isLevel ? lowest : LEAST_DIVISOR);
  return {
    zone: zoneBy("bound"),
    zones,
    worst: zoneBy("worst"),
    margin: isLevel ? `POWER(1e1, (${margin} - ${value}) / 2e1)` : `${margin} / ${value}`,
    assumed: at("all_assumed"),
    refused: at("why_refused"),
  };
}
