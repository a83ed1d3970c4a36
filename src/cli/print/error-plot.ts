import { largestOf, visibleText } from "../../core/index";
import { significant } from "../../reading/index";
import { signed } from "../../report/index";
import { type ErrorMark, errorMarks, type NamedCheck } from "../../verification/index";
import { textsAt } from "./plot-text";

/** A step of the axis: round, so that a side of it takes eight at the most. */
function stepOf(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most / 4));
  return [1, 2, 5, 10].map((one) => one * power).find((one) => 4 * one >= most) ?? 10 * power;
}

/** The column of a share on an axis from `-most` to `most`. */
function columnOf(percent: number, most: number, count: number): number {
  return Math.min(count - 1, Math.max(0, Math.round(((percent + most) / (2 * most)) * (count - 1))));
}

/** A check as a row: its tolerance between brackets, its uncertainty as a line, its error as a block. */
function rowText({ percent, tolerance, uncertainty }: ErrorMark, most: number, count: number): string {
  const cells = new Array<string>(count).fill(" ");
  const at = (one: number): number => columnOf(one, most, count);
  cells.fill("·", at(tolerance[0]), at(tolerance[1]) + 1);
  cells[at(0)] = "┊";
  if (uncertainty !== null) cells.fill("─", at(percent - uncertainty), at(percent + uncertainty) + 1);
  cells[at(tolerance[0])] = "[";
  cells[at(tolerance[1])] = "]";
  cells[at(percent)] = "█";
  return cells.join("");
}

/**
 * Errors against their tolerances in block characters, a row a check, as wide as the window: the block of an error stands
 * within half a column of it.
 */
export function errorPlot(checks: readonly NamedCheck[], width: number): string {
  const { over, unit, marks, furthest } = errorMarks(checks);
  const names = marks.map(({ name, at }) =>
    over === "check" ? visibleText(name === "" ? `${at}` : name).slice(0, 24) : `${significant(at)} ${unit}`,
  );
  const step = stepOf(furthest > 0 ? furthest : 1);
  const most = 4 * step;
  const left = largestOf(names.map((name) => name.length)) + 1;
  const words = marks.map(({ percent, verdict }) => `${signed(percent)} % ${verdict}`);
  const count = Math.max(11, width - left - largestOf(words.map((word) => word.length)) - 1);
  const axis = [-most, -most / 2, 0, most / 2, most].map((one) => ({
    at: columnOf(one, most, count),
    text: one > 0 ? `+${Number(one.toPrecision(6))}` : `${Number(one.toPrecision(6))}`,
  }));
  const head = textsAt(
    axis.map(({ at, text }) => ({ text, column: Math.max(0, at - Math.floor(text.length / 2)) })),
    count,
  );
  const margin = " ".repeat(left);
  const rule = new Array<string>(count).fill("─");
  for (const { at } of axis) rule[at] = "┼";
  const rows = marks.map(
    (mark, i) => `${(names[i] as string).padStart(left - 1)} ${rowText(mark, most, count)} ${words[i]}`,
  );
  return [
    `${margin}error, % of the known level`,
    `${margin}${head}`,
    `${margin}${rule.join("")}`,
    ...rows,
    `a column is ${significant((2 * most) / (count - 1))} %; █ is the error, [ ] its tolerance${marks.some(({ uncertainty }) => uncertainty !== null) ? ", ─ the uncertainty (k = 2)" : ""}`,
  ]
    .map((line) => `${line}\n`)
    .join("");
}
