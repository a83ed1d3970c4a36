import type { RouteVerdict } from "../../plant/index";
import type { ReadPoint } from "./machine-report";
import { type Markup, markup } from "./markup";

/** How far the worst possible zone of a reading is from the best, from 0 to 3, by its place among those there are. */
export function zoneStep({ verdict: { worst }, basis: { zones } }: ReadPoint): number {
  const last = zones.length - 1;
  return last > 0 ? Math.round((3 * zones.indexOf(worst)) / last) : 0;
}

/** A zone so that it does not read as what the machine is doing: of a table that calls its zones start-up, alarm and shutdown. */
export function zoneWords(kind: RouteVerdict["kind"], zone: string): string {
  return kind === "operation" ? `${zone} zone` : zone;
}

/** Letters that stay on one line. */
const LONGEST = 16;

/** The zones of a reading on the colour of the worst: the letter tells, the colour comes second. */
export function zoneChip(point: ReadPoint): Markup {
  const { kind } = point.verdict;
  const headline = zoneWords(kind, point.verdict.headline);
  const isLong = headline.length > LONGEST;
  return markup`<span class="zone z${zoneStep(point)}${isLong && " long"}">${headline}</span>`;
}
