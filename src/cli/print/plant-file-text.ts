import { counted, jsonText, shown, visibleText } from "../../core/index";
import type { RefusedRow } from "../../plant/index";

/** Why a row of a list was refused, with line and column, for standard error. */
export function refusedText(row: RefusedRow, file: string, json: boolean): string {
  if (json) return `${jsonText({ error: { file, ...row } })}\n`;
  const { line, tag, column, code, message } = row;
  const where = [file, `line ${line}`, tag, column === undefined ? "" : `column ${column}`].filter((one) => one !== "");
  return `${visibleText(`veladis: ${where.join(", ")}: ${code}`)}\n  ${visibleText(message)}\n`;
}

/** Refused rows that are told one by one where one option would read many of them. */
const FEW = 5;

/** Why rows of a list were refused: what would read many at once first, and then but a few of them one by one. */
export function refusedRowsText(
  rows: readonly RefusedRow[],
  hints: readonly string[],
  file: string,
  json: boolean,
): string {
  if (json || hints.length === 0) return rows.map((row) => refusedText(row, file, json)).join("");
  const more = rows.length - FEW;
  return [
    ...hints.map((hint) => `${visibleText(`veladis: ${file}: ${hint}`)}\n`),
    ...rows.slice(0, FEW).map((row) => refusedText(row, file, json)),
    ...(more > 0 ? [`veladis: ${counted(more, "refusal")} more; all with --json\n`] : []),
  ].join("");
}

/** The columns that are none of the list's, in a line; nothing for none. */
export function ownColumnsText(columns: readonly string[]): string {
  if (columns.length === 0) return "";
  return `columns of your own, kept and not read: ${columns.map(shown).join(", ")}\n`;
}
