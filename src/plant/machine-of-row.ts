import { attempt, frozen, shown, VeladisError } from "../core/index";
import { coils, contacts, multiplierOfText, resetLevel, sensorFaults, timerResets } from "../device/index";
import { parseMachine, type SchemeRef } from "../severity/index";
import { calendarDay } from "./calendar-day";
import {
  amountText,
  bandOf,
  type CellOptions,
  choiceOf,
  countOf,
  loopText,
  numberOf,
  pointed,
  readingOf,
  sensorText,
  setpointOf,
} from "./cell-readers";
import { type PlantColumn, plantColumns } from "./columns";
import { factColumns, factWords, requireFact, requireKind } from "./machine-words";
import type { PlantMachine } from "./plant-machine";
import { ownLimits, tableId } from "./row-limits";
import { visibleTag } from "./visible-tag";

/** How the rows of a list are read. */
export interface RowOptions extends CellOptions {
  /** The tables that a row may name; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
}

/** A cell that was refused. */
export interface RefusedCell {
  readonly column: PlantColumn;
  readonly error: VeladisError;
}

/** The cells of a row by column, trimmed, none of them empty. */
export type RowCells = { readonly [Column in PlantColumn]?: string };

/** Columns that say nothing without another one. */
const without: readonly (readonly [column: PlantColumn, needs: PlantColumn])[] = [
  ["limits source", "limits"],
  ["baseline date", "baseline"],
  ["baseline count", "baseline"],
  ["baseline deviation", "baseline"],
  ["known", "check date"],
  ["as found", "check date"],
  ["as left", "check date"],
  ["checked by", "check date"],
];

/** The cells with a point for decimals and days as 2026-03-31; what cannot be read so stays as it is. */
function plainCells(cells: RowCells, options: RowOptions): RowCells {
  if (options.decimal !== "," && options.dates === undefined) return cells;
  const plain = Object.entries(cells).map(([column, cell]) => {
    const isDay = plantColumns[column as PlantColumn].holds === "date";
    const told = attempt(() => (isDay ? calendarDay(cell, options.dates) : pointed(cell, options)));
    return [column, told.ok ? told.value : cell];
  });
  return Object.fromEntries(plain);
}

/** What is left of an object without the keys that have no value. */
function present<Parts extends object>(parts: Parts): { [Key in keyof Parts]: Exclude<Parts[Key], undefined> } {
  const there = Object.entries(parts).filter(([, value]) => value !== undefined);
  return Object.fromEntries(there) as never;
}

/**
 * The machine that the cells of a row say, and every cell that is refused: of a row with one nothing is taken.
 *
 * @param own - its cells of columns that are none of the list's
 */
export function machineOfRow(
  cells: RowCells,
  line: number,
  own: Readonly<Record<string, string>>,
  options: RowOptions,
): { readonly machine?: PlantMachine; readonly refused: readonly RefusedCell[] } {
  const refused: RefusedCell[] = [];
  const refuse = (column: PlantColumn, error: VeladisError): void => void refused.push({ column, error });
  /** What a cell says, by its reader; undefined for an empty one, and for one that is refused. */
  const read = <Value>(column: PlantColumn, reader: (cell: string, what: string) => Value): Value | undefined => {
    const cell = cells[column];
    if (cell === undefined) return undefined;
    try {
      return reader(cell, plantColumns[column].says);
    } catch (error) {
      if (!VeladisError.is(error)) throw error;
      refuse(column, error);
      return undefined;
    }
  };
  const number = (column: PlantColumn) => read(column, (cell, what) => numberOf(cell, options, what));
  const count = (column: PlantColumn) => read(column, (cell, what) => countOf(cell, options, what));
  const reading = (column: PlantColumn) => read(column, (cell) => readingOf(cell, options));
  const setpoint = (column: PlantColumn) => read(column, (cell, what) => setpointOf(cell, options, what));
  const choice = <const Word extends string>(column: PlantColumn, words: readonly Word[]) =>
    read(column, (cell, what) => choiceOf(cell, words, what));
  const text = (column: PlantColumn) => read(column, (cell) => cell);
  const day = (column: PlantColumn) => read(column, (cell) => calendarDay(cell, options.dates));

  for (const column of ["tag", "kind"] as const) {
    if (cells[column] !== undefined) continue;
    refuse(column, new VeladisError("missing-fact", { expected: plantColumns[column].says, received: "nothing" }));
  }
  read("tag", visibleTag);
  for (const [column, needs] of without) {
    if (cells[column] === undefined || cells[needs] !== undefined) continue;
    refuse(column, new VeladisError("missing-fact", { expected: `${needs}, beside ${column}`, received: "nothing" }));
  }
  if (cells.table !== undefined && cells.limits !== undefined) {
    refuse(
      "limits",
      new VeladisError("out-of-range", {
        expected: "a table, or limits of the maker or the site in its place, not both",
        received: "both",
      }),
    );
  }

  const words: string[] = [];
  read("kind", (cell) => {
    if (cells.limits === undefined) requireKind(pointed(cell, options));
    words.push(pointed(cell, options));
  });
  for (const column of factColumns) {
    read(column, (cell, what) => {
      const said = factWords(column, pointed(cell, options));
      requireFact(column, said, what);
      words.push(said);
    });
  }
  read("nameplate", (cell) => {
    const said = pointed(cell, options);
    parseMachine(said);
    words.push(said);
  });
  const isRead = refused.every(({ column }) => !["kind", "nameplate", ...factColumns].includes(column));
  const machine = isRead ? attempt(() => parseMachine(words.join(", "))) : undefined;
  if (machine?.ok === false) refuse(cells.nameplate === undefined ? "kind" : "nameplate", machine.error);

  const limitsCell = read("limits", (cell) => ownLimits(cell, cells["limits source"], options));
  const alarm = setpoint("alarm");
  const trip = setpoint("trip");
  const hysteresis = read("hysteresis", (cell, what) => {
    const amount = amountText(cell, options, what);
    const setpoints = [trip, alarm].filter((one) => one !== undefined);
    // a share is one of every setpoint, and tells by itself whether the output can clear
    for (const one of amount.endsWith("%") ? setpoints.slice(0, 1) : setpoints) resetLevel(one, amount);
    return amount;
  });
  const latching = choice("latching", ["yes", "no"]);
  const step = setpoint("step");
  const device = present({
    step: step && pointed(cells.step as string, options),
    lowest: setpoint("lowest") && pointed(cells.lowest as string, options),
    highest: setpoint("highest") && pointed(cells.highest as string, options),
  });
  const settings = present({
    hysteresis,
    offDelay: number("off-delay s"),
    startInhibit: number("start inhibit s"),
    multiplier: read("multiplier", (cell) => multiplierOf(pointed(cell, options))),
    timerResets: choice("timer resets", timerResets),
    latching: latching === undefined ? undefined : latching === "yes",
    contact: choice("contact", contacts),
    coil: choice("coil", coils),
    sensorFault: choice("sensor fault", sensorFaults),
  });
  const level = reading("baseline");
  const baseline = present({
    level,
    date: day("baseline date"),
    count: count("baseline count"),
    deviation: reading("baseline deviation"),
  });
  const date = day("check date");
  const tolerance = read("tolerance", (cell, what) => amountText(cell, options, what, true));
  const check = present({
    date,
    known: setpoint("known"),
    asFound: reading("as found"),
    asLeft: reading("as left"),
    tolerance,
    by: text("checked by"),
  });
  const found = present({
    description: text("description"),
    startUp: number("start-up s"),
    coastDown: number("coast-down s"),
    table: read("table", (cell) => tableId(cell, options.schemes)),
    limits: limitsCell,
    ceiling: setpoint("ceiling"),
    sensor: read("sensor", (cell) => sensorText(cell, options)),
    loop: read("loop", (cell) => loopText(cell, options)),
    band: read("band", (cell) => bandOf(cell, options)),
    alarm,
    alarmDelay: number("alarm delay s"),
    trip,
    tripDelay: number("trip delay s"),
    tolerance,
    interval: read("interval months", (cell, what) => countOf(cell, options, what, 1200)),
  });
  if (refused.length > 0 || machine?.ok !== true) {
    const order = Object.keys(plantColumns);
    return { refused: refused.sort((one, other) => order.indexOf(one.column) - order.indexOf(other.column)) };
  }
  return {
    refused,
    machine: frozen({
      tag: cells.tag as string,
      line,
      ...found,
      machine: machine.value,
      settings,
      device,
      ...(level !== undefined && { baseline }),
      ...(date !== undefined && { check }),
      cells: plainCells(cells, options),
      own,
    } as PlantMachine),
  };
}

/** A multiplied setpoint, above 1 and for some time. */
function multiplierOf(cell: string): ReturnType<typeof multiplierOfText> {
  const multiplier = multiplierOfText(cell);
  if (multiplier.factor > 1 && multiplier.seconds > 0) return multiplier;
  throw new VeladisError("out-of-range", {
    expected: "a factor above 1 and a time above zero, in s",
    received: shown(cell),
  });
}
