import { requireChoice, requireKnownKeys, requireList, shown, VeladisError, visibleText } from "../core/index";

/** How the engine writes names: `"double"` quotes (standard SQL, DuckDB, PostgreSQL) or a `` "backtick" `` (Spark). */
export type NameQuotes = "double" | "backtick";

/** Where the values stand: in a column, by name or by table and name, or in an expression of your own. */
export type SqlOperand =
  | { readonly column: string | readonly string[]; readonly expression?: never }
  | { readonly expression: string; readonly column?: never };

/** The keys of options that come in several forms. */
export type KeyOf<Options> = Options extends unknown ? keyof Options : never;

const LONGEST = 128;

/** The quotes asked for, checked at run time. */
export function checkedQuotes(quotes: NameQuotes = "double"): NameQuotes {
  return requireChoice(quotes, ["double", "backtick"], "how the engine quotes names", { option: "quotes" });
}

/**
 * A name quoted so that it is nothing but a name, whatever it holds.
 *
 * @throws {@link VeladisError} `wrong-type`, or `syntax` for a name that is empty, too long or has control characters
 */
function identifier(name: string, quotes: NameQuotes): string {
  const without = quotes === "backtick" ? "control characters and ${" : "control characters";
  const expected = `a name of 1 to ${LONGEST} characters without ${without}`;
  if (typeof name !== "string") throw new VeladisError("wrong-type", { expected, received: shown(name) });
  // Spark puts a variable in the place of `${name}`, within quotes too
  const isObeyed = visibleText(name) !== name || (quotes === "backtick" && name.includes("${"));
  if (name === "" || name.length > LONGEST || isObeyed) {
    throw new VeladisError("syntax", { expected, received: shown(name) });
  }
  const quote = quotes === "double" ? '"' : "`";
  return `${quote}${name.replaceAll(quote, quote + quote)}${quote}`;
}

/**
 * The operand as SQL: a quoted name, names with points between, or an expression in brackets; a plus before it.
 *
 * The plus makes no other number of a number. SQLite compares a column of texts with numbers as texts, where `0.5 g` is
 * below 1.4; behind a plus no text is below a number. Other engines refuse the plus before a text, or take the number
 * that the whole text is.
 *
 * @param known - a table of the keys that may stand beside it
 * @throws {@link VeladisError} `missing-option` when there is none, `wrong-type` when there are two, `unknown-option`, and as {@link identifier}
 */
export function operand(given: SqlOperand | undefined, quotes: NameQuotes, known: object): string {
  if (typeof given === "object" && given !== null) requireKnownKeys(given, known, "an option of an expression in SQL");
  const { column, expression } = (given ?? {}) as { column?: string | readonly string[]; expression?: string };
  if ((column === undefined) === (expression === undefined)) {
    throw new VeladisError(column === undefined ? "missing-option" : "wrong-type", {
      expected: 'where the values stand: { column: "reading" } or { expression: "raw / 1000" }',
      received: column === undefined ? "nothing" : "both",
    });
  }
  if (expression !== undefined) {
    if (typeof expression === "string" && expression.trim() !== "") return `+(${expression.trim()})`;
    throw new VeladisError("syntax", { expected: "an expression of SQL", received: shown(expression) });
  }
  const names =
    typeof column === "string" ? [column] : requireList(column as readonly string[], "a name, or a list of names");
  if (names.length === 0)
    throw new VeladisError("missing-option", { expected: "one name or more", received: "an empty list" });
  return `+${names.map((name) => identifier(name, quotes)).join(".")}`;
}
