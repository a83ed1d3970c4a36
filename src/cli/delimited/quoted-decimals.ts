import { VeladisError } from "../../core/index";

/** A number with a comma for decimals in quotes, between commas. */
const quoted = /(?:^|,)"\s*[-+]?\d*,\d+(?:[eE][-+]?\d+)?\s*"(?:,|$)/;

/** Whether a row has a number with a comma for decimals in quotes, so that commas can separate all the same. */
export function hasQuotedDecimal(row: string): boolean {
  return quoted.test(row);
}

/**
 * Whether a row of such a file may have a number without its quotes: two cells of digits stand side by side, and no number
 * with a comma stands in quotes.
 */
export function hasBareDecimal(row: string): boolean {
  const bare = row.replaceAll(/"(?:[^"]|"")*"/g, '"');
  return !hasQuotedDecimal(row) && /(?:^|,)\s*[-+]?\d*,\d+(?:[eE][-+]?\d+)?\s*(?:,|$)/.test(bare);
}

/**
 * Refuses a comma that stands both for decimals and between cells where no row shows how the two are told apart.
 *
 * @param rows - the first rows below the header
 * @throws {@link VeladisError} `unknown-option`
 */
export function requireQuotedDecimals(rows: readonly string[], quotes: boolean): void {
  if (quotes && rows.some(hasQuotedDecimal)) return;
  throw new VeladisError("unknown-option", {
    expected:
      'the comma for decimals, or between cells; both only where such numbers stand in quotes, as in ID fan 1,"4,1"',
    received: `both, and ${quotes ? "no such number in the first rows" : "--quotes none"}`,
  });
}
