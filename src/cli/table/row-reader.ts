import { isSignal } from "../../amplitude/index";
import {
  cachedWithRefusals,
  parseNumeral,
  plainNumeral,
  pointedWords,
  requirePositive,
  shown,
  VeladisError,
} from "../../core/index";
import { frequency, frequencyUnitSymbol } from "../../frequency/index";
import { type Amplitude, agreedHertz, writtenValue } from "../../reading/index";
import { requireHeadingAgrees } from "../delimited/heading-agrees";
import { pointed, requireNoneInColumn } from "../delimited/number-cell";
import type { UnitsRow } from "../delimited/table-form";
import { headingsOf, unitBelow } from "../delimited/units-row";
import type { WrittenAs } from "../delimited/written-as";
import { headedColumn } from "../input/headed-column";
import { measured } from "../input/signal-column";
import { numberIn } from "./cell-number";
import { readCell, readingIn } from "./reading-cell";
import { rowCache } from "./row-cache";
import { judges, type Mapped, signalOf, type TableSettings } from "./settings";
import { unitCheck } from "./unit-check";

/** What a row says. */
export interface RowFacts {
  readonly value: number;
  /** The reading type as written. */
  readonly type: string;
  /** The signal that says it, with its sensor or loop, for the steps; undefined where nobody asks, and of a vibration. */
  readonly signal: string | undefined;
  /** Frequency of the vibration; undefined where the row tells none. */
  readonly hertz: number | undefined;
  /** The machine in words, and behind a tab its running speed in hertz; empty where nothing is told of it. */
  readonly machine: string;
}

type Cells = readonly string[];
type Reader<T> = (cells: Cells) => T;

const order = /^(\d+(?:\.\d+)?)\s*[x×]$/i;

/** A text on one line: tabs and line ends part what is kept of a row. */
function oneLine(text: string): string {
  const trimmed = text.trim();
  return /[\t\r\n]/.test(trimmed) ? trimmed.replace(/\s+/g, " ") : trimmed;
}

/** Reads a text from a column, or gives the one that is the same for all rows. */
function textReader(
  header: Cells,
  { column, fixed }: Mapped,
  name: string,
  written: WrittenAs,
): Reader<string> | undefined {
  if (column === undefined) {
    const same = oneLine(fixed ?? "");
    return fixed === undefined ? undefined : () => same;
  }
  if (fixed !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: `one of --${name} and --${name}-column`,
      received: "both",
    });
  }
  const index = headedColumn(header, column, written);
  return (cells) => oneLine(cells[index] as string);
}

/** The titles of a table, with the units of a row below them, and how it is written. */
interface Headed {
  readonly header: Cells;
  readonly headings: Cells;
  readonly as: WrittenAs;
}

/** A column of frequencies, the unit of its bare numbers, and the option that tells that. */
interface HertzColumn {
  readonly column: string;
  readonly unit: string | undefined;
  readonly option: string;
}

/** Reads a frequency in hertz from a column; a blank cell tells none. */
function hertzReader({ header, headings, as }: Headed, { column, unit, option }: HertzColumn) {
  const index = headedColumn(header, column, as);
  const read = cachedWithRefusals((written) => {
    const cell = as.decimalComma ? pointed(written) : written;
    if (!plainNumeral.test(cell)) return frequency(cell).hertz;
    if (unit !== undefined) return frequency(`${cell} ${unit}`).hertz;
    throw new VeladisError("missing-unit", {
      expected: `a frequency with its unit, or --${option} to say it for bare numbers`,
      received: shown(cell),
    });
  }, rowCache);
  if (unit !== undefined) {
    const told = { by: `--${option} ${shown(unit)}`, frequency: frequencyUnitSymbol(unit) };
    requireHeadingAgrees(headings, index, told, as);
  }
  return (cells: Cells): number | undefined => {
    const cell = (cells[index] as string).trim();
    return cell === "" ? undefined : read(cell);
  };
}

function atReader(
  header: Cells,
  headings: Cells,
  settings: TableSettings,
  speed: Reader<number | undefined> | undefined,
) {
  const { at, atUnit, written } = settings;
  if (at.column !== undefined) {
    textReader(header, at, "at", written);
    return hertzReader({ header, headings, as: written }, { column: at.column, unit: atUnit, option: "at-unit" });
  }
  if (at.fixed === undefined) return undefined;
  const times = order.exec(at.fixed.trim())?.[1];
  if (times === undefined) {
    const { hertz } = frequency(at.fixed);
    return (): number | undefined => hertz;
  }
  const multiple = requirePositive(parseNumeral(times), "an order of the running speed above zero");
  if (speed === undefined) {
    throw new VeladisError("missing-option", {
      expected: `the column of the running speed, as in --speed-column speed, for --at ${at.fixed}`,
      received: "nothing",
    });
  }
  return (cells: Cells): number | undefined => {
    const hertz = speed(cells);
    return hertz === undefined ? undefined : hertz * multiple;
  };
}

function machineReader(header: Cells, settings: TableSettings, speed: Reader<number | undefined> | undefined) {
  const { machine, machineColumns, written } = settings;
  if (!judges(settings)) return () => "";
  const wordsIn = (text: string): string => pointedWords(oneLine(text), written.decimalComma);
  const words = wordsIn(machine);
  const indices = machineColumns.map((column) => headedColumn(header, column, written));
  if (indices.length === 0 && speed === undefined) return () => words;
  return (cells: Cells): string => {
    const said = [words, ...indices.map((i) => wordsIn(cells[i] as string))].filter(Boolean).join(" ");
    const hertz = speed?.(cells);
    return hertz === undefined ? said : `${said}\t${hertz}`;
  };
}

/** Settings in which the unit below the heading of the readings stands for a type that is not told. */
function withUnitBelow(settings: TableSettings, units: UnitsRow | undefined, value: number): TableSettings {
  const { from, written } = settings;
  const unit = unitBelow(units, value, written);
  if (unit === undefined || from.column !== undefined || from.fixed !== undefined) return settings;
  return { ...settings, from: { column: undefined, fixed: unit } };
}

/** How rows of a table with this header are read. */
export interface RowReader {
  (cells: Cells): RowFacts;
  /** The reading type, the frequency and the machine where they are the same for all rows. */
  readonly fixed: Omit<RowFacts, "value"> | undefined;
  /** Whether the frequency may differ from row to row. */
  readonly freeFrequency: boolean;
}

/**
 * Reads rows of a table with this header.
 *
 * @throws {@link VeladisError} for columns there are none of and options that do not go together; later, for a row,
 *   what {@link parseAmplitude} throws
 */
export function rowReader(header: Cells, given: TableSettings, units?: UnitsRow): RowReader {
  const value = headedColumn(header, given.column, given.written);
  const settings = withUnitBelow(given, units, value);
  const { decimalComma } = settings.written;
  const headings = headingsOf(header, units, settings.written);
  const requireUnit = unitCheck(header, headings, value, settings);
  const signal = signalOf(settings);
  const plain = (cells: Cells): number => readCell(cells[value] as string, (cell) => numberIn(cell, decimalComma));
  const number = signal === undefined ? plain : (cells: Cells): number => measured(signal, plain(cells));
  const signalIn = (cells: Cells): string | undefined =>
    signal === undefined || !settings.explain ? undefined : `${plain(cells)} ${signal.words}`;
  const isSame = signal !== undefined && settings.detector.column === undefined;
  const from = isSame ? () => signal.type : textReader(header, settings.from, "from", settings.written);
  const detector = isSame ? undefined : textReader(header, settings.detector, "detector", settings.written);
  const speed =
    settings.speedColumn === undefined
      ? undefined
      : hertzReader(
          { header, headings, as: settings.written },
          { column: settings.speedColumn, unit: settings.speedUnit, option: "speed-unit" },
        );
  const at = atReader(header, headings, settings, speed);
  const machine = machineReader(header, settings, speed);
  const { column: atColumn, fixed: atFixed } = settings.at;
  const freeFrequency = from === undefined || atColumn !== undefined || order.test(atFixed?.trim() ?? "");
  const sameMachine = settings.machineColumns.length === 0 && speed === undefined;
  const sameType = settings.from.fixed !== undefined && settings.detector.column === undefined;
  if (from === undefined) {
    if (detector !== undefined) {
      throw new VeladisError("missing-option", {
        expected: 'the unit beside the detector, as in --from "mm/s" or --from-column unit',
        received: "a detector alone",
      });
    }
    const readingOf = (text: string): readonly [cell: string, reading: Amplitude] => {
      const written = text.trim();
      requireNoneInColumn(written, "a reading");
      const cell = decimalComma ? pointed(written) : written;
      return [cell, readingIn(cell, settings.source)];
    };
    const read = (cells: Cells): RowFacts => {
      const [cell, said] = readCell(cells[value] as string, readingOf);
      const { level, unit } = said;
      const told = at?.(cells);
      const type = level === undefined ? `${unit} ${said.detector}` : `dB re ${level.re}`;
      requireUnit(cells, type);
      return {
        value: writtenValue(said),
        type,
        hertz: agreedHertz(said.hertz, told === undefined ? undefined : { hertz: told }),
        machine: machine(cells),
        signal: isSignal(cell) ? cell : undefined,
      };
    };
    return Object.assign(read, { fixed: undefined, freeFrequency });
  }
  const type = detector === undefined ? from : (cells: Cells) => `${from(cells)} ${detector(cells)}`;
  if (sameType && sameMachine && !freeFrequency) {
    const fixed = { type: type([]), hertz: at?.([]), machine: machine([]), signal: undefined };
    const { type: own, hertz, machine: one } = fixed;
    const read = (cells: Cells): RowFacts => {
      requireUnit(cells, own);
      return { value: number(cells), type: own, hertz, machine: one, signal: signalIn(cells) };
    };
    return Object.assign(read, { fixed, freeFrequency });
  }
  const read = (cells: Cells): RowFacts => {
    const own = type(cells);
    requireUnit(cells, own);
    return { value: number(cells), type: own, hertz: at?.(cells), machine: machine(cells), signal: signalIn(cells) };
  };
  return Object.assign(read, { fixed: undefined, freeFrequency });
}
