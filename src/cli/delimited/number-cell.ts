import { parseNumeral, plainNumeral, shown, VeladisError } from "../../core/index";
import { hasPlusMinus } from "../../reading/index";

/** The number with a comma for decimals, as one with a point; one that has a point already is refused. */
export function pointed(cell: string): string {
  if (!cell.includes(".")) return cell.replace(",", ".");
  throw new VeladisError("not-a-number", {
    expected: "a number with a comma for decimals and no point, by --decimal-comma",
    received: shown(cell),
  });
}

/** Refuses a number with its uncertainty in a column that carries none. */
export function requireNoneInColumn(cell: string, what: string): void {
  if (!hasPlusMinus(cell)) return;
  throw new VeladisError("syntax", {
    expected: `${what} without ±, which a column does not carry; write the value plus its uncertainty U in a column of its own and take that, or judge the reading by itself: veladis judge "4.9 ± 0.3 mm/s rms (k=2)"`,
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
  if (!decimalComma && plainNumeral.test(cell.trim())) return parseNumeral(cell, what);
  requireNoneInColumn(cell, what);
  const text = decimalComma ? pointed(cell) : cell;
  if (plainNumeral.test(text.trim())) return parseNumeral(text, what);
  if (!decimalComma && !cell.includes(",")) return parseNumeral(cell, what);
  throw new VeladisError("not-a-number", {
    expected: `${what}, with a ${decimalComma ? "comma for decimals" : "point for decimals (--decimal-comma where a comma stands for them)"}`,
    received: shown(cell),
  });
}
