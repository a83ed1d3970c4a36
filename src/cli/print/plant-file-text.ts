import { jsonText, shown, visibleText } from "../../core/index";
import type { RefusedRow } from "../../plant/index";

/** Why a row of a list was refused, with line and column, for standard error. */
export function refusedText(row: RefusedRow, file: string, json: boolean): string {
  if (json) return `${jsonText({ error: { file, ...row } })}\n`;
  const { line, tag, column, code, message } = row;
  const where = [file, `line ${line}`, tag, column === undefined ? "" : `column ${column}`].filter((one) => one !== "");
  return `${visibleText(`veladis: ${where.join(", ")}: ${code}`)}\n  ${visibleText(message)}\n`;
}

/** The columns that are none of the list's, in a line; nothing for none. */
export function ownColumnsText(columns: readonly string[]): string {
  if (columns.length === 0) return "";
  return `columns of your own, kept and not read: ${columns.map(shown).join(", ")}\n`;
}
