import { shown, VeladisError } from "../../core/index";
import { timeUnitSaid } from "../delimited/heading-agrees";
import { headingSays } from "../delimited/heading-says";
import { secondsIn, type TimeUnitSymbol } from "../delimited/time-units";
import type { WrittenAs } from "../delimited/written-as";
import { maySerial } from "./bare-times";
import { clockCell, NO_TIME, SECONDS_A_DAY } from "./clock-cell";
import { type EvenTimes, TimeSpread } from "./even-times";

/** How far times may be from what was told. */
const SHARE = 0.01;
/** Fewer rows that rise evenly may do so by chance. */
const ENOUGH = 8;

/** Seconds from row to row at which nobody samples a waveform. */
const TREND = 1;

/** Fewer rows whose frequency rises may be readings of a speed that rose. */
const SPECTRUM = 3;

/** Units that a heading says as often for the lowest of some readings (min), a direction or a letter. */
const UNSURE: readonly TimeUnitSymbol[] = ["min", "h", "d"];

/** How rows are spaced in time, as it was told. */
export interface Spacing {
  /** What tells it: `--rate 5120`. */
  readonly by: string;
  /** Seconds from row to row. */
  readonly seconds: number;
  /** Whether the rows are samples of a waveform, and no levels. */
  readonly sampled?: true;
}

/** A column that may hold times: so far it has never fallen, or is headed by time and has to be held against the rate. */
interface Rising {
  readonly index: number;
  readonly isDate: boolean;
  readonly isOfDay: boolean;
  /** Whether its heading says that samples of a waveform have their times there. */
  readonly isHeaded: boolean;
  /** How evenly its numbers rise; of levels nobody asks. And the last digit that they are written to. */
  readonly spread: TimeSpread | undefined;
  digit: number;
  /** The first row of a headed column that says no later time, and what stands there. */
  fault?: { readonly row: number; readonly what: string };
  readonly first: number;
  last: number;
  rows: number;
  equal: number;
  /** The shortest and the longest step that is none of zero. */
  shortest: number;
  longest: number;
}

/**
 * Times that a file has beside rows that are told to be evenly spaced. A column is one of times where it never falls, and
 * holds dates, is headed by a unit of time or the word time, or rises evenly by anything but 1.
 */
export class TimesBeside {
  readonly #told: Spacing;
  readonly #header: readonly string[] | undefined;
  readonly #written: WrittenAs;
  readonly #used: number;
  #rising: Rising[] | undefined;

  /**
   * @param header - undefined where the file has none
   * @param used - index of the column of what is spaced so
   */
  constructor(told: Spacing, header: readonly string[] | undefined, used: number, written: WrittenAs) {
    this.#told = told;
    this.#header = header;
    this.#used = used;
    this.#written = written;
  }

  /** Takes the cells of a row. */
  add(cells: readonly string[]): void {
    if (this.#rising === undefined) {
      this.#rising = this.#written.fileUnits === "none" ? [] : cells.flatMap((cell, index) => this.#begun(cell, index));
    } else if (this.#rising.length > 0) this.#rising = this.#rising.filter((one) => this.#takes(one, cells));
  }

  #begun(cell: string, index: number): Rising[] {
    if (index === this.#used) return [];
    const isHeaded = this.#isHeaded(index);
    const read = clockCell(cell, this.#written.decimalComma);
    if (!(read !== undefined && Number.isFinite(read.value)) && !isHeaded) return [];
    const { value, isDate, isOfDay, digit } = read ?? NO_TIME;
    const spread = this.#told.sampled ? new TimeSpread(true) : undefined;
    const steps = { equal: 0, shortest: Number.POSITIVE_INFINITY, longest: 0, spread, digit };
    const begun = { index, isDate, isOfDay, isHeaded, first: value, last: value, rows: 1, ...steps };
    if (read === undefined) return [{ ...begun, fault: { row: 1, what: shown(cell.trim()) } }];
    spread?.add(0);
    return [begun];
  }

  #takes(one: Rising, cells: readonly string[]): boolean {
    if (one.fault !== undefined) return true;
    const cell = cells[one.index] as string;
    const read = clockCell(cell, this.#written.decimalComma);
    let step = (read?.value ?? Number.NaN) - one.last;
    // past midnight
    if (one.isOfDay && step < -SECONDS_A_DAY / 2) step += SECONDS_A_DAY;
    one.rows++;
    if (read === undefined || !(step >= 0) || read.isDate !== one.isDate) {
      const what = Number.isFinite(step) ? `${shown(cell.trim())}, before that of the row above` : shown(cell.trim());
      one.fault = { row: one.rows, what };
      return one.isHeaded;
    }
    one.last += step;
    one.spread?.add(one.last - one.first);
    one.digit = Math.min(one.digit, read.digit);
    if (step === 0) one.equal++;
    else {
      one.shortest = Math.min(one.shortest, step);
      one.longest = Math.max(one.longest, step);
    }
    return true;
  }

  /** Whether a heading says that samples have their times below it; no level is held so, since a history may have gaps. */
  #isHeaded(index: number): boolean {
    if (this.#told.sampled !== true || this.#header === undefined) return false;
    const says = headingSays(this.#header[index] ?? "");
    const isTime = says.some(({ time, axis }) => axis === "time" || (time !== undefined && !UNSURE.includes(time)));
    try {
      timeUnitSaid(this.#header, index, undefined, this.#written);
      return isTime;
    } catch (error) {
      if (!(error instanceof VeladisError)) throw error;
      // headed by what is no time
      return false;
    }
  }

  /** The unit that the heading of a column of times says, undefined for none, `false` for one of something else. */
  #unitOf({ index, isDate, rows, shortest, longest }: Rising): TimeUnitSymbol | undefined | false {
    if (isDate) return "s";
    const heading = this.#header?.[index] ?? "";
    const isNamed = /^(?:t|time)\b/i.test(heading.trim().replace(/_.*/, ""));
    const isEven = rows >= ENOUGH && longest <= 2 * shortest && Math.abs(shortest - 1) > 1e-9;
    try {
      const unit = this.#header && timeUnitSaid(this.#header, index, undefined, this.#written);
      return unit !== undefined || isNamed || isEven ? unit : false;
    } catch (error) {
      if (!(error instanceof VeladisError)) throw error;
      // headed by what is no time
      return false;
    }
  }

  /** Whether a column is the axis of a spectrum: it is headed by a frequency that is no speed, and each row is above the last. */
  #isFrequency({ index, rows, equal }: Rising): boolean {
    if (rows < SPECTRUM || equal > 0) return false;
    return headingSays(this.#header?.[index] ?? "").some(
      ({ axis, frequency, written }) =>
        axis === "frequency" ||
        frequency === "Hz" ||
        frequency === "kHz" ||
        (frequency !== undefined && /^cpm$/i.test(written)),
    );
  }

  /**
   * Refuses times that are not spaced as was told, when all rows are taken, and rows of a spectrum, which have none.
   *
   * @throws {@link VeladisError} `unknown-option` with both
   */
  check(): void {
    for (const one of this.#rising ?? []) {
      this.#requireRows(one);
      const { first, last, rows, equal, shortest, isHeaded } = one;
      if (this.#isFrequency(one)) {
        throw new VeladisError("unknown-option", {
          expected:
            "rows that follow one another in time; the lines of a spectrum are for bandOverall of veladis/signal; " +
            "--file-units none where the column beside is no frequency of these rows",
          received: `${this.#told.by}, and column ${this.#named(one)}, which rises from row to row`,
        });
      }
      if (rows < 2 || !(last > first || isHeaded)) continue;
      const said = this.#unitOf(one);
      const wanted = (rows - 1) * this.#told.seconds;
      const agrees = (said: TimeUnitSymbol): boolean => {
        // times that stand still were rounded by as much as they move
        const still = equal === 0 ? 0 : isHeaded || last === first ? 1.5 * one.digit : shortest;
        return Math.abs(secondsIn(said, last - first) - wanted) <= SHARE * wanted + secondsIn(said, still);
      };
      const units: readonly TimeUnitSymbol[] = said === undefined || said === false ? ["s", "ms", "us"] : [said];
      const unit = units.find(agrees);
      if (unit !== undefined) {
        // numbers that rise as the rate says are times, whatever their heading leaves open
        if ((said !== false || this.#header === undefined) && rows >= ENOUGH) this.#requireEven(one, unit);
        continue;
      }
      if (said === false) continue;
      throw this.#otherRate(one, said);
    }
  }

  #named({ index }: Rising): string {
    return `${index + 1}${this.#header === undefined ? "" : ` ${shown(this.#header[index]?.trim())}`}`;
  }

  /** Refuses a column that is headed by time, one row of which says no time, or none behind that above. */
  #requireRows(one: Rising): void {
    if (one.fault === undefined) return;
    const { row, what } = one.fault;
    throw new VeladisError("out-of-range", {
      expected: `a time in each row of column ${this.#named(one)}, none before that of the row above, or --file-units none where these are no times of the samples`,
      received: `row ${row} of the samples with ${what}`,
    });
  }

  /** Refuses times that follow the rate on the whole and not row by row. */
  #requireEven(one: Rising, unit: TimeUnitSymbol): void {
    const even: EvenTimes | undefined = one.spread?.read(one.digit);
    if (even === undefined || even.farthest <= even.room) return;
    const inSeconds = (value: number): string => String(Number(secondsIn(unit, value).toPrecision(4)));
    throw new VeladisError("out-of-range", {
      expected: `evenly spaced times in column ${this.#named(one)}, each within ${inSeconds(even.room)} s of its place, or --file-units none where these are no times of the samples; --resample takes samples at even times from a cubic spline through them`,
      received: `sample ${even.index + 1} off by ${inSeconds(even.farthest)} s: steps of ${inSeconds(even.shortest)} to ${inSeconds(even.longest)} s`,
    });
  }

  #otherRate(one: Rising, unit: TimeUnitSymbol | undefined): VeladisError {
    const { first, last, rows, isDate } = one;
    const rawStep = (last - first) / (rows - 1);
    const step = secondsIn(unit ?? "s", rawStep);
    const short = (value: number): string => String(Number(value.toPrecision(4)));
    const isTrend = this.#told.sampled === true && step >= TREND;
    const isSerial = unit === undefined && !isDate && maySerial(first) && maySerial(last);
    const serial = `; from ${first} on they may be serial dates of a spreadsheet, ${short(rawStep * SECONDS_A_DAY)} s from row to row`;
    return new VeladisError("unknown-option", {
      expected: `rows spaced as their own times say, within 1 %, ${isTrend ? "since levels so far apart are a trend, for veladis setpoints or veladis simulate; " : "or "}--file-units none where these are no times in s`,
      received: `${this.#told.by}, and column ${this.#named(one)} ${
        step > 0
          ? `with ${short(step)} s from row to row, ${short(1 / step)} a second${isSerial ? serial : ""}`
          : "with one time for all rows"
      }`,
    });
  }
}
