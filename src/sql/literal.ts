import { requireFinite, shown, VeladisError, visibleText } from "../core/index";
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

/**
 * A text as SQL. Spark, which quotes names with backticks, reads a backslash in a text as the beginning of a code, so it
 * is doubled; a quotation mark within is written as its code, which no engine takes for the end; so is the beginning of
 * `${name}`, in whose place Spark puts a variable.
 *
 * @throws {@link VeladisError} `syntax` for control characters, which not every engine can hold
 */
export function textLiteral(text: string, quotes: NameQuotes): string {
  if (visibleText(text) !== text) {
    throw new VeladisError("syntax", {
      expected: "names of zones and grades without control characters",
      received: shown(text),
    });
  }
  if (quotes === "double") return `'${text.replaceAll("'", "''")}'`;
  return `'${text.replaceAll("\\", "\\\\").replaceAll("'", "\\u0027").replaceAll("${", "\\u0024{")}'`;
}

/** A remark that nothing in it can end, nor begin another within it; nor is a variable put into it. */
export function remark(text: string): string {
  const line = visibleText(text.replace(/\s+/g, " "));
  return `/* ${line.replaceAll("*/", "* /").replaceAll("/*", "/ *").replaceAll("${", "$ {")} */`;
}
