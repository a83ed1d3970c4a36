import { cellText } from "../core/index";

/** The text of a cell before which an apostrophe was put so that no spreadsheet runs it; any other cell as it is. */
export function unguarded(cell: string): string {
  const text = cell.trim();
  const rest = text.slice(1);
  return text.startsWith("'") && cellText(rest) === text ? rest : text;
}
