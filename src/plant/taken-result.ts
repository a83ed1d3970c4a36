import { convertAmplitude, linearTypeOf } from "../amplitude/index";
import { attempt, inPlace, shown, VeladisError } from "../core/index";
import { asFoundAsLeft, checkAgainstKnown, foundMeanings, type KnownCheckResult } from "../verification/index";
import { calendarDay } from "./calendar-day";
import { amountText, type CellOptions, pointedValue } from "./cell-readers";
import type { PlantColumn } from "./columns";
import { rowsByTag } from "./compared-tag";
import type { CalendarDay, Plant, PlantMachine } from "./plant-machine";
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
  /** The largest error allowed, as it was told. */
  readonly tolerance: string;
  readonly asFound: KnownCheckResult;
  /** Null where nothing was adjusted, so that it was left as found. */
  readonly asLeft: KnownCheckResult | null;
  /** What the device as found means for the readings since the check before. */
  readonly meaning: string;
  readonly remarks: readonly string[];
  /** The cells of the list that it changes, by column; an empty text empties the cell. */
  readonly cells: Readonly<Partial<Record<PlantColumn, string>>>;
}

/** Share of the trip below which a known level says little of it; common practice, no source. */
const FAR_FROM_TRIP = 0.5;

/** The cells of a row by column. */
export type ResultCells = Readonly<Record<ResultColumn, string>>;

function refuse(code: VeladisError["code"], option: ResultColumn, expected: string, received: string): never {
  throw new VeladisError(code, { expected, received, option });
}

/** The machine that number and tag of a row name. */
function machineOf({ number, tag }: ResultCells, plant: Plant): PlantMachine {
  const sheet = sheetOfNumber(number);
  if (sheet === undefined)
    refuse(
      "syntax",
      "number",
      `${resultColumns.number.says}, tag and day of its round such as "LU-01-2026-12-01"`,
      shown(number),
    );
  if (sheet.tag !== tag) refuse("out-of-range", "tag", `${sheet.tag}, as the number of the sheet names it`, shown(tag));
  const [machine, another] = rowsByTag(plant.machines).get(tag) ?? [];
  if (another !== undefined) {
    refuse(
      "out-of-range",
      "tag",
      `a tag of one row of the list, not of lines ${machine?.line} and ${another.line}`,
      shown(tag),
    );
  }
  if (machine !== undefined) return machine;
  const row = plant.refused.find((one) => one.tag === tag);
  const expected =
    row === undefined
      ? "the tag of a machine in the list"
      : `a tag whose row in the list can be read: line ${row.line} was refused`;
  return refuse("out-of-range", "tag", expected, shown(tag));
}

/** The day of a check: after the one before, and not after the day on which it is read. */
function dayOf({ number, date }: ResultCells, before: CalendarDay | null, { on, dates }: ResultOptions): CalendarDay {
  const day = inPlace({ option: "date" }, () => calendarDay(date, dates));
  if (day > on) refuse("out-of-range", "date", `a day not after ${on}, on which the results are read`, day);
  const round = sheetOfNumber(number)?.on as CalendarDay;
  if (day < round)
    refuse("out-of-range", "date", `a day not before ${round}, the round of its sheet ${shown(number)}`, day);
  if (before === null) return day;
  if (day <= before)
    refuse("out-of-range", "date", `a day after the last check, ${before}: an earlier one is in the list already`, day);
  if (round < before)
    refuse("out-of-range", "number", `a sheet of a round after the last check, ${before}`, shown(number));
  return day;
}

/** The tolerance of a check: that of the row, which must be that of the list where both have one. */
function toleranceOf(
  row: string,
  listed: string | undefined,
  decided: (tolerance: string) => KnownCheckResult,
): string {
  const tolerance = row === "" ? listed : row;
  if (tolerance === undefined)
    refuse("missing-fact", "tolerance", `${resultColumns.tolerance.says}, here or in the list`, "nothing");
  if (row === "" || listed === undefined) return tolerance;
  const [one, other] = [decided(row).tolerance, decided(listed).tolerance];
  if (Math.abs(one - other) <= 1e-9 * other) return tolerance;
  return refuse(
    "out-of-range",
    "tolerance",
    `${listed}, as the list has it; another one is a change of the list, with its record`,
    shown(row),
  );
}

/** What is to be known of the known level. */
function remarksOn({ trip }: PlantMachine, { known }: KnownCheckResult): readonly string[] {
  if (trip === undefined) return [];
  const at = known.hertz === undefined ? {} : { at: { hertz: known.hertz } };
  const level = attempt(() => convertAmplitude(known, linearTypeOf(trip), at).value / trip.value);
  if (!level.ok || level.value >= FAR_FROM_TRIP) return [];
  return [
    `the known level is ${(100 * level.value).toFixed(0)} % of the trip: it says little of the reading at the trip (common practice, no source)`,
  ];
}

/** What a row of results is read with. */
interface ResultsSoFar {
  readonly plant: Plant;
  readonly options: ResultOptions;
  /** The day of the last check of each tag, by the rows above. */
  readonly before: ReadonlyMap<string, CalendarDay>;
}

/**
 * The result that the cells of a row say.
 *
 * @throws {@link VeladisError} for a row that is none, with the heading of the cell
 */
export function resultOfCells(cells: ResultCells, line: number, { plant, options, before }: ResultsSoFar): TakenResult {
  for (const title of resultTitles) {
    if (resultColumns[title].needed && cells[title] === "")
      refuse("missing-fact", title, resultColumns[title].says, "nothing");
  }
  const machine = machineOf(cells, plant);
  const { tag } = machine;
  const last = before.get(tag) ?? machine.check?.date ?? null;
  const date = dayOf(cells, last, options);
  const [known, found, left] = (["known", "as found", "as left"] as const).map((option) =>
    inPlace({ option }, () => pointedValue(cells[option], options)),
  ) as [string, string, string];
  const row =
    cells.tolerance === ""
      ? ""
      : inPlace({ option: "tolerance" }, () =>
          amountText(cells.tolerance, options, resultColumns.tolerance.says, true),
        );
  const tolerance = toleranceOf(row, machine.tolerance ?? machine.check?.tolerance, (one) =>
    checkAgainstKnown({ known, indicated: found, tolerance: one }),
  );
  const pair = left === "" ? undefined : asFoundAsLeft({ known, asFound: found, asLeft: left, tolerance });
  const asFound = pair?.asFound ?? checkAgainstKnown({ known, indicated: found, tolerance });
  return {
    ...{ line, number: cells.number, tag, machineLine: machine.line, date, before: last, by: cells.by, tolerance },
    ...{
      asFound,
      asLeft: pair?.asLeft ?? null,
      meaning: foundMeanings[asFound.verdict],
      remarks: remarksOn(machine, asFound),
    },
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
