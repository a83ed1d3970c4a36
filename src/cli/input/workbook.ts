import { extname } from "node:path";
import { shown, VeladisError } from "../../core/index";
import type { PlantTable } from "../../plant/index";
import { toldOf, type WrittenAs } from "../delimited/written-as";
import { FileStream } from "./open-file";
import { plainSize } from "./plain-file";

/** Beyond any list of machines; keeps what unpacks to far more than a list from being unpacked. */
const MOST_BYTES = 1 << 23;

type Cell = string | number | boolean | Date | null | undefined;

/** Whether a file is a workbook by its name. */
export function isWorkbook(file: string): boolean {
  return extname(file).toLowerCase() === ".xlsx";
}

/** A cell as text: a number with the sign for decimals that is told, a day as 2026-03-31. */
function cellOf(cell: Cell, decimalComma: boolean): string {
  if (cell === null || cell === undefined) return "";
  if (cell instanceof Date) return Number.isNaN(cell.getTime()) ? "" : cell.toISOString().replace("T00:00:00.000Z", "");
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  return typeof cell === "number" && decimalComma ? `${cell}`.replace(".", ",") : `${cell}`;
}

/** The package that reads workbooks, an optional one. */
async function reader() {
  return import("read-excel-file/node").catch(() => {
    throw new VeladisError("unreadable", {
      expected:
        "the package read-excel-file beside veladis, to read .xlsx: npm install read-excel-file; a list saved as .csv needs none",
      received: "nothing",
    });
  });
}

/** The one sheet that has cells, or the one that is named. */
function sheetOf<Sheet extends { readonly sheet: string; readonly data: readonly unknown[] }>(
  sheets: readonly Sheet[],
  name: string | undefined,
): Sheet {
  const filled = sheets.filter(({ sheet, data }) => (name === undefined ? data.length > 0 : sheet === name));
  const [only] = filled;
  if (only !== undefined && filled.length === 1) return only;
  throw new VeladisError(name === undefined ? "missing-option" : "unknown-option", {
    expected: "one sheet with the list, named by --worksheet where there are several",
    received: name === undefined ? `${filled.length} with cells` : shown(name),
    allowed: sheets.map(({ sheet }) => sheet),
    option: "worksheet",
  });
}

/**
 * The list in a workbook: the first row with cells has the headings, and each row its own line.
 *
 * @throws {@link VeladisError} `unreadable` for what is no workbook, and without the package that reads it
 */
export async function workbookTable(
  file: string,
  as: WrittenAs,
  worksheet: string | undefined,
): Promise<PlantTable & { readonly lines: readonly number[] }> {
  const told = toldOf({ ...as, decimalComma: false });
  if (told.length > 0) {
    throw new VeladisError("unknown-option", { expected: "options for a workbook", received: told.join(", ") });
  }
  const size = await plainSize(file);
  if (size > MOST_BYTES) {
    throw new VeladisError("out-of-range", { expected: "a workbook of at most 8 MB", received: `${size} bytes` });
  }
  const { default: readWorkbook } = await reader();
  const sheets = await readWorkbook(new FileStream(file, size)).catch((error: unknown) => {
    if (error instanceof VeladisError) throw error;
    const why = error instanceof Error ? error.message : String(error);
    throw new VeladisError("unreadable", {
      expected: "a workbook (.xlsx)",
      received: `${shown(file)}: ${why.slice(0, 80)}`,
    });
  });
  const all = sheetOf(sheets, worksheet).data.map((row, i) => ({
    cells: (row as readonly Cell[]).map((cell) => cellOf(cell, as.decimalComma)),
    line: i + 1,
  }));
  const [head, ...rows] = all.filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const heading = head?.cells ?? [];
  // what is empty at the end of a row has no cell there
  const width = (cells: readonly string[]): string[] =>
    heading.map((_, i) => cells[i] ?? "").concat(cells.slice(heading.length).filter((cell) => cell.trim() !== ""));
  return { heading, rows: rows.map(({ cells }) => width(cells)), lines: rows.map(({ line }) => line) };
}
