import {
  attempt,
  frozen,
  inPlace,
  requireGiven,
  requireKnownOptions,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { convertAmplitude, linearTypeOf } from "../amplitude/index";
import { asFoundAsLeft, checkAgainstKnown, foundMeanings, type KnownCheckResult } from "../verification/index";
import { requireDay } from "./calendar";
import { calendarDay } from "./calendar-day";
import { amountText, type CellOptions, pointed } from "./cell-readers";
import type { PlantColumn } from "./columns";
import { rowsByTag } from "./compared-tag";
import { namedCells, namedColumns } from "./named-cells";
import type { CalendarDay, Plant, PlantMachine, RefusedRow } from "./plant-machine";
import { type PlantTable, requireTable } from "./parse-plant";
import { type ResultColumn, resultColumns, resultTitles } from "./result-columns";
import { sheetOfNumber } from "./sheet-number";

/** How results are read, and on which day. */
export interface ResultOptions extends CellOptions {
  /** The day on which they are read: no check is later. */
  readonly on: CalendarDay;
}

/** The result of a check, as it came back from the bench. */
export interface TakenResult {
  /** Line of its row in the file of results. */
  readonly line: number;
  readonly number: string;
  readonly tag: string;
  /** Line of the machine in the list. */
  readonly machineLine: number;
  readonly date: CalendarDay;
  /** The day of the check before; null where none is known. */
  readonly before: CalendarDay | null;
  readonly by: string;
  readonly asFound: KnownCheckResult;
  /** Null where nothing was adjusted, so that it was left as found. */
  readonly asLeft: KnownCheckResult | null;
  /** What the device as found means for the readings since the check before. */
  readonly meaning: string;
  readonly remarks: readonly string[];
  /** The cells of the list that it changes, by column; an empty text empties the cell. */
  readonly cells: Readonly<Partial<Record<PlantColumn, string>>>;
}

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

/** Share of the trip below which a known level says little of it; common practice, no source. */
const FAR_FROM_TRIP = 0.5;

type Cells = Readonly<Record<ResultColumn, string>>;

function refuse(code: VeladisError["code"], option: ResultColumn, expected: string, received: string): never {
  throw new VeladisError(code, { expected, received, option });
}

/** The machine that number and tag of a row name. */
function machineOf({ number, tag }: Cells, plant: Plant): PlantMachine {
  const sheet = sheetOfNumber(number);
  if (sheet === undefined) refuse("syntax", "number", `${resultColumns.number.says}, tag and day of its round such as "LU-01-2026-12-01"`, shown(number));
  if (sheet.tag !== tag) refuse("out-of-range", "tag", `${sheet.tag}, as the number of the sheet names it`, shown(tag));
  const [machine, another] = rowsByTag(plant.machines).get(tag) ?? [];
  if (another !== undefined) {
    refuse("out-of-range", "tag", `a tag of one row of the list, not of lines ${machine?.line} and ${another.line}`, shown(tag));
  }
  if (machine !== undefined) return machine;
  const row = plant.refused.find((one) => one.tag === tag);
  const expected = row === undefined ? "the tag of a machine in the list" : `a tag whose row in the list can be read: line ${row.line} was refused`;
  return refuse("out-of-range", "tag", expected, shown(tag));
}

/** The day of a check: after the one before, and not after the day on which it is read. */
function dayOf({ number, date }: Cells, before: CalendarDay | null, { on, dates }: ResultOptions): CalendarDay {
  const day = inPlace({ option: "date" }, () => calendarDay(date, dates));
  if (day > on) refuse("out-of-range", "date", `a day not after ${on}, on which the results are read`, day);
  if (before === null) return day;
  if (day <= before) refuse("out-of-range", "date", `a day after the last check, ${before}: an earlier one is in the list already`, day);
  const round = sheetOfNumber(number)?.on as CalendarDay;
  if (round < before) refuse("out-of-range", "number", `a sheet of a round after the last check, ${before}`, shown(number));
  return day;
}

/** The tolerance of a check: that of the row, which must be that of the list where both have one. */
function toleranceOf(row: string, listed: string | undefined, decided: (tolerance: string) => KnownCheckResult): string {
  const tolerance = row === "" ? listed : row;
  if (tolerance === undefined) refuse("missing-fact", "tolerance", `${resultColumns.tolerance.says}, here or in the list`, "nothing");
  if (row === "" || listed === undefined) return tolerance;
  const [one, other] = [decided(row).tolerance, decided(listed).tolerance];
  if (Math.abs(one - other) <= 1e-9 * other) return tolerance;
  return refuse("out-of-range", "tolerance", `${listed}, as the list has it; another one is a change of the list, with its record`, shown(row));
}

/** What is to be known of the known level. */
function remarksOn({ trip }: PlantMachine, { known }: KnownCheckResult): readonly string[] {
  if (trip === undefined) return [];
  const at = known.hertz === undefined ? {} : { at: { hertz: known.hertz } };
  const level = attempt(() => convertAmplitude(known, linearTypeOf(trip), at).value / trip.value);
  if (!level.ok || level.value >= FAR_FROM_TRIP) return [];
  return [`the known level is ${(100 * level.value).toFixed(0)} % of the trip: it says little of the reading at the trip (common practice, no source)`];
}

function resultOf(cells: Cells, line: number, plant: Plant, options: ResultOptions, before: ReadonlyMap<string, CalendarDay>): TakenResult {
  const machine = machineOf(cells, plant);
  const { tag } = machine;
  const last = before.get(tag) ?? machine.check?.date ?? null;
  const date = dayOf(cells, last, options);
  const [known, found, left] = [cells.known, cells["as found"], cells["as left"]].map((cell) => pointed(cell, options)) as [string, string, string];
  const row = 
    cells.tolerance === ""
      ? ""
      : inPlace({ option: "tolerance" }, () =>
          amountText(cells.tolerance, options, resultColumns.tolerance.says, true),
        );
  const tolerance = toleranceOf(row, (machine.tolerance ?? machine.check?.tolerance), (one) => checkAgainstKnown({ known, indicated: found, tolerance: one }));
  const pair = left === "" ? undefined : asFoundAsLeft({ known, asFound: found, asLeft: left, tolerance });
  const asFound = pair?.asFound ?? checkAgainstKnown({ known, indicated: found, tolerance });
  return {
    ...{ line, number: cells.number, tag, machineLine: machine.line, date, before: last, by: cells.by },
    ...{ asFound, asLeft: pair?.asLeft ?? null, meaning: foundMeanings[asFound.verdict], remarks: remarksOn(machine, asFound) },
    cells: {
      "check date": date,
      known,
      "as found": found,
      "as left": left,
      ...((machine.tolerance ?? machine.check?.tolerance) === undefined && { tolerance }),
      "checked by": cells.by,
    },
  };
}

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
 */
export function takeResults(plant: Plant, table: PlantTable, options: ResultOptions): TakenResults {
  return withParameters({ plant, table, options }, () => {
    const told = requireKnownOptions(options, keys, {
      what: "an option of results of checks",
      form: 'options such as { on: "2026-12-05" }',
    });
    requireDay(requireGiven(told.on, "the day on which results are read", { option: "on" }), "the day on which results are read", { option: "on" });
    requireGiven(plant, "a plant with its machines", { parameter: "plant" });
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
      const taken = attempt(() => {
        for (const title of resultTitles) {
          if (resultColumns[title].needed && cells[title] === "") refuse("missing-fact", title, resultColumns[title].says, "nothing");
        }
        return resultOf(cells, line, plant, told, last);
      });
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
