import { visibleText } from "../../core/index";
import { type Amplitude, significant } from "../../reading/index";
import type { LinesOverall, ListedLine } from "../../signal/index";
import { textTable } from "../print/text-table";
import { wrapped } from "../print/wrapped";
import type { OrderOfLines } from "./lines-analysis";
import { offMultiple, offNote } from "./off-multiple";

/** What is printed of the lines of a file. */
export interface LinesPage {
  readonly name: string;
  /** What the tables are in, and what the file is in. */
  readonly type: string;
  readonly from: string;
  readonly all: readonly ListedLine[];
  readonly level: LinesOverall;
  /** The levels, written out. */
  readonly levels: readonly string[];
  /** What the sum of squares is divided by. */
  readonly divisor: string;
  readonly lines: readonly Amplitude[];
  readonly shaft: number | undefined;
  readonly orders: readonly OrderOfLines[];
  readonly digits: number;
}

const right = { align: "right" as const };

function howText({ level, divisor }: LinesPage): string {
  const [low, high] = level.band;
  const of = `overall from ${low} to ${high} Hz, edges included: root of the sum of squares of ${level.count}`;
  if (level.resolution === undefined) {
    return wrapped(
      `${of} tones, each at its whole size; what lies between them is not in the file, and the level of the machine may be higher`,
    );
  }
  return wrapped(`${of} lines, divided by ${divisor}`);
}

function outsideText({ all, level }: LinesPage): string {
  const [low] = level.band;
  const below = all.filter(([hertz]) => hertz < low * (1 - 1e-9)).length;
  const above = all.length - below - level.count;
  return below + above === 0 ? "" : `in the file and outside the band: ${below} below it, ${above} above it\n`;
}

function linesTable({ lines, shaft, type, digits }: LinesPage): string {
  if (lines.length === 0) return "no line stands out within the band\n";
  return textTable(
    [
      { title: "Hz", ...right },
      { title: "r/min", ...right },
      ...(shaft === undefined ? [] : [{ title: "x speed", ...right }]),
      { title: type, ...right },
    ],
    lines.map(({ hertz = 0, value }) => [
      hertz.toFixed(2),
      (60 * hertz).toFixed(0),
      ...(shaft === undefined ? [] : [(hertz / shaft).toFixed(2)]),
      significant(value, digits),
    ]),
  );
}

function ordersTable({ orders, type, digits }: LinesPage): string {
  if (orders.length === 0) return "";
  const rows = orders.map(({ order, expected, line, inFile }) => [
    `${order}x`,
    expected.toFixed(2),
    line?.hertz?.toFixed(2) ?? (inFile ? "nothing" : "not in the file"),
    offMultiple(line?.hertz, expected),
    line === undefined ? "" : significant(line.value, digits),
  ]);
  const columns = ["", "at Hz", "found", "off %", type].map((title) => ({ title, ...right }));
  return `\n${textTable(columns, rows)}${offNote(rows)}`;
}

/** Lines of a file as a person reads them: the levels first, then how they were made, then the lines. */
export function linesText(page: LinesPage): string {
  const { name, all, level, levels, from } = page;
  const [first, last] = [(all[0] as ListedLine)[0], (all[all.length - 1] as ListedLine)[0]];
  const places = `from ${significant(first, 4)} to ${significant(last, 5)} Hz`;
  const what =
    level.resolution === undefined
      ? `${all.length} tones ${places}`
      : `${all.length} lines ${places}, ${significant(level.resolution, 3)} Hz apart`;
  return [
    ...levels.map((one) => `${one}\n`),
    `\n${visibleText(name)}: ${what}, in ${from}\n`,
    howText(page),
    outsideText(page),
    `\nhighest lines, as they stand in the file${level.resolution === undefined ? "" : " (between two lines a window reads low)"}\n\n`,
    linesTable(page),
    ordersTable(page),
  ].join("");
}
