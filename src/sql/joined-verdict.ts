import { numberLiteral } from "./literal";

/** The steps up to a number: 1, 2, 3. */
function upTo(steps: number): readonly number[] {
  return Array.from({ length: steps }, (_, i) => i + 1);
}

/** A table of limits as one row a machine, for a ladder of so many limits: what {@link joinedVerdict} is joined with. */
export function boundsOfMachines(table: string, steps: number): string {
  const of = (column: string, step: number, and = ""): string =>
    `MIN(CASE WHEN step = ${step}${and} THEN ${column} END)`;
  const columns = upTo(steps).flatMap((step) => [
    `${of("bound", step, " AND decides = 'zone'")} AS bound_${step}`,
    `${of("limit_value", step, " AND decides = 'zone'")} AS limit_${step}`,
    `${of("bound", step)} AS worst_${step}`,
    `${of("zone_below", step)} AS zone_${step}`,
  ]);
  const whole = ["last_zone", "is_open", "assumed", "refused"].map((one) => `MIN(${one}) AS ${one}`);
  return `SELECT machine, ${[...columns, ...whole].join(", ")}\nFROM ${table} GROUP BY machine`;
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

const FEWEST = 1e-290;

/**
 * The verdict on readings that stand beside the bounds of their machines.
 *
 * @param value - the reading, as SQL
 * @param bounds - the name of the joined table of {@link boundsOfMachines}
 */
export function joinedVerdict(
  value: string,
  { bounds, steps, isLevel }: { readonly bounds: string; readonly steps: number; readonly isLevel: boolean },
): JoinedVerdict {
  const at = (name: string): string => `${bounds}.${name}`;
  const [lowest, highest] = isLevel ? [-5000, 5000] : [0, Number.MAX_VALUE];
  const isReading = `${value} >= ${numberLiteral(lowest)} AND ${value} <= ${numberLiteral(highest)}`;
  const all = upTo(steps);
  const ladder = (bound: string, answer: string, last: string): string =>
    `CASE${all.map((k) => ` WHEN ${value} <= ${at(`${bound}_${k}`)} THEN ${at(`${answer}_${k}`)}`).join("")} ELSE ${last} END`;
  const judged = (answer: string): string => `CASE WHEN ${isReading} THEN ${answer} END`;
  // of a machine with fewer limits, those that it lacks are NULL, and nothing is below NULL
  const worst = `CASE WHEN ${at("is_open")} = 1 THEN ${at("last_zone")} ELSE ${ladder("worst", "zone", at("last_zone"))} END`;
  const parts = all.map((k) => {
    const before = k === 1 ? "" : ` AND (${at("is_open")} = 1 OR ${value} > ${at(`worst_${k - 1}`)})`;
    const comma = k === 1 ? "" : `CASE WHEN ${value} <= ${at(`bound_${k - 1}`)} THEN ', ' ELSE '' END || `;
    return `CASE WHEN ${value} <= ${at(`bound_${k}`)}${before} THEN ${comma}${at(`zone_${k}`)} ELSE '' END`;
  });
  const within = (bound: string): string => all.map((k) => `${value} <= ${at(`${bound}_${k}`)}`).join(" OR ");
  const reachesLast = `${at("is_open")} = 1 OR NOT COALESCE(${within("worst")}, FALSE)`;
  const end = `CASE WHEN ${reachesLast} THEN CASE WHEN ${within("bound")} THEN ', ' ELSE '' END || ${at("last_zone")} ELSE '' END`;
  const ended = `COALESCE(${[...all]
    .reverse()
    .map((k) => at(`limit_${k}`))
    .join(", ")})`;
  const next = ladder("bound", "limit", ended);
  const margin = isLevel
    ? judged(`POWER(1e1, (${next} - ${value}) / 2e1)`)
    : `CASE WHEN ${value} >= ${numberLiteral(FEWEST)} AND ${value} <= ${numberLiteral(highest)} THEN ${next} / ${value} END`;
  return {
    zone: judged(ladder("bound", "zone", at("last_zone"))),
    zones: judged([...parts, end].join(" || ")),
    worst: judged(worst),
    margin,
    assumed: at("assumed"),
    refused: at("refused"),
  };
}
