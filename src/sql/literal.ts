import { requireFinite, shown, VeladisError, visibleText } from "../core/index";
import { dialectOf, type SqlDialect } from "./dialects";

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
 * A text as SQL. Where a backslash begins a code it is doubled. Spark puts a variable in the place of `${name}`, so its
 * beginning is written as a code, and so is a quotation mark.
 *
 * @throws {@link VeladisError} `syntax` for control characters, which not every engine can hold
 */
export function textLiteral(text: string, dialect: SqlDialect, what = "names of zones and grades"): string {
  if (visibleText(text) !== text) {
    throw new VeladisError("syntax", {
      expected: `${what} without control characters`,
      received: shown(text),
    });
  }
  const { codes, hasVariables } = dialectOf(dialect);
  const coded = codes === "nowhere" ? text : text.replaceAll("\\", "\\\\");
  if (!hasVariables) return `'${coded.replaceAll("'", "''")}'`;
  return `'${coded.replaceAll("'", "\\u0027").replaceAll("${", "\\u0024{")}'`;
}

/** A remark that nothing in it can end, nor begin another within it; nor is a variable put into it. */
export function remark(text: string): string {
  const line = visibleText(text.replace(/\s+/g, " "));
  return `/* ${line.replaceAll("*/", "* /").replaceAll("/*", "/ *").replaceAll("${", "$ {")} */`;
}
