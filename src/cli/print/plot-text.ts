import { significant } from "../../reading/index";

/** A span of what a plot is drawn over. */
interface Span {
  readonly from: number;
  readonly to: number;
}

/** What is drawn in a terminal: values over time or frequency, with levels across it and spans below. */
export interface Plot {
  /** What the values are in. */
  readonly unit: string;
  readonly x: ArrayLike<number>;
  /** One a place; where none is known, NaN. */
  readonly y: ArrayLike<number>;
  readonly from: number;
  readonly to: number;
  readonly xUnit: string;
  /** Whether a value stands until the next, as a level of a history does. */
  readonly holds: boolean;
  readonly levels: readonly { readonly text: string; readonly value: number }[];
  /** Texts below the plot at their places. */
  readonly marks: readonly { readonly text: string; readonly at: number }[];
  readonly lanes: readonly { readonly text: string; readonly spans: readonly Span[] }[];
}

const ROWS = 12;
/** A cell filled from below, in eighths. */
const blocks = " ▁▂▃▄▅▆▇█";

/** The height of a row: a round number, so that the highest value fits. */
function rowHeight(most: number): number {
  if (!(most > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(most / ROWS));
  return [1, 2, 2.5, 5, 10].map((step) => step * power).find((step) => step * ROWS >= most) ?? 10 * power;
}

/** The column of a place. */
function columnOf(at: number, { from, to }: Span, count: number): number {
  return Math.min(count - 1, Math.max(0, Math.floor(((at - from) / (to - from)) * count)));
}

/** The highest value in each column; NaN where there is none. */
function highestByColumn({ x, y, from, to, holds }: Plot, count: number): Float64Array {
  const found = new Float64Array(count).fill(Number.NaN);
  for (let i = 0; i < x.length; i++) {
    const [at, value] = [x[i] as number, y[i] as number];
    if (at < from || at > to || Number.isNaN(value)) continue;
    const first = columnOf(at, { from, to }, count);
    // a level that is followed at the edge of a column is not in that column
    const next = i + 1 < x.length ? (x[i + 1] as number) : to;
    const last = holds && next > at ? Math.ceil(((Math.min(next, to) - from) / (to - from)) * count) - 1 : first;
    for (let column = first; column <= Math.max(first, last); column++) {
      if (!(value <= (found[column] as number))) found[column] = value;
    }
  }
  return found;
}

/** Texts at their columns, each where the one before leaves room. */
export function textsAt(texts: readonly { readonly text: string; readonly column: number }[], count: number): string {
  let line = "";
  for (const { text, column } of [...texts].sort((a, b) => a.column - b.column)) {
    const at = Math.min(column, Math.max(0, count - text.length));
    if (line !== "" && at < line.length + 1) continue;
    line = line.padEnd(at) + text;
  }
  return line;
}

/**
 * A plot in block characters, which say all without colour: a column shows the highest value in it, a row is a round
 * step, and a value is read back within one cell.
 *
 * @param width - columns of the window
 */
export function plotText(plot: Plot, width: number): string {
  const { unit, levels, marks, lanes, from, xUnit } = plot;
  const to = plot.to > from ? plot.to : from + 1;
  const values = Array.from(plot.y).reduce((most, value) => (Number.isFinite(value) ? Math.max(most, value) : most), 0);
  const step = rowHeight(levels.reduce((most, { value }) => Math.max(most, value), values));
  const label = (row: number): string => `${Number(((row + 1) * step).toPrecision(6))}`;
  const left = Math.max(...Array.from({ length: ROWS }, (_, row) => label(row).length)) + 1;
  const right = Math.max(0, ...[...levels, ...lanes].map(({ text }) => text.length)) + 3;
  const count = Math.max(10, width - left - right - 1);
  const heights = highestByColumn({ ...plot, to }, count);
  const rows = Array.from({ length: ROWS }, (_, i) => {
    const row = ROWS - 1 - i;
    const here = levels.filter(({ value }) => Math.min(ROWS - 1, Math.floor(value / step)) === row);
    const cells = Array.from(heights, (height) => {
      const eighths = Math.round(8 * (height / step - row));
      const block = blocks[Math.min(8, Math.max(0, Number.isNaN(eighths) ? 0 : eighths))] as string;
      return block === " " && here.length > 0 ? "┄" : block;
    }).join("");
    const head = (row % 2 === 1 ? label(row) : "").padStart(left - 1);
    return `${head} ┤${cells}${here.length > 0 ? ` ${here.map(({ text }) => text).join(", ")}` : ""}`;
  });
  const margin = " ".repeat(left + 1);
  const ends = [significant(from, 4), `${significant(to, 4)} ${xUnit}`] as const;
  const cut = (text: string): string => text.trimEnd();
  const below = lanes.map(({ text, spans }) => {
    const cells = new Array<string>(count).fill("·");
    for (const span of spans) {
      const [first, last] = [span.from, span.to].map((at) => columnOf(at, { from, to }, count)) as [number, number];
      cells.fill("█", first, last + 1);
    }
    return `${margin}${cells.join("")} ${text}`;
  });
  const told = textsAt(
    marks.map(({ text, at }) => ({ text, column: columnOf(at, { from, to }, count) })),
    count,
  );
  return [
    `${" ".repeat(Math.max(0, left - unit.length))}${unit}`,
    ...rows.map(cut),
    `${" ".repeat(left)}└${"─".repeat(count)}`,
    `${margin}${ends[0]}${ends[1].padStart(count - ends[0].length)}`,
    ...(told === "" ? [] : [`${margin}${told}`]),
    ...below,
    `a column is ${significant((to - from) / count)} ${xUnit} and shows the highest value in it; a row is ${Number(step.toPrecision(6))} ${unit}${lanes.length > 0 ? "; below, █ is while it holds" : ""}`,
  ]
    .map((line) => `${line}\n`)
    .join("");
}
