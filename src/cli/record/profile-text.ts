import { significant } from "../../reading/index";
import type { BreakPoint } from "../../signal/index";
import { textTable } from "../print/text-table";
import { wrapped } from "../print/wrapped";

/** What is printed of a profile. */
export interface ProfilePage {
  readonly name: string;
  readonly unit: string;
  readonly points: readonly BreakPoint[];
  /** The levels, their peaks, and the slopes, written out. */
  readonly levels: readonly string[];
  readonly peaks: readonly string[];
  readonly slopes: readonly string[];
  /** What was taken of slopes whose heading does not say it. */
  readonly taken: string | undefined;
  readonly digits: number;
}

/** Profiles longer than this are not printed point by point. */
const LONGEST = 20;

/** A profile as a person reads it: the levels first, then how they were made, then the points. */
export function profileText({ name, unit, points, levels, peaks, slopes, taken, digits }: ProfilePage): string {
  const [low, high] = [(points[0] as BreakPoint)[0], (points[points.length - 1] as BreakPoint)[0]];
  const right = { align: "right" as const };
  const columns = ["Hz", unit, "dB/octave to the next"].map((title) => ({ title, ...right }));
  const rows = points.map(([hertz, density], i) => [
    significant(hertz, 4),
    significant(density, digits),
    slopes[i] ?? "",
  ]);
  return [
    ...levels.map((level, i) => `${level}  (peak of three times it, if Gaussian: ${peaks[i]})\n`),
    `\n${wrapped(`${name}: ${points.length} points from ${low} to ${high} Hz in ${unit}, straight lines between them on logarithmic axes`)}`,
    taken === undefined ? "" : wrapped(taken),
    "outside of them nothing is counted; a real peak is higher now and then\n",
    points.length > LONGEST ? "" : `\n${textTable(columns, rows)}`,
  ].join("");
}
