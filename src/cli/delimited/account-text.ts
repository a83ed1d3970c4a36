import { shown } from "../../core/index";
import type { RowAccount } from "./row-account";

/** What a command made of the rows: all that were refused, by the reader too. */
export interface RowCounts {
  readonly answered: number;
  readonly refused: number;
}

/** An account as an object, for JSON. */
export interface WholeAccount extends RowCounts {
  readonly in: number;
  readonly skipped: RowAccount["skipped"];
  readonly separator: RowAccount["separator"];
  readonly torn: boolean;
  readonly units?: NonNullable<RowAccount["units"]>;
}

/**
 * The account of a run, checked: rows in are those answered, refused and skipped.
 *
 * @throws {@link Error} when they are not, which is a fault of this program
 */
export function wholeAccount(account: RowAccount, { answered, refused }: RowCounts): WholeAccount {
  const { rowsIn, rows, skipped, separator, torn, units } = account;
  const passed = skipped.blank + skipped.remarks + skipped.preamble + (skipped.units ?? 0);
  const handed = rows + account.refused;
  if (rowsIn !== handed + passed || handed !== answered + refused) {
    throw new Error(
      `veladis has lost count, which is a fault of veladis: ${rowsIn} rows in, ${handed} read, ${answered} answered, ${refused} refused, ${passed} skipped; no output was moved to its place`,
    );
  }
  return { in: rowsIn, answered, refused, skipped, separator, torn, ...(units && { units }) };
}

/** The account of a run on a line for standard error; checked as by {@link wholeAccount}. */
export function accountText(account: RowAccount, counts: RowCounts, json: boolean): string {
  const whole = wholeAccount(account, counts);
  if (json) return `${JSON.stringify({ rows: whole })}\n`;
  const { blank, remarks, preamble, units = 0 } = whole.skipped;
  const passed = [
    [blank, "blank"],
    [remarks, remarks === 1 ? "remark" : "remarks"],
    [preamble, "above the header"],
    [units, `row of units: ${whole.units?.cells.map((cell) => shown(cell.trim())).join(", ")}`],
  ].filter(([count]) => count !== 0);
  const which = passed.map(([count, what]) => `${count} ${what}`).join(", ");
  const skipped = `${blank + remarks + preamble + units} skipped${which && ` (${which})`}`;
  const name = whole.separator === "none" ? "none, one column" : whole.separator;
  const separator = name === undefined ? "" : `; separator: ${name}`;
  const torn = whole.torn ? "; the last row has no line end: it may be torn off" : "";
  return `rows: ${whole.in} in = ${whole.answered} answered + ${whole.refused} refused + ${skipped}${separator}${torn}\n`;
}
