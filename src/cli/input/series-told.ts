import { shown } from "../../core/index";
import { accountText, type RowCounts, wholeAccount } from "../delimited/account-text";
import type { RowAccount } from "../delimited/read-delimited";
import { type LeftOut, leftOutText } from "./bad-rows";
import type { ColumnsRead } from "./column-read";
import { linesText, type RowLines, rowsText } from "./row-lines";
import type { TimesTold } from "./time-column";

/** What is told of how a series was read, beside its numbers. */
export interface SeriesTold {
  readonly columns: ColumnsRead;
  readonly account: RowAccount;
  readonly counts: RowCounts;
  readonly leftOut?: LeftOut;
  /** Cells that say over range, taken as sensor faults. */
  readonly overRange?: RowLines;
  /** Currents below 4 mA, taken as the start of the range of their loop. */
  readonly belowRange?: RowLines;
  readonly times?: TimesTold;
}

function timesText({ as, unit, clock, provedBy, midnights, equal }: TimesTold, { time }: ColumnsRead): string {
  const how = provedBy === undefined ? "" : `, since line ${provedBy} admits no other order`;
  const isPlain = as === "seconds" || as === "dates";
  const unitText = unit && `times: in ${unit}, as the heading ${shown(time?.heading)} says; in s from here on\n`;
  const passed =
    midnights === undefined
      ? ""
      : `, without a date: ${midnights.rows === 0 ? "no midnight is passed" : `midnight is passed ${midnights.rows === 1 ? "once" : `${midnights.rows} times`} (${linesText(midnights)})`}, and a gap of a day or more does not show`;
  return (
    (unitText ?? "") +
    (isPlain ? "" : `times: ${as}${how}${passed}; the first is ${clock}\n`) +
    (equal.rows === 0 ? "" : `times: ${rowsText(equal.rows)} at the time of the row above (${linesText(equal)})\n`)
  );
}

/** The same for standard error: the account, and lines for a person about what is out of the ordinary. */
export function seriesText(
  { columns, account, counts, leftOut, overRange, belowRange, times }: SeriesTold,
  json: boolean,
): string {
  const rows = accountText(account, counts, json);
  if (json) return rows;
  const over =
    overRange && `over range: ${rowsText(overRange.rows)} taken as a sensor fault (${linesText(overRange)})\n`;
  const below =
    belowRange &&
    `below range: ${rowsText(belowRange.rows)} below 4 mA taken as the start of the range (${linesText(belowRange)})\n`;
  return (
    rows + leftOutText(leftOut) + (over ?? "") + (below ?? "") + (times === undefined ? "" : timesText(times, columns))
  );
}

/** The same as data. */
export function seriesData({ columns, account, counts, leftOut, overRange, belowRange, times }: SeriesTold): object {
  return {
    columns,
    rows: wholeAccount(account, counts),
    ...(leftOut && { leftOut }),
    ...(overRange && { overRange }),
    ...(belowRange && { belowRange }),
    ...(times && { times }),
  };
}
