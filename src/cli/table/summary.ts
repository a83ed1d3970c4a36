import { cautions, counted, isVerified, jsonText, provenances, visibleText } from "../../core/index";
import { accountText, wholeAccount } from "../delimited/account-text";
import type { RowAccount } from "../delimited/row-account";
import { labelled } from "../print/labelled";
import { grouped } from "./progress";
import type { RowCounts } from "./row-answers";
import { judges, type TableSettings } from "./settings";

/** How many rows there were, and how many of them were refused. */
export interface Counts {
  rows: number;
  refused: number;
  /** Of those, how many are beyond their range or of a failed loop: the vibration may be anything, and counts for --fail-from. */
  beyondRange: number;
}

/** Most of what was assumed that is printed; the column has all of it. */
const MOST_ASSUMED = 8;

const UNSUMMED = "not in all pages of the file: damage there may pass as other values";

/** What was assumed or set aside, that of most rows first; how many rows where it is not all of them. */
function assumedLines(assumed: RowCounts["assumed"], written: number): string[] {
  const told = assumed
    .slice(0, MOST_ASSUMED)
    .map(([text, rows]) => (rows === written ? text : `${text} (${counted(rows, "row", grouped(rows))})`));
  const more = assumed.length - told.length;
  return more > 0 ? [...told, `and ${grouped(more)} more: see the column`] : told;
}

/** How the limits are known by which rows were judged, the worst known first. */
function knownLines(known: RowCounts["known"]): string[] {
  return [...known]
    .filter(([provenance]) => !isVerified(provenance))
    .map(([provenance, count]) => {
      const { text } = provenances[provenance];
      return `${counted(count, "row", grouped(count))} judged by limits ${text}: check them against the standard`;
    });
}

/** What a table came to. */
export interface Outcome {
  readonly counts: Counts;
  readonly answered: RowCounts;
  readonly account: RowAccount;
  /** Of Parquet, whether each page has a checksum. */
  readonly summed?: boolean;
  /** Where refused rows go. */
  readonly refusedPath: string | undefined;
  /** An older file of refused rows that was removed, since there are none now. */
  readonly removed: string | undefined;
}

/** What a table came to, for standard error: a line of JSON, or lines for a person. */
export function summaryText(settings: TableSettings, outcome: Outcome): string {
  const { account, summed, refusedPath, removed } = outcome;
  const { rows, refused, beyondRange } = outcome.counts;
  const { zones, worst, headlines, assumed, known } = outcome.answered;
  const reached = outcome.answered.reached + beyondRange;
  const written = rows - refused;
  const ends = { answered: written, refused };
  if (settings.json) {
    const judged = { zones: Object.fromEntries(zones), worst: Object.fromEntries(worst) };
    const files = { account: wholeAccount(account, ends), checksums: summed, removed };
    const limits = { known: Object.fromEntries(known), assumed: assumed.map(([text]) => text) };
    const failing = settings.failFrom === undefined ? {} : { reached, beyondRange };
    const all = { rows, written, refused, ...files, ...judged, ...failing, ...limits };
    return `${jsonText({ summary: all })}\n`;
  }
  const places = [
    ...(settings.out === undefined ? [] : [visibleText(settings.out)]),
    ...(refused > 0 && refusedPath !== undefined ? [`${visibleText(refusedPath)}: refused rows`] : []),
  ];
  const inZones = [...headlines]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([zone, count]) => `${zone} ${grouped(count)}`);
  return [
    accountText(account, ends, false),
    // a path is not wrapped, so that it can be copied
    ...places.map((place, i) => `${(i === 0 ? "written" : "").padEnd(10)}${place}\n`),
    labelled("removed", removed === undefined ? [] : [`${removed}, of an earlier run: no row was refused`]),
    labelled("checksums", summed === false ? [UNSUMMED] : []),
    labelled("zones", inZones.length > 0 ? [inZones.join(", ")] : []),
    labelled(
      "reached",
      settings.failFrom === undefined
        ? []
        : [
            `${counted(reached, "row", grouped(reached))} by --fail-from ${settings.failFrom}: it or a worse zone is possible, or the row is not reliable${beyondRange === 0 ? "" : `; ${grouped(beyondRange)} of them refused, beyond the range or of a failed loop: the vibration may be anything`}`,
          ],
    ),
    labelled("assumed", assumedLines(assumed, written)),
    labelled("known", knownLines(known)),
    labelled("caution", judges(settings) ? cautions.slice(0, 1) : []),
  ].join("");
}
