import { requireChoice, requireGiven, withParameters } from "../core/index";
import type { Frequency } from "../frequency/index";
import { type Assume, classifier, type MachineRef, type SchemeRef, schemeById } from "../severity/index";
import { checkedDialect, type SqlDialect } from "./dialects";
import { type KeyOf, operand, type SqlOperand } from "./identifier";
import { type ZoneAnswer, zoneCase } from "./zone-case";
import { zoneRemark } from "./zone-remark";

/** What {@link schemeToSql} is told besides the scheme and the machine. */
export type SchemeToSqlOptions = SqlOperand & {
  /** What the values are written in, e.g. `"mm/s rms"`. */
  readonly from: string;
  /** `"zone"`, if not given: the zone that was judged; `"worst"`: the worst zone that is possible. */
  readonly answer?: ZoneAnswer;
  /** The frequency of the vibration, where the scheme limits another quantity, or others too. */
  readonly at?: Frequency;
  readonly crestFactor?: number;
  /** `"usual case"`, if not given; `"lowest limits"`: for facts not given, take the most severe class. The remark says so. */
  readonly assume?: Assume;
  readonly dialect?: SqlDialect;
};

const keys: Readonly<Record<KeyOf<SchemeToSqlOptions>, true>> = /* @__PURE__ */ Object.freeze({
  column: true,
  expression: true,
  from: true,
  answer: true,
  at: true,
  crestFactor: true,
  assume: true,
  dialect: true,
});

/** What the readings are written in, which every query asks for. */
export function checkedFrom(from: string): string {
  return requireGiven(from, 'what the readings are written in: { from: "mm/s rms" }', {
    parameter: "options",
    option: "from",
  });
}

/** The answer asked for, checked at run time. */
export function checkedAnswer(answer: ZoneAnswer = "zone"): ZoneAnswer {
  return requireChoice(answer, ["zone", "worst"], "which zone the expression gives", { option: "answer" });
}

/** The options that a classifier takes too. */
export function classifierOptions({
  at,
  crestFactor,
  assume,
}: Pick<SchemeToSqlOptions, "at" | "crestFactor" | "assume">) {
  return {
    ...(at !== undefined && { at }),
    ...(crestFactor !== undefined && { crestFactor }),
    ...(assume !== undefined && { assume }),
  };
}

/**
 * A scheme as an expression of plain SQL that gives the zone: a CASE over the limits, in the unit of the column, with
 * the tolerance of 2^-23 by which a value at a limit belongs to the better zone.
 *
 * NULL where the value is NULL, negative, infinite or NaN: never a zone. The remark behind it names the standard, what
 * was assumed, set aside and not judged, and whether all limits were read in print. With `answer: "worst"` it gives the
 * worst zone that is possible, as `worst` of a classifier does: the last one where something was not judged.
 *
 * @param scheme - the id of a built-in scheme, or a scheme
 * @param machine - the machine, as data or in words
 * @param options - `column` or `expression`; `from`, the reading type; `answer`, `at`, `crestFactor`, `assume`, `dialect`
 * @returns the expression, to stand where a text may stand
 * @throws {@link VeladisError} as `classifier` of `veladis/severity`, and as {@link toSql}
 * @example
 * ```ts
 * import { schemeToSql } from "veladis/sql";
 *
 * const sql = schemeToSql("iso-10816-3-2009", "group 2 rigid", { column: "velocity", from: "mm/s rms" });
 * sql.split(" THEN ").slice(0, 3);
 * // => [
 * //   'CASE WHEN +"velocity" >= 0e0 AND +"velocity" <= 1.7976931348623157e308',
 * //   'CASE WHEN +"velocity" <= 1.4000001668930053e0',
 * //   "'A' WHEN +\"velocity\" <= 2.8000003337860107e0",
 * // ]
 * sql.includes("check them against the standard"); // => true
 * sql.includes("worse is possible; not judged: limits in um rms"); // => true
 * schemeToSql("iso-10816-3-2009", "group 9", { column: "velocity", from: "mm/s rms" }); // throws unknown-option
 * ```
 */
export function schemeToSql(scheme: SchemeRef, machine: MachineRef, options: SchemeToSqlOptions): string {
  return withParameters({ options, scheme, machine }, () => {
    const dialect = checkedDialect(options?.dialect);
    const value = operand(options, dialect, keys);
    const answer = checkedAnswer(options.answer);
    const from = checkedFrom(options.from);
    const judge = classifier(scheme, machine, from, classifierOptions(options));
    const found = typeof scheme === "string" ? schemeById(scheme) : scheme;
    return `${zoneCase(judge, value, answer, dialect)} ${zoneRemark(judge, [found], answer, options.crestFactor)}`;
  });
}
