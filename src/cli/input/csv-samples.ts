import type { Readable } from "node:stream";
import { parseNumeral, plainNumeral, shown, VeladisError } from "../../core/index";
import { columnIndex } from "../delimited/column-index";
import { separatorOf } from "./csv-rows";

/** How the samples of a CSV file are to be read. */
export interface CsvSettings {
  /** Name or number of the column; not needed where there is only one. */
  readonly column: string | undefined;
  readonly scale: number;
}

/** The cells of a line; what stands in double quotes may hold the separator. */
function cellsOf(line: string, separator: string): string[] {
  if (!line.includes('"')) return line.split(separator).map((cell) => cell.trim());
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (const character of line) {
    if (character === '"') quoted = !quoted;
    else if (character === separator && !quoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += character;
  }
  return [...cells, cell.trim()];
}

/** A number as `parseNumeral` reads it, quickly where nothing is to be said. */
function sampleOf(cell: string, line: number): number {
  const value = plainNumeral.test(cell) ? Number(cell) : Number.NaN;
  return Number.isFinite(value) ? value : parseNumeral(cell, `a sample at line ${line}`);
}

/** A word that is no failed number: `nan` and `inf` in a first line are samples to refuse, not the name of a column. */
const titleWord = /^(?!nan$|[+-]?inf)[^\d\s+.-]/i;

/** Which cell of a line holds the sample, and whether the first line is a header. */
interface Layout {
  readonly separator: string;
  readonly index: number;
  readonly header: boolean;
}

function layoutOf(line: string, column: string | undefined): Layout {
  const separator = separatorOf(line);
  const cells = cellsOf(line, separator);
  const isTitle = (index: number): boolean => titleWord.test(cells[index] as string);
  const names = cells.map((cell, i) => (isTitle(i) ? cell : `${i + 1}`));
  if (column !== undefined || cells.length === 1) {
    const index = column === undefined ? 0 : columnIndex(names, column);
    return { separator, index, header: isTitle(index) };
  }
  throw new VeladisError("missing-fact", {
    expected: "which of the columns holds the samples, as in --column 2",
    received: `${cells.length} columns`,
    allowed: names,
  });
}

/**
 * The samples of one column of a stream of CSV, a chunk of the file at a time; blank lines and lines that begin with #
 * are passed over.
 *
 * @throws {@link VeladisError} `not-a-number` or `not-finite` with the line, `missing-fact` when the column is not told
 */
export async function* csvSamples(stream: Readable, settings: CsvSettings): AsyncGenerator<Float64Array> {
  const { column, scale } = settings;
  stream.setEncoding("utf8");
  let layout: Layout | undefined;
  let rest = "";
  let number = 0;

  const samplesOf = (lines: readonly string[]): Float64Array => {
    const samples = new Float64Array(lines.length);
    let count = 0;
    for (const written of lines) {
      number++;
      const line = number === 1 ? written.replace(/^\uFEFF/, "").trimEnd() : written.trimEnd();
      if (line === "" || line.startsWith("#")) continue;
      if (layout === undefined) {
        layout = layoutOf(line, column);
        if (layout.header) continue;
      }
      const { separator, index } = layout;
      const single = index === 0 && !line.includes(separator) && !line.includes('"');
      const cell = single ? line.trim() : cellsOf(line, separator)[index];
      if (cell === undefined || cell === "") {
        throw new VeladisError("not-a-number", {
          expected: `a sample at line ${number}`,
          received: cell === undefined ? `${shown(line)}, which has fewer columns` : "an empty cell",
        });
      }
      samples[count++] = sampleOf(cell, number) * scale;
    }
    return samples.subarray(0, count);
  };

  for await (const chunk of stream) {
    const lines = (rest + chunk).split("\n");
    rest = lines.pop() as string;
    const samples = samplesOf(lines);
    if (samples.length > 0) yield samples;
  }
  const last = samplesOf(rest === "" ? [] : [rest]);
  if (last.length > 0) yield last;
}
