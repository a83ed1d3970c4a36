import type { WholeAccount } from "../delimited/account-text";
import { type LeftOut, leftOutText } from "./bad-rows";
import { linesText, type RowLines, rowsText } from "./row-lines";
import type { TimesTold } from "./time-column";

/** What is told of how a series was read, beside its numbers. */
export interface SeriesTold {
  readonly rows: WholeAccount;
  readonly leftOut?: LeftOut;
  /** Cells that say over range, taken as sensor faults. */
  readonly overRange?: RowLines;
  readonly times?: TimesTold;
}

function timesText({ as, clock, provedBy, equal }: TimesTold): string {
  const how = provedBy === undefined ? "" : `, since line ${provedBy} admits no other order`;
  const isPlain = as === "seconds" || as === "dates";
  return (
    (isPlain ? "" : `times: ${as}${how}; the first is ${clock}\n`) +
    (equal.rows === 0 ? "" : `times: ${rowsText(equal.rows)} at the time of the row above (${linesText(equal)})\n`)
  );
}

/** The same as lines for a person; none where nothing is out of the ordinary. */
export function seriesText({ leftOut, overRange, times }: SeriesTold): string {
  const over =
    overRange && `over range: ${rowsText(overRange.rows)} taken as a sensor fault (${linesText(overRange)})\n`;
  return leftOutText(leftOut) + (over ?? "") + (times === undefined ? "" : timesText(times));
}

/** The same as data. */
export function seriesData({ rows, leftOut, overRange, times }: SeriesTold): object {
  return { rows, ...(leftOut && { leftOut }), ...(overRange && { overRange }), ...(times && { times }) };
}
