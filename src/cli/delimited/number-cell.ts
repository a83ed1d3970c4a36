import { parseNumeral, plainNumeral, shown, VeladisError } from "../../core/index";

/** The number with a comma for decimals, as one with a point; one that has a point already is refused. */
export function pointed(cell: string): string {
  if (!cell.includes(".")) return cell.replace(",", ".");
  throw new VeladisError("not-a-number", {
    expected: "a number with a comma for decimals and no point, by --decimal-comma",
    received: shown(cell),
  });
}

/**
 * The number in a cell.
 *
 * @param what - what it should be, for the message, e.g. `"a level"`
 * @throws {@link VeladisError} `not-a-number` or `not-finite`; where a comma stands in it, `--decimal-comma` is named
 */
export function numberCell(cell: string, what: string, decimalComma: boolean): number {
  const text = decimalComma ? pointed(cell) : cell;
  if (plainNumeral.test(text.trim())) return parseNumeral(text, what);
  if (!decimalComma && !cell.includes(",")) return parseNumeral(cell, what);
  throw new VeladisError("not-a-number", {
    expected: `${what}, with a ${decimalComma ? "comma for decimals" : "point for decimals (--decimal-comma where a comma stands for them)"}`,
    received: shown(cell),
  });
}
