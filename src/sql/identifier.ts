import { inPlace, requireKnownKeys, requireList, shown, VeladisError, visibleText } from "../core/index";
import { dialectOf, type SqlDialect } from "./dialects";

/** Where the values stand: in a column, by name or by table and name, or in an expression of your own. */
export type SqlOperand =
  | { readonly column: string | readonly string[]; readonly expression?: never }
  | { readonly expression: string; readonly column?: never };

/** The keys of options that come in several forms. */
export type KeyOf<Options> = Options extends unknown ? keyof Options : never;

const LONGEST = 128;

/**
 * A name quoted so that it is nothing but a name, whatever it holds.
 *
 * @throws {@link VeladisError} `wrong-type`, or `syntax` for a name that is empty, too long or has control characters
 */
export function identifier(name: string, dialect: SqlDialect): string {
  const { quote, codes, hasVariables } = dialectOf(dialect);
  const without = hasVariables ? "control characters and ${" : "control characters";
  const expected = `a name of 1 to ${LONGEST} characters without ${without}`;
  if (typeof name !== "string")
    throw new VeladisError("wrong-type", { expected, received: shown(name), parameter: "name" });
  const isObeyed = visibleText(name) !== name || (hasVariables && name.includes("${"));
  if (name === "" || name.length > LONGEST || isObeyed) {
    throw new VeladisError("syntax", { expected, received: shown(name), parameter: "name" });
  }
  const plain = codes === "texts and names" ? name.replaceAll("\\", "\\\\") : name;
  return `${quote}${plain.replaceAll(quote, quote + quote)}${quote}`;
}

/** A name, or names with points between. */
export function dotted(column: string | readonly string[], dialect: SqlDialect): string {
  const names =
    typeof column === "string" ? [column] : requireList(column, "a name, or a list of names", { parameter: "column" });
  if (names.length === 0)
    throw new VeladisError("missing-option", { expected: "one name or more", received: "an empty list" });
  return names.map((name) => identifier(name, dialect)).join(".");
}

/** A value in SQL, and the condition that it is no text, with an AND behind it; empty where the engine sees to that. */
export interface Operand {
  readonly value: string;
  readonly isNumber: string;
}

/** The types of numbers, as Spark names them. */
const NUMBERS = "^(double|float|decimal|bigint|int|smallint|tinyint)";

/**
 * A value that is a number, never a text. The plus makes no other number of a number. SQLite compares a column of texts
 * with numbers as texts, where `0.5 g` is below 1.4; behind a plus no text is below a number. Other engines refuse the
 * plus before a text, or ClickHouse the comparison. Spark makes a number of it, and is asked for the type.
 */
function asNumber(value: string, dialect: SqlDialect): Operand {
  const { texts } = dialectOf(dialect);
  if (texts === "refused") return { value, isNumber: "" };
  if (texts === "refused behind a plus") return { value: `+${value}`, isNumber: "" };
  return { value, isNumber: `typeof(${value}) RLIKE '${NUMBERS}' AND ` };
}

/**
 * The operand as SQL, as {@link asNumber}: a quoted name, names with points between, or an expression in brackets.
 *
 * @param known - a table of the keys that may stand beside it
 * @throws {@link VeladisError} `missing-option` when there is none, `wrong-type` when there are two, `unknown-option`, and as {@link identifier}
 */
export function operand(given: SqlOperand | undefined, dialect: SqlDialect, known: object): Operand {
  return inPlace({ parameter: "options" }, () => operandOf(given, dialect, known));
}

function operandOf(given: SqlOperand | undefined, dialect: SqlDialect, known: object): Operand {
  if (typeof given === "object" && given !== null) requireKnownKeys(given, known, "an option of an expression in SQL");
  const { column, expression } = (given ?? {}) as { column?: string | readonly string[]; expression?: string };
  if ((column === undefined) === (expression === undefined)) {
    throw new VeladisError("wrong-type", {
      expected: 'where the values stand: { column: "reading" } or { expression: "raw / 1000" }',
      received: column === undefined ? "nothing" : "both",
      option: "column",
    });
  }
  if (expression !== undefined) {
    if (typeof expression === "string" && expression.trim() !== "") return asNumber(`(${expression.trim()})`, dialect);
    throw new VeladisError("syntax", {
      expected: "an expression of SQL",
      received: shown(expression),
      option: "expression",
    });
  }
  return inPlace({ option: "column" }, () => asNumber(dotted(column as string | readonly string[], dialect), dialect));
}
