import { plainNumeral, shown, VeladisError } from "../../core/index";
import { timeUnitSaid } from "../delimited/heading-agrees";
import { headingSays } from "../delimited/heading-says";
import { secondsIn, type TimeUnitSymbol } from "../delimited/time-units";
import type { WrittenAs } from "../delimited/written-as";
import { hasTimeOfDayForm, writtenTimeOfDay } from "./time-of-day";
import { writtenDate } from "./written-date";

/** How far times may be from what was told. */
const SHARE = 0.01;
/** Fewer rows that rise evenly may do so by chance. */
const ENOUGH = 8;

/** Seconds from row to row at which nobody samples a waveform. */
const TREND = 1;

/** Fewer rows whose frequency rises may be readings of a speed that rose. */
const SPECTRUM = 3;

/** How rows are spaced in time, as it was told. */
export interface Spacing {
  /** What tells it: `--rate 5120`. */
  readonly by: string;
  /** Seconds from row to row. */
  readonly seconds: number;
  /** Whether the rows are samples of a waveform, and no levels. */
  readonly sampled?: true;
}

/** A column that may hold times: so far it has never fallen. */
interface Rising {
  readonly index: number;
  readonly isDate: boolean;
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

  #valueOf(cell: string): { readonly value: number; readonly isDate: boolean } | undefined {
    const text = cell.trim();
    const pointed = this.#written.decimalComma ? text.replace(",", ".") : text;
    if (plainNumeral.test(pointed)) return { value: Number(pointed), isDate: false };
    const date = hasTimeOfDayForm(text) ? writtenTimeOfDay(text) : writtenDate(text);
    return date === undefined ? undefined : { value: date.at["day-first"] / 1e6, isDate: true };
  }

  /** Takes the cells of a row. */
  add(cells: readonly string[]): void {
    if (this.#rising === undefined) {
      this.#rising = this.#written.fileUnits === "none" ? [] : cells.flatMap((cell, index) => this.#begun(cell, index));
    } else if (this.#rising.length > 0) this.#rising = this.#rising.filter((one) => this.#takes(one, cells));
  }

  #begun(cell: string, index: number): Rising[] {
    const { value, isDate } = this.#valueOf(cell) ?? { value: Number.NaN, isDate: false };
    if (index === this.#used || !Number.isFinite(value)) return [];
    const steps = { equal: 0, shortest: Number.POSITIVE_INFINITY, longest: 0 };
    return [{ index, isDate, first: value, last: value, rows: 1, ...steps }];
  }

  #takes(one: Rising, cells: readonly string[]): boolean {
    const step = (this.#valueOf(cells[one.index] as string)?.value ?? Number.NaN) - one.last;
    if (!(step >= 0)) return false;
    one.last += step;
    one.rows++;
    if (step === 0) one.equal++;
    else {
      one.shortest = Math.min(one.shortest, step);
      one.longest = Math.max(one.longest, step);
    }
    return true;
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
      const { index, first, last, rows, equal, shortest } = one;
      if (this.#isFrequency(one)) {
        throw new VeladisError("unknown-option", {
          expected:
            "rows that follow one another in time; the lines of a spectrum are for bandOverall of veladis/signal; " +
            "--file-units none where the column beside is no frequency of these rows",
          received: `${this.#told.by}, and column ${index + 1} ${shown(this.#header?.[index]?.trim())}, which rises from row to row`,
        });
      }
      const unit = last > first ? this.#unitOf(one) : false;
      if (unit === false) continue;
      const wanted = (rows - 1) * this.#told.seconds;
      const agrees = (said: TimeUnitSymbol): boolean => {
        // times that stand still were rounded by as much as they move
        const room = SHARE * wanted + (equal > 0 ? secondsIn(said, shortest) : 0);
        return Math.abs(secondsIn(said, last - first) - wanted) <= room;
      };
      const units: readonly TimeUnitSymbol[] = unit === undefined ? ["s", "ms", "us"] : [unit];
      if (units.some(agrees)) continue;
      const step = secondsIn(unit ?? "s", last - first) / (rows - 1);
      const heading = this.#header === undefined ? "" : ` ${shown(this.#header[index]?.trim())}`;
      const isTrend = this.#told.sampled === true && step >= TREND;
      throw new VeladisError("unknown-option", {
        expected: `rows spaced as their own times say, within 1 %, ${isTrend ? "since levels so far apart are a trend, for veladis setpoints or veladis simulate; " : "or "}--file-units none where these are no times in s`,
        received: `${this.#told.by}, and column ${index + 1}${heading} with ${Number(step.toPrecision(4))} s from row to row, ${Number((1 / step).toPrecision(4))} a second`,
      });
    }
  }
}
