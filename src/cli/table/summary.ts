import { cautions } from "../../core/index";
import { labelled } from "../print/labelled";
import { grouped } from "./progress";
import type { Tally } from "./row-answers";
import { judges, type TableSettings } from "./settings";

/** How many rows there were, and how many of them were refused. */
export interface Counts {
  rows: number;
  refused: number;
}

/** What a table came to, for standard error: a line of JSON, or lines for a person. */
export function summaryText(
  settings: TableSettings,
  { rows, refused }: Counts,
  { zones, assumed, fromMemory }: Tally,
  refusedPath: string | undefined,
): string {
  const written = rows - refused;
  if (settings.json) {
    const counts = { rows, written, refused, zones: Object.fromEntries(zones), fromMemory };
    return `${JSON.stringify({ summary: { ...counts, assumed } })}\n`;
  }
  const to = settings.out === undefined ? "" : ` to ${settings.out}`;
  const refusedTo = refused > 0 && refusedPath !== undefined ? ` to ${refusedPath}` : "";
  const inZones = [...zones].sort(([a], [b]) => (a < b ? -1 : 1)).map(([zone, count]) => `${zone} ${grouped(count)}`);
  return [
    `${grouped(rows)} ${rows === 1 ? "row" : "rows"}: ${grouped(written)} written${to}, ${grouped(refused)} refused${refusedTo}\n`,
    labelled("zones", inZones.length > 0 ? [inZones.join(", ")] : []),
    labelled("assumed", assumed.length > 0 ? [assumed.join("; ")] : []),
    labelled(
      "MEMORY",
      fromMemory > 0
        ? [`${grouped(fromMemory)} rows judged by limits from memory: check them against the standard`]
        : [],
    ),
    labelled("caution", judges(settings) ? cautions.slice(0, 1) : []),
  ].join("");
}
