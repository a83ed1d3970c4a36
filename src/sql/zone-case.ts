import { parsedType } from "../reading/index";
import type { CompiledClassifier } from "../severity/index";
import type { SqlDialect } from "./dialects";
import type { Operand } from "./identifier";
import { numberLiteral, textLiteral } from "./literal";

/** What an expression for zones gives: the zone that was judged, or the worst that is possible. */
export type ZoneAnswer = "zone" | "worst";

/** The zones of a classifier as a CASE over its bounds; NULL for what is no reading. */
export function zoneCase(
  { zones, bounds, worstBounds, from }: CompiledClassifier,
  { value, isNumber }: Operand,
  answer: ZoneAnswer,
  dialect: SqlDialect,
): string {
  const isLevel = parsedType(from).reference !== 0;
  const [lowest, highest] = [isLevel ? -Number.MAX_VALUE : 0, Number.MAX_VALUE].map(numberLiteral);
  const names = zones.map((zone) => textLiteral(zone, dialect));
  const ends = answer === "worst" ? worstBounds : bounds;
  const steps = ends.map((end, i) => ` WHEN ${value} <= ${numberLiteral(end)} THEN ${names[i]}`);
  const last = names.at(-1);
  const chosen = steps.length === 0 ? last : `CASE${steps.join("")} ELSE ${last} END`;
  return `CASE WHEN ${isNumber}${value} >= ${lowest} AND ${value} <= ${highest} THEN ${chosen} END`;
}
