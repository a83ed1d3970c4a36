import { numberLiteral } from "./literal";

/** The steps up to a number: 1, 2, 3. */
function upTo(steps: number): readonly number[] {
  return Array.from({ length: steps }, (_, i) => i + 1);
}

/**
 * A table of limits as one row a machine, for a ladder of so many limits: what {@link joinedVerdict} is joined with. Rows
 * that were made for readings in another type are none, and so are those of a machine that is refused.
 */
export function boundsOfMachines(table: string, steps: number, types: readonly string[]): string {
  const of = (column: string, step: number, and = ""): string =>
    `MIN(CASE WHEN step = ${step}${and} THEN ${column} END)`;
  const columns = upTo(steps).flatMap((step) => [
    `${of("bound", step, " AND decides = 'zone'")} AS bound_${step}`,
    `${of("limit_value", step, " AND decides = 'zone'")} AS limit_${step}`,
    `${of("bound", step)} AS worst_${step}`,
    `${of("zone_below", step)} AS zone_${step}`,
  ]);
  const whole = [
    ["last_zone", "top_zone"],
    ["is_open", "open_above"],
    ["assumed", "all_assumed"],
    ["refused", "why_refused"],
  ].map(([column, name]) => `MIN(${column}) AS ${name}`);
  const ends = [
    `MIN(CASE WHEN zone_above = last_zone AND decides = 'zone' THEN bound END) AS bound_end`,
    `MIN(CASE WHEN zone_above = last_zone AND decides = 'zone' THEN limit_value END) AS limit_end`,
    `MIN(CASE WHEN zone_above = last_zone THEN bound END) AS worst_end`,
  ];
  return `SELECT machine, ${[...columns, ...ends, ...whole].join(", ")}\nFROM ${table} WHERE readings_in IN (${types.join(", ")}) GROUP BY machine`;
}

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
 * infinite, NaN) is within no bound and not above the last; of a machine with fewer limits, or with none, those that it
 * lacks are NULL, and nothing is below or above NULL.
 *
 * @param value - the reading, as SQL
 * @param bounds - the name of the joined table of {@link boundsOfMachines}
 */
export function joinedVerdict(
  value: string,
  { bounds, steps, isLevel }: { readonly bounds: string; readonly steps: number; readonly isLevel: boolean },
): JoinedVerdict {
  const at = (name: string): string => `${bounds}.${name}`;
  const all = upTo(steps);
  const [lowest, highest] = isLevel ? [LEAST_LEVEL, -LEAST_LEVEL] : [0, Number.MAX_VALUE];
  const within = (bound: string, step: number): string => `${value} <= ${at(`${bound}_${step}`)}`;
  const beyond = (bound: string): string =>
    `${value} > ${at(`${bound}_end`)} AND ${value} <= ${numberLiteral(highest)}`;
  /** The answer of the first step that holds the reading, or of what is above all. */
  const ladder = (bound: string, answerOf: (step: number) => string, last: string, first = ""): string =>
    `CASE WHEN ${value} < ${numberLiteral(lowest)} THEN NULL${first}${all
      .map((step) => ` WHEN ${within(bound, step)} THEN ${answerOf(step)}`)
      .join("")} WHEN ${beyond(bound)} THEN ${last} END`;
  const zoneOf = (step: number): string => at(`zone_${step}`);
  const lastZone = at("top_zone");
  const isOpen = `${at("open_above")} = 1`;
  const isReading = `${value} <= ${numberLiteral(highest)}`;
  const worst = ladder("worst", zoneOf, lastZone, ` WHEN ${isOpen} AND ${isReading} THEN ${lastZone}`);
  // behind the zone that is judged, those up to the worst
  const behind = (step: number): string =>
    [
      ...all
        .filter((one) => one > step)
        .map(
          (one) =>
            `CASE WHEN ${isOpen} OR ${value} > ${at(`worst_${one - 1}`)} THEN COALESCE(', ' || ${zoneOf(one)}, '') ELSE '' END`,
        ),
      `CASE WHEN ${isOpen} OR ${value} > ${at("worst_end")} THEN ', ' || ${lastZone} ELSE '' END`,
    ].join(" || ");
  const margin = ladder(
    "bound",
    (step) => at(`limit_${step}`),
    at("limit_end"),
    isLevel ? "" : ` WHEN ${value} < ${numberLiteral(LEAST_DIVISOR)} THEN NULL`,
  );
  return {
    zone: ladder("bound", zoneOf, lastZone),
    zones: ladder("bound", (step) => `${zoneOf(step)} || ${behind(step)}`, lastZone),
    worst,
    margin: isLevel ? `POWER(1e1, (${margin} - ${value}) / 2e1)` : `${margin} / ${value}`,
    assumed: at("all_assumed"),
    refused: at("why_refused"),
  };
}
