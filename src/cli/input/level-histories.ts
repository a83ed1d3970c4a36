import { basename } from "node:path";
import { VeladisError } from "../../core/index";
import { headingSays } from "../delimited/heading-says";
import { accountOf, readDelimited } from "../delimited/read-delimited";
import { headingsOf } from "../delimited/units-row";
import type { WrittenAs } from "../delimited/written-as";
import { levelCell } from "./level-cell";
import { openFile } from "./open-file";
import { linesText, NotedRows, rowsText } from "./row-lines";
import { TimeColumn } from "./time-column";

/** Levels of a column of a file, each at its time. */
export interface LevelHistory {
  /** The heading of the column. */
  readonly name: string;
  /** What the levels are written in, as the heading says. */
  readonly as: string;
  /** Dates, or seconds as the file counts them. */
  readonly times: readonly Date[] | readonly number[];
  /** NaN where the cell holds none. */
  readonly levels: readonly number[];
  /** What was left out, in words. */
  readonly notes: readonly string[];
}

/** The type that a heading says, unit and detector or a level with its reference; undefined for one that says none. */
function typeSaid(heading: string): string | undefined {
  for (const { unit, detector, level } of headingSays(heading)) {
    if (unit !== undefined && detector !== undefined) return `${unit} ${detector}`;
    if (level !== undefined && level !== "dB") return level;
  }
  return undefined;
}

/**
 * The histories of a file: times in its first column, and levels in each column whose heading says unit and detector. What
 * is not read is told.
 *
 * @throws {@link VeladisError} `missing-fact` for a file without such a column or without a row that holds a level, and for
 *   times that cannot be read
 */
export async function levelHistories(path: string, written: WrittenAs): Promise<LevelHistory[]> {
  const file = basename(path);
  const noTime = new NotedRows();
  let headings: readonly string[] = [];
  let columns: { readonly at: number; readonly as: string; readonly levels: number[]; readonly bad: NotedRows }[] = [];
  let times = new TimeColumn(undefined, written.decimalComma);
  const rows = new NotedRows();
  const reading = readDelimited(await openFile(path), file, written, {
    header(cells, _raw, _form, units) {
      headings = headingsOf(cells, units, written);
      columns = headings.flatMap((heading, at) => {
        const as = at === 0 ? undefined : typeSaid(heading);
        return as === undefined ? [] : [{ at, as, levels: [], bad: new NotedRows() }];
      });
      const unit = headingSays(headings[0] as string).find(({ time }) => time !== undefined)?.time;
      times = new TimeColumn(undefined, written.decimalComma, unit);
    },
    row(cells, _raw, line) {
      try {
        times.add(cells[0] as string, line);
      } catch (error) {
        if (!(error instanceof VeladisError)) throw error;
        noTime.note(line);
        return;
      }
      rows.note(line);
      for (const { at, levels, bad } of columns) {
        const level = levelCell(cells[at] as string, written.decimalComma);
        const isLevel = typeof level === "number" && level >= 0;
        if (!isLevel) bad.note(line);
        levels.push(isLevel ? level : Number.NaN);
      }
    },
    refused: (_error, _raw, line) => noTime.note(line),
  });
  await accountOf(reading);
  const lacking = (expected: string, received: string): never => {
    throw new VeladisError("missing-fact", { expected: `${expected} in ${file}`, received });
  };
  if (columns.length === 0) {
    lacking(
      "a column of levels whose heading says unit and detector, such as velocity (mm/s rms)",
      headings.join(", "),
    );
  }
  if (rows.rows === 0) lacking("a time and a level in a row below the header", "none");
  const { times: seconds, begins } = times.read();
  const isDate = begins?.by === "date";
  const start = begins?.seconds ?? 0;
  const at = Array.from(seconds, (one) => start + one);
  const others = headings.filter((_, i) => i > 0 && columns.every((column) => column.at !== i));
  return columns.map(({ at: index, as, levels, bad }) => ({
    name: headings[index] as string,
    as,
    times: isDate ? at.map((one) => new Date(one * 1000)) : at,
    levels,
    notes: [
      ...(noTime.rows > 0
        ? [`${file}: ${rowsText(noTime.rows)} left out, without a time or torn (${linesText(noTime)}).`]
        : []),
      ...(bad.rows > 0
        ? [`${file}: ${rowsText(bad.rows)} without a level of zero or more, drawn as a gap (${linesText(bad)}).`]
        : []),
      ...(others.length > 0
        ? [`${file}: not drawn, since the heading says no unit and detector: ${others.join(", ")}.`]
        : []),
    ],
  }));
}
