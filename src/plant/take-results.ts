import { attempt, frozen, requireGiven, requireKnownOptions, withParameters } from "../core/index";
import { requireDay } from "./calendar";
import { namedCells, namedColumns } from "./named-cells";
import { type PlantTable, requireTable } from "./parse-plant";
import type { CalendarDay, Plant, RefusedRow } from "./plant-machine";
import { requirePlant } from "./require-plant";
import { type ResultColumn, resultTitles } from "./result-columns";
import { type ResultOptions, resultOfCells, type TakenResult } from "./taken-result";

/** A row that nobody has filled in yet. */
export interface OpenResult {
  readonly line: number;
  readonly number: string;
  readonly tag: string;
}

/** Results of checks as read, those still open, and the rows that were refused. */
export interface TakenResults {
  readonly results: readonly TakenResult[];
  readonly open: readonly OpenResult[];
  readonly refused: readonly RefusedRow[];
}

/** What a person fills in; number, tag, known level and tolerance stand in the file that goes with the sheets. */
const byHand = ["date", "as found", "as left", "by"] as const satisfies readonly ResultColumn[];

const keys: Readonly<Record<keyof ResultOptions, true>> = /* @__PURE__ */ Object.freeze({
  on: true,
  decimal: true,
  dates: true,
});

/** The column of the results that a refusal means. */
const columnOf: Readonly<Record<string, ResultColumn>> = {
  indicated: "as found",
  asFound: "as found",
  asLeft: "as left",
};

/**
 * The results of checks that came back from the bench, each held against its known level, and what they change in the list.
 *
 * A row names its sheet by number, tag and day. One with a wrong number, another tag, a day that is none, that is not after the
 * last check or that lies ahead is refused with line and column; the other rows are still read.
 *
 * @param table - heading (the keys of {@link resultColumns}, in any order), rows and, from a file, the line of each
 * @throws {@link VeladisError} `missing-fact` without one of the columns, `syntax` for a heading twice, `unknown-option`,
 *   `wrong-type`, `length-mismatch`, and `missing-option` without the day
 * @example
 * ```ts
 * import { doubtfulPeriods, parsePlant, takeResults } from "veladis/plant";
 *
 * const list = { heading: ["tag", "kind", "trip", "check date", "tolerance"], rows: [["LU-01", "fan", "9 mm/s rms", "2025-10-31", "5 %"]] };
 * const plant = parsePlant(list);
 * const heading = ["number", "tag", "date", "known", "as found", "as left", "tolerance", "by"];
 * const row = ["LU-01-2026-12-01", "LU-01", "2026-12-03", "8 mm/s rms at 40 Hz", "7.3 mm/s rms", "7.9 mm/s rms", "", "shift B"];
 * const { results, refused } = takeResults(plant, { heading, rows: [row] }, { on: "2026-12-05" });
 * [results[0]?.asFound.verdict, results[0]?.asLeft?.verdict, refused.length]; // => ["fail", "pass", 0]
 * results[0]?.cells["as found"]; // => "7.3 mm/s rms"
 * const [doubt] = doubtfulPeriods(plant, results);
 * [doubt?.from, doubt?.to, doubt?.reads]; // => ["2025-10-31", "2026-12-03", "low"]
 * doubt?.tripsAt?.value.toFixed(2); // => "9.86"
 * ```
 */
export function takeResults(plant: Plant, table: PlantTable, options: ResultOptions): TakenResults {
  return withParameters({ plant, table, options }, () => {
    const told = requireKnownOptions(options, keys, {
      what: "an option of results of checks",
      form: 'options such as { on: "2026-12-05" }',
    });
    requireDay(
      requireGiven(told.on, "the day on which results are read", { option: "on" }),
      "the day on which results are read",
      { option: "on" },
    );
    requirePlant(plant);
    const { heading, rows, lines } = requireTable(table);
    const columns = namedColumns(heading, resultTitles, "results of checks");
    const results: TakenResult[] = [];
    const open: OpenResult[] = [];
    const refused: RefusedRow[] = [];
    const last = new Map<string, CalendarDay>();
    for (const [i, row] of rows.entries()) {
      const line = lines?.[i] ?? i + 2;
      const read = attempt(() => namedCells(row, heading, columns));
      if (!read.ok) {
        refused.push({ line, tag: "", code: read.error.code, message: read.error.message });
        continue;
      }
      const cells = read.value;
      if (byHand.every((title) => cells[title] === "")) {
        open.push({ line, number: cells.number, tag: cells.tag });
        continue;
      }
      const taken = attempt(() => resultOfCells(cells, line, { plant, options: told, before: last }));
      if (taken.ok) {
        results.push(taken.value);
        last.set(taken.value.tag, taken.value.date);
        continue;
      }
      const { code, message, option = "" } = taken.error;
      const column = columnOf[option] ?? resultTitles.find((title) => title === option);
      refused.push({ line, tag: cells.tag, ...(column !== undefined && { column }), code, message });
    }
    return frozen({ results, open, refused });
  });
}
