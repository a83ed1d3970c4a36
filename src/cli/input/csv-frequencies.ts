import { VeladisError } from "../../core/index";
import type { RowCounts } from "../delimited/account-text";
import { columnsListed } from "../delimited/column-index";
import type { RowAccount } from "../delimited/read-delimited";
import type { RowsReader } from "../delimited/rows-reader";
import type { WrittenAs } from "../delimited/written-as";
import { type ColumnRead, columnRead } from "./column-read";
import { type FrequencyIn, type FrequencyTold, frequencyColumn } from "./frequency-column";
import { headedColumn } from "./headed-column";
import { cellShown, levelCell, type Unread } from "./level-cell";
import { readSeries } from "./read-series";

/** How a file of rows along frequency is to be read. */
export interface FrequenciesSettings {
  readonly file: string;
  readonly written: WrittenAs;
  readonly frequency: FrequencyTold;
  /** Name or number of the column of values, and of another one whose cells may be empty. */
  readonly column: string | undefined;
  readonly beside?: string | undefined;
  /** What a value is: `a line`. */
  readonly what: string;
  /** Whether a value may be negative (a level in dB) or missing; told when the headings are read. */
  readonly told: (
    headings: readonly string[],
    index: number,
    beside: number | undefined,
  ) => { readonly negative: boolean; readonly empty: boolean };
}

/** Rows along frequency. */
export interface FrequencyRows {
  /** In hertz. */
  readonly hertz: readonly number[];
  /** NaN for an empty cell. */
  readonly values: readonly number[];
  /** Of the column beside; NaN for an empty cell. */
  readonly beside: readonly number[];
  readonly unit: FrequencyIn;
  readonly columns: { readonly frequency: ColumnRead; readonly value: ColumnRead };
  readonly account: RowAccount;
  readonly counts: RowCounts;
}

/** Index of the column of values: the one that is told, else the only one beside those that are known. */
function valueIndex(
  header: readonly string[],
  column: string | undefined,
  known: readonly number[],
  written: WrittenAs,
) {
  if (column !== undefined) return headedColumn(header, column, written);
  const others = header.flatMap((_, i) => (known.includes(i) ? [] : [i]));
  if (others.length === 1) return headedColumn(header, others[0] as number, written);
  throw new VeladisError("missing-option", {
    expected: "which of the columns holds the values, as in --column amplitude",
    received: `${others.length} columns beside that of the frequencies`,
    allowed: columnsListed(header),
  });
}

/**
 * The rows of delimited text with a column of frequencies and one of values.
 *
 * @throws {@link VeladisError} for cells that are no number, all told together, and what the columns are refused for
 */
export async function csvFrequencies(source: RowsReader, settings: FrequenciesSettings): Promise<FrequencyRows> {
  const { file, written, frequency, column, beside, what, told } = settings;
  const { decimalComma } = written;
  const rows = { hertz: [] as number[], values: [] as number[], beside: [] as number[] };
  let at: ReturnType<typeof frequencyColumn> = { index: 0, unit: "Hz", hertz: 1 };
  let value = 1;
  let other: number | undefined;
  let may = { negative: false, empty: false };
  let columns: FrequencyRows["columns"] | undefined;

  const numberIn = (cell: string, empty: boolean): number | Unread =>
    empty && cell.trim() === "" ? Number.NaN : levelCell(cell, decimalComma);
  const series = await readSeries(
    source,
    { file, written, skipBad: "not given" },
    {
      what: `a frequency and ${what}`,
      overRange: "over range is above all that can be read",
      header(cells, headings) {
        at = frequencyColumn(cells, headings, frequency, written);
        other = beside === undefined ? undefined : headedColumn(cells, beside, written);
        value = valueIndex(cells, column, other === undefined ? [at.index] : [at.index, other], written);
        if (value === at.index || value === other || other === at.index) {
          throw new VeladisError("missing-option", {
            expected: "a column of its own for each of what is read",
            received: `columns ${[at.index, value, other].flatMap((one) => (one === undefined ? [] : [one + 1])).join(", ")}`,
            allowed: columnsListed(cells),
          });
        }
        may = told(headings, value, other);
        columns = { frequency: columnRead(headings, at.index), value: columnRead(headings, value) };
      },
      row(cells) {
        const frequencyCell = cells[at.index] as string;
        const hertz = numberIn(frequencyCell, false);
        if (typeof hertz !== "number") return { ...hertz, what: `frequency ${hertz.what}` };
        if (hertz < 0)
          return { what: `frequency ${cellShown(frequencyCell.trim())}`, expected: "frequencies of zero or more" };
        const cell = cells[value] as string;
        const size = numberIn(cell, may.empty);
        if (typeof size !== "number") return size;
        if (size < 0 && !may.negative)
          return { what: `negative ${cellShown(cell.trim())}`, expected: `${what} of zero or more` };
        const more = other === undefined ? Number.NaN : numberIn(cells[other] as string, true);
        if (typeof more !== "number") return more;
        rows.hertz.push(hertz * at.hertz);
        rows.values.push(size);
        rows.beside.push(more);
        return undefined;
      },
    },
  );
  return {
    ...rows,
    unit: at.unit,
    columns: columns as FrequencyRows["columns"],
    account: series.account,
    counts: series.counts,
  };
}
