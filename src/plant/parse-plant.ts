import {
  requireChoice,
  requireGiven,
  requireKnownKeys,
  requireKnownOptions,
  requireList,
  requireText,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import type { PlantColumn } from "./columns";
import { machineOfRow, type RowCells, type RowOptions } from "./machine-of-row";
import { type PlantHeadings, plantHeadings } from "./plant-headings";
import type { Plant, PlantMachine, RefusedRow } from "./plant-machine";

/** A list of machines as cells: what a reader of files or a spreadsheet gives. */
export interface PlantTable {
  /** The headings, in any order; see {@link plantColumns}. */
  readonly heading: readonly string[];
  /** Below each heading its cell; an empty one is not known. */
  readonly rows: readonly (readonly string[])[];
  /** The line of each row in its file; 2, 3, ... if not given. */
  readonly lines?: readonly number[];
}

/** What {@link parsePlant} can be told besides. */
export interface PlantOptions extends RowOptions {
  /** Headings that are your own although they are nearly those of the list. */
  readonly own?: readonly string[];
}

const tableKeys: Readonly<Record<keyof PlantTable, true>> = /* @__PURE__ */ Object.freeze({
  heading: true,
  rows: true,
  lines: true,
});

const optionKeys: Readonly<Record<keyof PlantOptions, true>> = /* @__PURE__ */ Object.freeze({
  decimal: true,
  dates: true,
  schemes: true,
  own: true,
});

const FORM = 'a list such as { heading: ["tag", "kind"], rows: [["LU-01", "fan"]] }';

/** The table itself, of texts throughout. */
export function requireTable(table: PlantTable): PlantTable {
  const { heading, rows, lines } = requireKnownKeys(
    requireGiven(table, FORM, { parameter: "table" }),
    tableKeys,
    "a part of a list",
    { parameter: "table" },
  );
  for (const text of requireList(heading, FORM, { option: "heading" })) requireCell(text, "heading");
  requireList(rows, FORM, { option: "rows" });
  for (const row of rows) for (const text of requireList(row, FORM, { option: "rows" })) requireCell(text, "rows");
  if (lines !== undefined && requireList(lines, FORM, { option: "lines" }).length !== rows.length) {
    throw new VeladisError("length-mismatch", {
      expected: `a line for each of ${rows.length} rows`,
      received: `${lines.length}`,
      option: "lines",
    });
  }
  return table;
}

function requireCell(text: unknown, option: string): void {
  if (typeof text === "string") return;
  throw new VeladisError("wrong-type", {
    expected: "a cell as text, empty where nothing is known",
    received: shown(text),
    option,
  });
}

function requirePlantOptions(options: PlantOptions): PlantOptions {
  const told = requireKnownOptions(options, optionKeys, {
    what: "an option of a plant's list",
    form: 'options such as { decimal: ",", dates: "day-first" }',
  });
  const { decimal, dates, own, schemes } = told;
  if (decimal !== undefined)
    requireChoice(decimal, [".", ","], "what stands before the decimals", { option: "decimal" });
  if (dates !== undefined)
    requireChoice(dates, ["day-first", "month-first"], "the order of day and month", { option: "dates" });
  if (schemes !== undefined) requireList(schemes, "a list of tables", { option: "schemes" });
  if (own !== undefined)
    for (const one of requireList(own, "a list of headings", { option: "own" }))
      requireText(one, "a heading of your own, as text", { option: "own" });
  return told;
}

/** The cells of a row under the headings that were found, trimmed; the empty ones are left out. */
function cellsOf(row: readonly string[], { columns, own }: PlantHeadings) {
  const cells: Partial<Record<PlantColumn, string>> = {};
  for (const [column, index] of columns) {
    const cell = (row[index] ?? "").trim();
    if (cell !== "") cells[column] = cell;
  }
  const others = own.map(({ heading, index }) => [heading, (row[index] ?? "").trim()] as const);
  return { cells: cells as RowCells, own: Object.fromEntries(others.filter(([, cell]) => cell !== "")) };
}

/**
 * The machines of a plant's list: a row each, under the headings of {@link plantColumns}. Of a row with a cell that cannot be
 * read nothing is taken: `refused` names line and column, and the other rows are still read.
 *
 * Headings stand in any order and are compared without regard to case, blanks, underscores and hyphens. One that is none of
 * the list's is a column of your own, and kept; one that is nearly one of the list's is refused, since its cells would be
 * passed over, unless `own` names it. An empty cell is not known. Two rows with one tag are both kept.
 *
 * @param table - heading, rows and, where they come from a file, the line of each
 * @param options - `decimal` (`","` for 7,1), `dates` (`"day-first"` for 31.03.2026), `own`, `schemes`
 * @throws {@link VeladisError} `missing-fact` without the columns tag and kind, `syntax` for a heading twice,
 *   `unknown-option` for one that is nearly a heading of the list, `wrong-type`, `length-mismatch`
 * @example
 * ```ts
 * import { parsePlant } from "veladis/plant";
 *
 * const plant = parsePlant({
 *   heading: ["Tag", "kind", "power", "trip", "trip_delay_s", "room"],
 *   rows: [
 *     ["LU-01", "fan", "132 kW", "9 mm/s rms", "8", "K2"],
 *     ["LU-02", "fan", "132 kW", "9 mm/s", "8 s", "K2"],
 *   ],
 * });
 * plant.machines.map(({ tag, trip }) => [tag, trip?.value]); // => [["LU-01", 9]]
 * plant.machines[0]?.own; // => { room: "K2" }
 * plant.refused.map(({ line, column, code }) => [line, column, code]);
 * // => [[3, "trip", "missing-detector"], [3, "trip delay s", "not-a-number"]]
 * parsePlant({ heading: ["tag", "kind", "trip dely s"], rows: [] }); // throws unknown-option
 * ```
 */
export function parsePlant(table: PlantTable, options: PlantOptions = {}): Plant {
  return withParameters({ options, table }, () => {
    const told = requirePlantOptions(options);
    const { heading, rows, lines } = requireTable(table);
    const headings = plantHeadings(heading, told.own);
    const machines: PlantMachine[] = [];
    const refused: RefusedRow[] = [];
    for (const [i, row] of rows.entries()) {
      const line = lines?.[i] ?? i + 2;
      if (row.length !== heading.length) {
        const error = new VeladisError("length-mismatch", {
          expected: `${heading.length} cells, as there are headings`,
          received: `${row.length}`,
        });
        refused.push(Object.freeze({ line, tag: "", code: error.code, message: error.message }));
        continue;
      }
      const { cells, own } = cellsOf(row, headings);
      const read = machineOfRow(cells, line, own, told);
      if (read.machine !== undefined) machines.push(read.machine);
      for (const { column, error } of read.refused) {
        const { code, message } = error;
        refused.push(
          Object.freeze({ line, tag: cells.tag ?? "", ...(column !== undefined && { column }), code, message }),
        );
      }
    }
    const ownColumns = headings.own.map((one) => one.heading);
    return Object.freeze({
      machines: Object.freeze(machines),
      refused: Object.freeze(refused),
      ownColumns: Object.freeze(ownColumns),
    });
  });
}
