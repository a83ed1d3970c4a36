import type { Verdict } from "../../severity/index";
import { type Markup, markup } from "./markup";

/** How far a zone is from the best, from 0 to 3, by its place among those there are. */
export function zoneStep({ zone, zones }: Pick<Verdict, "zone" | "zones">): number {
  const last = zones.length - 1;
  return last > 0 ? Math.round((3 * zones.indexOf(zone)) / last) : 0;
}

/** Letters that stay on one line. */
const LONGEST = 16;

/** The zones of a verdict on the colour of the worst: the letter tells, the colour comes second. */
export function zoneChip(verdict: Pick<Verdict, "zone" | "zones" | "headline">): Markup {
  const { headline } = verdict;
  const isLong = headline.length > LONGEST;
  return markup`<span class="zone z${zoneStep(verdict)}${isLong && " long"}">${headline}</span>`;
}
