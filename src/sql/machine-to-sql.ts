import { withParameters } from "../core/index";
import { type MachineRef, machineClassifier, type SchemeRef, schemeById } from "../severity/index";
import { checkedDialect } from "./dialects";
import { type KeyOf, operand } from "./identifier";
import { checkedAnswer, checkedFrom, classifierOptions, type SchemeToSqlOptions } from "./scheme-to-sql";
import { zoneCase } from "./zone-case";
import { zoneRemark } from "./zone-remark";

/** What {@link machineToSql} is told besides the machine. */
export type MachineToSqlOptions = SchemeToSqlOptions & {
  /** The schemes to choose from; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
};

const keys: Readonly<Record<KeyOf<MachineToSqlOptions>, true>> = /* @__PURE__ */ Object.freeze({
  column: true,
  expression: true,
  from: true,
  answer: true,
  at: true,
  crestFactor: true,
  assume: true,
  schemes: true,
  dialect: true,
});

/**
 * The verdict on a machine as one expression of plain SQL: the zone by every published scheme that the known facts of
 * the machine admit, of which the worst governs. The same answers as `machineClassifier` of `veladis/severity`.
 *
 * NULL where the value is NULL, negative, infinite or NaN: never a zone. The remark behind it names the schemes, what
 * was assumed, set aside and not judged. With `answer: "worst"` it gives the worst zone that is possible. A column of
 * velocities is taken as read on the housing, also where they were displacements once: say `shaft` then.
 *
 * @param machine - the machine, as data or in words, with its kind at least
 * @param options - `column` or `expression`; `from`, the reading type; `answer`, `at`, `crestFactor`, `assume`
 *   (`"lowest limits"` if not given), `schemes`, `dialect`
 * @returns the expression, to stand where a text may stand
 * @throws {@link VeladisError} as `machineClassifier` of `veladis/severity`, and as {@link toSql}
 * @example
 * ```ts
 * import { machineToSql } from "veladis/sql";
 *
 * const sql = machineToSql("motor 1485 r/min rigid", { column: "velocity", from: "mm/s rms" });
 * sql.split(" THEN ")[1]; // => 'CASE WHEN +"velocity" <= 7.100000846385955e-1'
 * sql.includes("ISO 20816-3 (2022) and ISO 10816-1 (1995, Annex B), mm/s rms; the worst of them governs"); // => true
 * sql.includes("power above 15 kW: not given, assumed"); // => true
 * machineToSql("1485 r/min rigid", { column: "velocity", from: "mm/s rms" }); // throws missing-fact
 * ```
 */
export function machineToSql(machine: MachineRef, options: MachineToSqlOptions): string {
  return withParameters({ options, machine }, () => {
    const dialect = checkedDialect(options?.dialect);
    const value = operand(options, dialect, keys);
    const answer = checkedAnswer(options.answer);
    const { schemes: given = [], crestFactor } = options;
    const from = checkedFrom(options.from);
    const judge = machineClassifier(machine, from, {
      ...classifierOptions(options),
      ...(options.schemes !== undefined && { schemes: given }),
    });
    const own = given.filter((one) => typeof one !== "string");
    const named = judge.schemes.map((id) => own.find((one) => one.id === id) ?? schemeById(id));
    return `${zoneCase(judge, value, answer, dialect)} ${zoneRemark(judge, named, answer, crestFactor)}`;
  });
}
