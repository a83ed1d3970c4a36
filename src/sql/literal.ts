import { requireFinite } from "../core/index";
import type { NameQuotes } from "./identifier";

/**
 * A number as SQL: always with an exponent, which makes it a binary number of 64 bits in DuckDB, Spark and SQLite,
 * where 17.96 would be a decimal with places of its own. All digits that tell it from its neighbours.
 */
export function numberLiteral(value: number): string {
  const [digits, exponent] = requireFinite(value, "numbers that a 64-bit number can hold")
    .toExponential()
    .split("e") as [string, string];
  return `${digits}e${exponent.replace("+", "")}`;
}

/** A text as SQL; where a backslash escapes in texts it is doubled. */
export function textLiteral(text: string, quotes: NameQuotes): string {
  const doubled = text.replaceAll("'", "''");
  return `'${quotes === "backtick" ? doubled.replaceAll("\\", "\\\\") : doubled}'`;
}

/** A remark that nothing in it can end. */
export function remark(text: string): string {
  return `/* ${text.replaceAll("*/", "* /").replaceAll("/*", "/ *").replace(/\s+/g, " ")} */`;
}
