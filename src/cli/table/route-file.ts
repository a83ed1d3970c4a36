import { cachedWithRefusals, plainNumeral, plainNumerals, pointedWords, shown, VeladisError } from "../../core/index";
import { type Frequency, frequency } from "../../frequency/index";
import { calendarDay, type DayOrder, type RefusedReading, type RouteReading, refusedReading } from "../../plant/index";
import { type Amplitude, parseAmplitude, parsedType, writtenIn } from "../../reading/index";
import { contradicted, headingRefused, typeTold } from "../delimited/heading-agrees";
import { headingSays, type Said } from "../delimited/heading-says";
import { accountOf, type RowAccount, readDelimited } from "../delimited/read-delimited";
import { headingsOf } from "../delimited/units-row";
import type { WrittenAs } from "../delimited/written-as";
import { openFile } from "../input/open-file";
import { type FactColumn, type RouteColumns, routeColumns } from "../input/route-columns";
import { numberIn } from "./cell-number";
import { readCell } from "./reading-cell";

/** How a route is read. */
export interface RouteSettings {
  readonly as: WrittenAs;
  /** The column of the readings, where it is named. */
  readonly column: string | undefined;
  /** The frequency of readings that say none. */
  readonly at: string | undefined;
  readonly dates: DayOrder | undefined;
  /** Which route it is. */
  readonly from: RefusedReading["from"];
}

/** A route as read. */
export interface RouteFile {
  readonly route: readonly RouteReading[];
  readonly refused: readonly RefusedReading[];
  /** Headings of columns that play no part. */
  readonly unread: readonly string[];
  readonly account: RowAccount;
}

type Cells = readonly string[];

const CLOCK = /^\d\d?:\d\d(?::\d\d(?:[.,]\d+)?)?(?:\s*(?:[AP]M|Z|[+-]\d\d:?\d\d))?$/i;

/** What a heading says of the readings below it, as a type: unit and detector, or a level with its reference. */
function typeOf(says: readonly Said[]): string | undefined {
  const level = says.find((one) => one.level !== undefined && one.level !== "dB")?.level;
  if (level !== undefined) return level;
  const unit = says.find((one) => one.unit !== undefined)?.unit;
  const detector = says.find((one) => one.detector !== undefined)?.detector;
  return unit === undefined || detector === undefined ? undefined : `${unit} ${detector}`;
}

/** Reads the readings of rows under these headings. */
function readingReader(titles: Cells, columns: RouteColumns, { fileUnits, decimalComma }: WrittenAs) {
  const heading = titles[columns.reading] as string;
  const says = fileUnits === "none" ? [] : headingSays(heading);
  const headed = typeOf(says);
  /** A reading of one in a type; refused where the heading says another. */
  const like = cachedWithRefusals((type) => {
    const one = parseAmplitude(`1 ${type}`);
    const by = `a row in ${shown(type)}`;
    const other = says.length === 0 ? undefined : contradicted(typeTold(by, writtenIn(one)), says);
    if (other !== undefined) throw headingRefused(by, other, heading, columns.reading);
    return one;
  });
  const { unit: ofUnit, detector: ofDetector } = columns;
  const told = (cells: Cells): string => {
    const unit = ofUnit === undefined ? "" : (cells[ofUnit] as string).trim();
    if (ofDetector === undefined) return unit;
    return `${unit} ${(cells[ofDetector] as string).trim()}`.trim();
  };
  const whole = (cell: string): Amplitude => parseAmplitude(cell, decimalComma ? { decimal: "," } : undefined);
  const decimals = decimalComma ? /^[+-]?\d[\d.,]*$/ : plainNumeral;
  return (cells: Cells): Amplitude => {
    const cell = (cells[columns.reading] as string).trim();
    const beside = told(cells);
    if (cell === "") {
      throw new VeladisError("missing-fact", {
        expected: "a reading; leave out the row of a machine that was not read",
        received: "an empty cell",
      });
    }
    if (!decimals.test(cell) && !/^[+-]?[\d.,]+$/.test(cell)) {
      const reading = readCell(cell, whole);
      like(writtenIn(reading));
      if (beside === "" || parsedType(beside).type === writtenIn(reading)) return reading;
      throw new VeladisError("unknown-option", {
        expected: "one unit and detector for a reading",
        received: `${shown(cell)} in a row in ${shown(beside)}`,
      });
    }
    const type = beside === "" ? headed : beside;
    if (type === undefined) {
      throw new VeladisError("missing-unit", {
        expected: 'a unit and a detector: in the cell, as in "4.1 mm/s rms", in a column unit, or in the heading',
        received: shown(cell),
      });
    }
    const { unit, detector, quantity, hertz, level } = like(type);
    const value = readCell(cell, (text) => numberIn(text, decimalComma));
    if (level !== undefined) return parseAmplitude(`${value} ${type}`);
    return { value, unit, detector, quantity, hertz };
  };
}

/** Reads frequencies; bare numbers are in the unit that the heading says. */
function frequencyReader(titles: Cells, index: number, { fileUnits, decimalComma }: WrittenAs) {
  const says = fileUnits === "none" ? [] : headingSays(titles[index] as string);
  const unit = says.find((one) => one.frequency !== undefined)?.frequency;
  return cachedWithRefusals((written): Frequency => {
    const cell = decimalComma ? plainNumerals(written, { decimal: "," }) : written;
    if (!plainNumeral.test(cell)) return { hertz: frequency(cell).hertz };
    if (unit !== undefined) return { hertz: frequency(`${cell} ${unit}`).hertz };
    throw new VeladisError("missing-unit", {
      expected: "a frequency with its unit, or its unit in the heading, as in at [r/min]",
      received: shown(cell),
    });
  });
}

/** What the cells of a row say of its machine, in words; nothing where they are empty. */
function machineWords(cells: Cells, columns: readonly FactColumn[], { decimalComma }: WrittenAs): string | undefined {
  const words = columns.flatMap(({ index, heading, unit }) => {
    const cell = (cells[index] as string).trim();
    const written = decimalComma ? cell.replace(/(?<=\d),(?=\d)/g, ".") : cell;
    if (written === "") return [];
    const whole = plainNumeral.test(written) && unit !== "" ? `${written} ${unit}` : written;
    return [heading === "shaft height" && /^\d/.test(whole) ? `${heading} ${whole}` : whole];
  });
  return words.length === 0 ? undefined : words.join(", ");
}

/**
 * A route in a file of delimited text: readings by tag.
 *
 * @throws {@link VeladisError} for a file or columns that cannot be read; rows that cannot are among those refused
 */
export async function routeFile(file: string, { as, column, at, dates, from }: RouteSettings): Promise<RouteFile> {
  const route: RouteReading[] = [];
  const refused: RefusedReading[] = [];
  const all = at === undefined ? undefined : { hertz: frequency(pointedWords(at, as.decimalComma)).hertz };
  const day = cachedWithRefusals((cell) => {
    const [written = cell, ...time] = cell.split(/(?<=\d)[T\s]+/);
    if (time.length > 0 && !CLOCK.test(time.join(" "))) {
      throw new VeladisError("syntax", {
        expected: "a date, with a time of day behind it or none",
        received: shown(cell),
      });
    }
    return calendarDay(written, dates);
  });
  let columns: RouteColumns | undefined;
  let reading: (cells: Cells) => Amplitude = () => {
    throw new Error("a row before its header");
  };
  let hertz: ((cell: string) => Frequency) | undefined;
  const row = (cells: Cells, line: number): void => {
    const { tag: ofTag, point: ofPoint, date: ofDate, at: ofAt, facts } = columns as RouteColumns;
    const tag = (cells[ofTag] as string).trim();
    const point = ofPoint === undefined ? "" : (cells[ofPoint] as string).trim();
    let option: "tag" | "date" | "at" | undefined;
    try {
      if (tag === "") {
        option = "tag";
        throw new VeladisError("missing-fact", { expected: "the tag of a machine", received: "an empty cell" });
      }
      const dated = ofDate === undefined ? "" : (cells[ofDate] as string).trim();
      option = "date";
      const date = dated === "" ? undefined : day(dated);
      option = "at";
      const tuned = ofAt === undefined ? "" : (cells[ofAt] as string).trim();
      const frequencyTold = tuned === "" ? undefined : hertz?.(tuned);
      option = undefined;
      const read = reading(cells);
      // what is told of all readings is for those that say nothing themselves
      const own = frequencyTold ?? (read.hertz === undefined ? all : undefined);
      const machine = facts.length === 0 ? undefined : machineWords(cells, facts, as);
      route.push({ tag, line, reading: read, point: point === "" ? undefined : point, date, at: own, machine });
    } catch (error) {
      if (!VeladisError.is(error)) throw error;
      const where = { tag, line, ...(point !== "" && { point }) };
      refused.push(refusedReading(from, where, error, option));
    }
  };
  const stream = readDelimited(await openFile(file), file, as, {
    header(cells, _raw, _form, units) {
      const titles = headingsOf(cells, units, as);
      columns = routeColumns(cells, titles, column);
      reading = readingReader(titles, columns, as);
      if (columns.at !== undefined) hertz = frequencyReader(titles, columns.at, as);
    },
    row: (cells, _raw, line) => row(cells, line),
    refused: (error, _raw, line) => void refused.push(refusedReading(from, { tag: "", line }, error)),
  });
  const account = await accountOf(stream);
  return { route, refused, unread: columns?.unread ?? [], account };
}
