import { cellText } from "../../core/index";
import { quotedCell } from "../delimited/cells";

/** A cell of an answer. */
export type CsvCell = string | number | null | undefined;

function cellOf(cell: CsvCell): string {
  if (typeof cell === "number") return `${cell}`;
  return cell === null || cell === undefined ? "" : quotedCell(cellText(cell), ",");
}

/** An answer as CSV: commas, a point for decimals, all digits, nothing that a spreadsheet runs. */
export function csvText(titles: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  return [titles, ...rows].map((row) => `${row.map(cellOf).join(",")}\n`).join("");
}
