import {
  attempt,
  frozen,
  requireKnownOptions,
  shown,
  unknownOption,
  VeladisError,
  withParameters,
} from "../core/index";
import { calendarDay } from "./calendar-day";
import type { CellOptions } from "./cell-readers";
import { type ChangeColumn, changeColumns, changeTitles } from "./change-columns";
import { type PlantColumn, plantColumns } from "./columns";
import { namedCells, namedColumns, plainTitle } from "./named-cells";
import { type PlantTable, requireTable } from "./parse-plant";
import type { ChangedSetting, ChangeRecord, PlantChange } from "./plant-change";
import type { CalendarDay, RefusedRow } from "./plant-machine";
import { isSameCell } from "./same-cell";
import { valueOfCell } from "./value-of-cell";
import { visibleTag } from "./visible-tag";

const keys: Readonly<Record<keyof CellOptions, true>> = /* @__PURE__ */ Object.freeze({ decimal: true, dates: true });

/** What can be changed: the columns of the list but the tag, and protection that is bypassed. */
export const changedSettings = /* @__PURE__ */ (() =>
  [
    ...(Object.keys(plantColumns) as readonly PlantColumn[]).filter((column) => column !== "tag"),
    "bypass",
  ] as readonly ChangedSetting[])();

/** A cell that was refused. */
interface RefusedCell {
  readonly column: ChangeColumn | undefined;
  readonly error: VeladisError;
}

/** The words of a row by column, all of them told, empty where nothing stands. */
export type ChangeCells = Readonly<Record<ChangeColumn, string>>;

function settingOf(cell: string): ChangedSetting {
  const found = changedSettings.find((one) => plainTitle(one) === plainTitle(cell));
  if (found !== undefined) return found;
  throw unknownOption(cell, changedSettings, "a column of the list that was changed, or bypass");
}

/** What protects a machine, and can be bypassed; any of these words says it. */
const protections =
  /\b(?:trips?|alarms?|sensors?|channels?|devices?|relays?|interlocks?|protection|shutdown|outputs?)\b/i;

/** What an entry may not be, all cells being readable. */
function contradiction({ setting, old, new: now, date, until, putBack }: PlantChange): RefusedCell | undefined {
  const refuse = (column: ChangeColumn, expected: string, received: string): RefusedCell => ({
    column,
    error: new VeladisError("out-of-range", { expected, received, option: column }),
  });
  if (setting === "bypass") {
    if ((old === "") === (now === "")) {
      return refuse(
        "new",
        "of a bypass either new, what is bypassed, or old, what is not bypassed any more",
        old === "" ? "neither" : "both",
      );
    }
    const [column, what] = now === "" ? (["old", old] as const) : (["new", now] as const);
    if (!protections.test(what))
      return refuse(
        column,
        "what is bypassed: trip, alarm, sensor, channel, device, relay, interlock, with words about it",
        shown(what),
      );
    if (now === "" && until !== undefined) return refuse("until", "no until where a bypass is lifted", until);
  } else if (isSameCell(setting, old, now)) {
    return refuse("new", "a value other than the old one", old === "" ? "nothing in both" : shown(now));
  }
  if (until !== undefined && until < date) return refuse("until", `a day on or after ${date}`, until);
  if (putBack !== undefined && putBack < date) return refuse("put back", `a day on or after ${date}`, putBack);
  if (putBack !== undefined && setting === "bypass" && now === "") {
    return refuse("put back", "nothing where a bypass is lifted", putBack);
  }
  return undefined;
}

/** The entry that the cells of a row say, or every cell that is refused. */
export function changeOfCells(
  cells: ChangeCells,
  line: number,
  options: CellOptions,
): { readonly change?: PlantChange; readonly refused: readonly RefusedCell[] } {
  const refused: RefusedCell[] = [];
  const read = <Value>(column: ChangeColumn, reader: (cell: string) => Value): Value | undefined => {
    const cell = cells[column];
    const told = attempt((): Value | undefined => {
      if (cell !== "") return reader(cell);
      if (!changeColumns[column].needed) return undefined;
      throw new VeladisError("missing-fact", {
        expected: changeColumns[column].says,
        received: "nothing",
        option: column,
      });
    });
    if (told.ok) return told.value;
    refused.push({ column, error: told.error });
    return undefined;
  };
  const text = (column: ChangeColumn) => read(column, (cell) => cell);
  const day = (column: ChangeColumn): CalendarDay | undefined =>
    read(column, (cell) => calendarDay(cell, options.dates));
  const [date, tag, setting] = [day("date"), read("tag", visibleTag), read("setting", settingOf)];
  const value = (column: "old" | "new") =>
    read(column, (cell) =>
      setting === undefined || setting === "bypass" ? cell : valueOfCell(setting, cell, options),
    ) ?? "";
  const found = {
    ...{ line, date, tag, setting, old: value("old"), new: value("new") },
    ...{ reason: text("reason"), who: text("who") },
  };
  const [approvedBy, until, putBack] = [text("approved by"), day("until"), day("put back")];
  if (refused.length > 0) return { refused };
  const change = {
    ...found,
    ...(approvedBy !== undefined && { approvedBy }),
    ...(until !== undefined && { until }),
    ...(putBack !== undefined && { putBack }),
  } as PlantChange;
  const wrong = contradiction(change);
  return wrong === undefined ? { change, refused } : { refused: [wrong] };
}

/**
 * The entries of a record of changes: a row each, under the headings of {@link changeColumns}, in any order. Of a row with a
 * cell that cannot be read nothing is taken: `refused` names line and column, and the other rows are still read.
 *
 * @param table - heading, rows and, where they come from a file, the line of each
 * @param options - `decimal` (`","` for 7,1) and `dates` (`"day-first"` for 31.03.2026)
 * @throws {@link VeladisError} `missing-fact` without one of the columns, `syntax` for a heading twice, `unknown-option` for
 *   one that is nearly a heading of the record, `wrong-type`, `length-mismatch`
 * @example
 * ```ts
 * import { changeTitles, parseChanges } from "veladis/plant";
 *
 * const row = ["2026-03-12", "LU-01", "trip", "9 mm/s rms", "8.6 mm/s rms", "new baseline", "shift B", "plant engineer", "", ""];
 * const { changes, refused } = parseChanges({ heading: changeTitles, rows: [row, ["soon", ...row.slice(1)]] });
 * changes.map(({ line, setting, old, new: now }) => [line, setting, old, now]); // => [[2, "trip", "9 mm/s rms", "8.6 mm/s rms"]]
 * refused.map(({ line, column, code }) => [line, column, code]); // => [[3, "date", "syntax"]]
 * ```
 */
export function parseChanges(table: PlantTable, options: CellOptions = {}): ChangeRecord {
  return withParameters({ options, table }, () => {
    const told = requireKnownOptions(options, keys, {
      what: "an option of a record of changes",
      form: 'options such as { decimal: ",", dates: "day-first" }',
    });
    const { heading, rows, lines } = requireTable(table);
    const columns = namedColumns(heading, changeTitles, "a record of changes");
    const changes: PlantChange[] = [];
    const refused: RefusedRow[] = [];
    for (const [i, row] of rows.entries()) {
      const line = lines?.[i] ?? i + 2;
      const cells = attempt(() => namedCells(row, heading, columns));
      if (!cells.ok) {
        refused.push({ line, tag: "", code: cells.error.code, message: cells.error.message });
        continue;
      }
      const { tag } = cells.value;
      const read = changeOfCells(cells.value, line, told);
      if (read.change !== undefined) changes.push(read.change);
      for (const { column, error } of read.refused) {
        const { code, message } = error;
        refused.push({ line, tag, ...(column !== undefined && { column }), code, message });
      }
    }
    return frozen({ changes, refused });
  });
}
