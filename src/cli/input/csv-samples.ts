import { plainNumeral, shown, VeladisError } from "../../core/index";
import type { UnitSymbol } from "../../units/index";
import { type RowCounts, wholeAccount } from "../delimited/account-text";
import { columnIndex } from "../delimited/column-index";
import { requireHeadingAgrees } from "../delimited/heading-agrees";
import type { RowAccount } from "../delimited/row-account";
import type { RowsReader } from "../delimited/rows-reader";
import { headingsOf } from "../delimited/units-row";
import type { WrittenAs } from "../delimited/written-as";
import { BadRows } from "./bad-rows";
import { levelCell } from "./level-cell";
import { unreadRow } from "./read-series";
import { requireNoHole } from "./require-no-hole";
import { saysValue } from "./says-value";
import { type Spacing, TimesBeside } from "./times-beside";

/** How the samples of a file of delimited text are to be read. */
export interface CsvSettings {
  /** What the file is called. */
  readonly file: string;
  readonly written: WrittenAs;
  /** Name or number of the column, or its index from 0; not needed where there is only one. */
  readonly column: string | number | undefined;
  readonly scale: number;
  /** The unit of the samples, as it was told. */
  readonly unit: UnitSymbol;
  /** How they are spaced in time. */
  readonly spacing: Spacing;
  /** Whether it is told that they are samples, whatever the heading. */
  readonly waveform: boolean;
  /** Whether the first row is known to be the header. */
  readonly headed?: true;
}

/** Whether a cell is a word and no sample to refuse, such as `nan` or `OL`, which is not the name of a column. */
function isTitle(cell: string, { decimalComma }: WrittenAs): boolean {
  return /^[^\d\s+.,-]/.test(cell) && !saysValue(cell, decimalComma);
}

const SPACED = "samples are evenly spaced, so none can be left out: those behind it would move in time";

/** What became of the rows. */
export interface SamplesTold {
  readonly account: RowAccount;
  readonly counts: RowCounts;
}

/** Which cell of a row holds the sample, and what the first row is, where that can be told from it alone. */
interface Layout {
  readonly index: number;
  readonly first: "header" | "sample" | "unsure";
}

/**
 * The layout that a first row shows. It is the header where it was told to be (`--header-line`), or where the sample's
 * cell is a word; it is a sample where no cell of the row is a word. A number beside words may be either, such as
 * channel 2 in a header `time,1,2`.
 */
function layoutOf(first: readonly string[], { column, written, headed }: CsvSettings): Layout {
  const cells = first.map((cell) => cell.trim());
  const isTold = headed === true || written.headerLine !== undefined;
  const isHeader = isTold || cells.some((cell) => isTitle(cell, written));
  const names = isHeader ? cells : cells.map((_, i) => `${i + 1}`);
  if (column === undefined && cells.length > 1) {
    throw new VeladisError("missing-option", {
      expected: `which of the columns holds the samples, as in --column 2${written.decimalComma ? "" : ", or --decimal-comma for numbers such as 7,1"}`,
      received: `${cells.length} columns`,
      allowed: names,
    });
  }
  const index = typeof column === "number" ? column : column === undefined ? 0 : columnIndex(names, column);
  if (!isHeader) return { index, first: "sample" };
  return { index, first: isTold || isTitle(cells[index] as string, written) ? "header" : "unsure" };
}

/** Whether each word of the first row stands in the second too, so that it is no heading. */
function hasSameWords(first: readonly string[], second: readonly string[], written: WrittenAs): boolean {
  return first.every((cell, i) => !isTitle(cell.trim(), written) || cell === second[i]);
}

/** Samples in the making, a portion of a file at a time. */
class SamplePortion {
  #samples = new Float64Array(1 << 16);
  #count = 0;

  add(sample: number): void {
    if (this.#count === this.#samples.length) {
      const longer = new Float64Array(2 * this.#count);
      longer.set(this.#samples);
      this.#samples = longer;
    }
    this.#samples[this.#count++] = sample;
  }

  /** The samples so far, which are then forgotten. */
  taken(): Float64Array {
    const taken = this.#samples.slice(0, this.#count);
    this.#count = 0;
    return taken;
  }
}

/**
 * The samples of one column of delimited text or Parquet, a portion of the file at a time.
 *
 * A file may do without a header: its first row is a sample, and counted as one, where no cell of it is a word, or where
 * each of its words stands in the second row too. Where the sample's cell is a word it is a header. A number beside other
 * words may be either and is refused; `--header-line 1` says that it is a header.
 *
 * @param tell - is told what became of the rows, when all are read
 * @throws {@link VeladisError} `missing-option` when the column, or what the first row is, is not told; `not-a-number`, at
 *   the end, for rows that hold no sample
 */
export async function* csvSamples(
  rows: RowsReader,
  settings: CsvSettings,
  tell: (told: SamplesTold) => void,
): AsyncGenerator<Float64Array> {
  const { file, written, scale, unit, spacing } = settings;
  const { decimalComma } = written;
  const bad = new BadRows();
  const portion = new SamplePortion();
  let layout: Layout = { index: 0, first: "header" };
  let header: readonly string[] = [];
  let read = 0;

  let beside: TimesBeside | undefined;
  const take = (cells: readonly string[], line: number): void => {
    const cell = cells[layout.index] as string;
    const value = !decimalComma && plainNumeral.test(cell) ? Number(cell) : levelCell(cell, decimalComma);
    if (typeof value === "object") bad.add(line, value);
    else if (!Number.isFinite(value * scale)) bad.add(line, { what: shown(cell), never: "over range" });
    else {
      portion.add(value * scale);
      beside?.add(cells);
      read++;
    }
  };
  const unsure = () =>
    new VeladisError("missing-option", {
      expected: "--header-line 1 to say that the first row is the header",
      received: `${shown(header[layout.index])} beside words in the first row of ${file}`,
    });
  const reading = rows({
    header(cells, _raw, _form, units) {
      const headings = headingsOf(cells, units, written);
      header = cells;
      layout = layoutOf(cells, settings);
      const isHeader = layout.first === "header";
      if (isHeader) {
        // a reading such as `4.1 g pk`, told to be the header, tells of itself alone
        const isTitled = !saysValue(cells[layout.index] as string, decimalComma);
        const isWaveform = settings.waveform ? ("told" as const) : ("taken" as const);
        const told = { by: `--unit ${unit}`, unit, ...(isTitled && { isWaveform }) };
        requireHeadingAgrees(headings, layout.index, told, written);
      }
      beside = new TimesBeside(spacing, isHeader ? headings : undefined, layout.index, written);
      if (layout.first === "sample") take(cells, 1);
    },
    row(cells, _, line) {
      if (layout.first === "unsure") {
        if (!hasSameWords(header, cells, written)) throw unsure();
        layout = { index: layout.index, first: "sample" };
        take(header, 1);
      }
      take(cells, line);
    },
    refused: (error, _, line) => bad.add(line, unreadRow(error)),
  });
  let step = await reading.next();
  for (;;) {
    const samples = portion.taken();
    // what comes behind a row without a sample stands at another time
    if (samples.length > 0 && bad.rows === 0) yield samples;
    if (step.done) break;
    step = await reading.next();
  }
  if (layout.first === "unsure") throw unsure();
  const { first, later } = step.value.behindSkipped;
  const more = layout.first === "sample" ? 1 : 0;
  const account = { ...step.value, rowsIn: step.value.rowsIn + more, rows: step.value.rows + more };
  const counts = { answered: read, refused: bad.rows };
  const { in: all } = wholeAccount(account, counts);
  bad.check({
    what: "a sample",
    file,
    all,
    decimalComma,
    skipBad: { cannot: SPACED },
    overRange: "over range is a signal beyond what can be read: the record is clipped",
  });
  requireNoHole(file, "a sample", (layout.first === "sample" && first) || later);
  beside?.check();
  tell({ account, counts });
}
