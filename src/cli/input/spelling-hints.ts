import { counted } from "../../core/index";
import type { RefusedRow } from "../../plant/index";

/** A number with a decimal comma in a cell: `7,1`, `7,1 mm/s rms`. */
const COMMA = /(?:^|\s)\d+,\d+(?=\s|$)/;

/** A day as a spreadsheet writes it: `31.03.2026`, `3/31/2026`. */
const DAY = /^(\d{1,2})[./-](\d{1,2})[./-]\d{4}$/;

/** The order of days that the cells of a column can only be in; both where they tell none. */
function orderWords(days: readonly string[]): string {
  const parts = days.map((day) => DAY.exec(day) as RegExpExecArray);
  const isDayFirst = parts.some(([, first]) => Number(first) > 12);
  const isMonthFirst = parts.some(([, , second]) => Number(second) > 12);
  if (isDayFirst && !isMonthFirst) return "add --dates day-first";
  if (isMonthFirst && !isDayFirst) return "add --dates month-first";
  return "add --dates day-first or --dates month-first, whichever they are";
}

/**
 * What option would read rows that were refused, since a spreadsheet writes numbers or days otherwise; nothing where no such
 * cell stands in them.
 */
export function spellingHints(
  {
    rows,
    lines,
    refused,
  }: {
    readonly rows: readonly (readonly string[])[];
    readonly lines: readonly number[];
    readonly refused: readonly RefusedRow[];
  },
  { decimalComma, dates }: { readonly decimalComma: boolean; readonly dates: unknown },
): readonly string[] {
  const bad = new Set(refused.map(({ line }) => line));
  const own = rows.filter((_, i) => bad.has(lines[i] as number)).map((cells) => cells.map((cell) => cell.trim()));
  const withComma = own.flatMap((cells) => cells.find((cell) => COMMA.test(cell)) ?? []);
  const days = own.flatMap((cells) => cells.filter((cell) => DAY.test(cell)));
  const withDay = own.filter((cells) => cells.some((cell) => DAY.test(cell))).length;
  return [
    ...(decimalComma || withComma.length === 0
      ? []
      : [`${counted(withComma.length, "refused row")} with numbers like ${withComma[0]}: add --decimal-comma`]),
    ...(dates !== undefined || withDay === 0
      ? []
      : [`${counted(withDay, "refused row")} with days like ${days[0]}: ${orderWords(days)}`]),
  ];
}
