import type { Frequency } from "../frequency/index";
import { assumedText, parsedType } from "../reading/index";
import { type Assume, classifier, type MachineRef, type SchemeRef, schemeById } from "../severity/index";
import { checkedQuotes, type NameQuotes, operand, type SqlOperand } from "./identifier";
import { numberLiteral, remark, textLiteral } from "./literal";

/** What {@link schemeToSql} is told besides the table and the machine. */
export type SchemeToSqlOptions = SqlOperand & {
  /** What the values are written in, e.g. `"mm/s rms"`. */
  readonly from: string;
  /** The frequency of the vibration, where the table limits another quantity, or others too. */
  readonly at?: Frequency;
  readonly crestFactor?: number;
  /** `"lowest limits"`: for facts not given, take the most severe class and say so in the remark. */
  readonly assume?: Assume;
  readonly quotes?: NameQuotes;
};

/**
 * A table of limits as an expression of plain SQL that gives the zone: a CASE over the limits, in the unit of the
 * column, with the tolerance of 2^-23 by which a value at a limit belongs to the better zone.
 *
 * NULL where the value is NULL, negative, infinite or NaN: never a zone. The remark behind it names the standard, what
 * was assumed, and whether all limits were read in print.
 *
 * @param scheme - the id of a built-in scheme, or a scheme
 * @param machine - the machine, as data or in words
 * @param options - `column` or `expression`; `from`, the reading type; `at`, `crestFactor`, `assume`, `quotes`
 * @returns the expression, to stand where a text may stand
 * @throws {@link VeladisError} as `classifier` of `veladis/severity`, and as {@link toSql}
 * @example
 * ```ts
 * import { schemeToSql } from "veladis/sql";
 *
 * const sql = schemeToSql("iso-10816-3-2009", "group 2 rigid", { column: "velocity", from: "mm/s rms" });
 * sql.split(" THEN ").slice(0, 3);
 * // => [
 * //   'CASE WHEN "velocity" >= 0e0 AND "velocity" <= 1.7976931348623157e308',
 * //   'CASE WHEN "velocity" <= 1.4000000014e0',
 * //   "'A' WHEN \"velocity\" <= 2.8000000028e0",
 * // ]
 * sql.includes("MEMORY"); // => true
 * schemeToSql("iso-10816-3-2009", "group 9", { column: "velocity", from: "mm/s rms" }); // throws unknown-option
 * ```
 */
export function schemeToSql(scheme: SchemeRef, machine: MachineRef, options: SchemeToSqlOptions): string {
  const quotes = checkedQuotes(options?.quotes);
  const value = operand(options, quotes);
  const { from, at, crestFactor, assume } = options;
  const judge = classifier(scheme, machine, from, {
    ...(at !== undefined && { at }),
    ...(crestFactor !== undefined && { crestFactor }),
    ...(assume !== undefined && { assume }),
  });
  const zones = judge.zones.map((zone) => textLiteral(zone, quotes));
  const isLevel = parsedType(judge.from).reference !== 0;
  const [lowest, highest] = [isLevel ? -Number.MAX_VALUE : 0, Number.MAX_VALUE].map(numberLiteral);
  const steps = judge.bounds.map((bound, i) => `WHEN ${value} <= ${numberLiteral(bound)} THEN ${zones[i]}`);
  const worst = zones[judge.bounds.length];
  const { standard, edition } = typeof scheme === "string" ? schemeById(scheme) : scheme;
  const { assumed } = judge;
  const words = assumedText({ assumed, ...(crestFactor !== undefined && { crestFactor }) }).slice(1, -1);
  const told = [
    `${standard} (${edition}), ${judge.from}`,
    ...(judge.verified ? [] : ["limits from MEMORY: check them against the standard"]),
    ...(words ? [`assumed: ${words}`] : []),
    ...judge.assumedFacts,
  ];
  return [
    `CASE WHEN ${value} >= ${lowest} AND ${value} <= ${highest}`,
    `THEN CASE ${steps.join(" ")} ELSE ${worst} END END`,
    remark(told.join("; ")),
  ].join(" ");
}
