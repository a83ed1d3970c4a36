import { visibleText } from "../../core/index";
import { significant } from "../../reading/index";
import { wrapped } from "./wrapped";

/** A line of a scale in the terminal. */
interface ScaleLine {
  readonly name: string;
  readonly text: string;
  readonly value: number;
  /** What the rules allow, or how far readings reach. */
  readonly span?: readonly [from: number, to: number];
}

/** What is drawn on one scale, which begins at zero. */
export interface Scale {
  readonly unit: string;
  readonly most: number;
  /** What the signs are. */
  readonly key: string;
  readonly lines: readonly ScaleLine[];
  /** Limits across all lines. */
  readonly marks: readonly { readonly name: string; readonly value: number }[];
}

/** The column of a value on a scale from zero. */
export function cellOf(value: number, most: number, count: number): number {
  return Math.min(count - 1, Math.max(0, Math.floor((value / most) * count)));
}

/** Names of marks on as few lines as hold them, each begun at its column or ended at the edge. */
export function namesAtCells(
  marks: readonly { readonly text: string; readonly column: number }[],
  count: number,
): string[] {
  const lines: string[] = [];
  for (const { text, column } of marks) {
    const at = Math.max(0, Math.min(column, count - text.length));
    const free = lines.findIndex((line) => line.length < at);
    if (free === -1) lines.push(" ".repeat(at) + text);
    else lines[free] = (lines[free] as string).padEnd(at) + text;
  }
  return lines;
}

/** Lines of a drawing, and what its signs are below them. */
export function drawnText(lines: readonly string[], key: string, width: number): string {
  return lines.map((line) => `${line.trimEnd()}\n`).join("") + wrapped(key, "", "", Math.max(40, width));
}

/**
 * Levels on one scale in block characters: each on a line of its own, what the rules allow as a row of dots, limits as upright
 * lines. A value is read back within one cell.
 *
 * @param width - columns of the window
 */
export function scaleText({ unit, most, key, lines, marks }: Scale, width: number): string {
  const left = Math.max(...lines.map(({ name }) => name.length)) + 1;
  const count = Math.max(10, width - left - 2);
  const limits = marks.map(({ name, value }) => ({
    text: `${name} ${significant(value, 4)}`,
    column: cellOf(value, most, count),
  }));
  const margin = " ".repeat(left + 1);
  const rows = lines.flatMap(({ name, text, value, span }) => {
    const cells = new Array<string>(count).fill(" ");
    if (span !== undefined) {
      const [from, to] = span.map((end) => cellOf(end, most, count)) as [number, number];
      cells.fill("·", from, to + 1);
    }
    for (const { column } of limits) cells[column] = "│";
    const at = cellOf(value, most, count);
    cells[at] = "█";
    const told = visibleText(text);
    const room = `${" ".repeat(left + 1 + Math.max(0, Math.min(at, width - left - 1 - told.length)))}${told}`;
    return [room, `${name.padEnd(left)}┤${cells.join("")}`];
  });
  const end = `${significant(most, 3)} ${unit}`;
  return drawnText(
    [
      ...namesAtCells(limits, count).map((line) => margin + line),
      ...rows,
      `${" ".repeat(left)}└${"─".repeat(count)}`,
      `${margin}0${end.padStart(Math.max(end.length + 1, count - 1))}`,
    ],
    `a column is ${significant(most / count)} ${unit}; ${key}`,
    width,
  );
}
