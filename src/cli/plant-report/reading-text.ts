import type { RefusedReading, RouteChange } from "../../plant/index";
import { format, significant } from "../../reading/index";
import type { ReadPoint } from "./machine-report";

/** A reading of a route as it was read, in few digits. */
export function readingText({ verdict: { reading } }: ReadPoint): string {
  return format(reading);
}

/** The refused readings of a machine by their points: `refused: NDE-H (line 4)`. */
export function refusedPoints(refused: readonly RefusedReading[]): string {
  return `refused: ${refused.map(({ point, line }) => (point === undefined ? `line ${line}` : `${point} (line ${line})`)).join(", ")}`;
}

/** How far a reading is from the limit next to it. */
export function marginWords({ verdict: { limit, ratio }, basis }: ReadPoint): string {
  const at = `${limit.name}, ${significant(limit.value)} ${basis.as}`;
  const decibels = 20 * Math.log10(ratio);
  if (!Number.isFinite(decibels)) return `below ${at}`;
  return `${significant(Math.abs(decibels))} dB ${decibels >= 0 ? "below" : "above"} ${at}`;
}

function changeWords(change: RouteChange | null, since: string, as: string): string[] {
  if (change === null) return [];
  const { significant: is, direction, change: by, before, date } = change;
  const from = `${significant(before)} ${as}${date === undefined ? "" : ` on ${date}`}`;
  if (direction === "none") return [`no change since ${since} of ${from}`];
  const weight = is === null ? "" : is ? ", SIGNIFICANT" : ", not significant";
  return [`${direction} of ${significant(Math.abs(by))} ${as} since ${since} of ${from}${weight}`];
}

/** How a reading has changed since the baseline and since the route before. */
export function changesWords({ verdict: { sinceBaseline, sinceLast }, basis: { as } }: ReadPoint): string {
  return [...changeWords(sinceBaseline, "the baseline", as), ...changeWords(sinceLast, "the last route", as)].join(
    "; ",
  );
}
