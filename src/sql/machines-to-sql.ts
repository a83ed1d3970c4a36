import {
  inPlace,
  requireKnownKeys,
  requireList,
  requireText,
  shown,
  VeladisError,
  visibleText,
  withParameters,
} from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { parsedType, type ReadingType, type ReadingTypeText, readingType } from "../reading/index";
import type { Assume, SchemeRef } from "../severity/index";
import { checkedDialect, type SqlDialect } from "./dialects";
import { dotted, identifier, type KeyOf, operand, type SqlOperand } from "./identifier";
import { type JoinedVerdict, joinedVerdict } from "./joined-verdict";
import { ladderQuery } from "./ladder-query";
import { ladderRows } from "./ladder-rows";
import { laddersOf, mostSteps } from "./ladders";
import type { LimitRow } from "./limit-columns";
import { limitRows, type NamedMachine, type RefusedMachine } from "./limit-rows";
import { machineBounds } from "./machine-bounds";
import { rowsAsTable } from "./rows-as-table";
import { checkedFrom } from "./scheme-to-sql";
import { assumptionText, isColumn, type SqlFrequency, toSql } from "./to-sql";

/** What {@link machinesToSql} is told besides the machines. */
export type MachinesToSqlOptions = SqlOperand & {
  /** The table of the readings, by name, or by schema and name. */
  readonly table: string | readonly string[];
  /** The column of the readings that names the machine; `"machine"` if not given. */
  readonly machine?: string;
  /** What the readings are written in, e.g. `"mm/s rms"`. */
  readonly from: ReadingTypeText;
  /** What they are judged in, where it is another quantity and the frequency differs from row to row. */
  readonly as?: ReadingTypeText;
  /** The frequency of the vibration: the same for all rows, or from a column. A machine may have one of its own. */
  readonly at?: Frequency | SqlFrequency;
  readonly crestFactor?: number;
  /** `"lowest limits"` if not given: for facts not given, the most severe class, named. */
  readonly assume?: Assume;
  /** The schemes to choose from; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
  /** The table in which the rows of limits were put; if not given, the query brings them along. */
  readonly limits?: string | readonly string[];
  readonly dialect?: SqlDialect;
};

/** The verdicts on all machines, for an engine. */
export interface MachinesSql {
  /** The limits as data, a row a machine, criterion and limit; a machine that is refused has one row that says why. */
  readonly rows: readonly LimitRow[];
  readonly refused: readonly RefusedMachine[];
  /** A query that gives these rows as a table. */
  readonly limits: string;
  /** A query that gives a row a machine: of these rows, or of the table in which they are kept. */
  readonly bounds: string;
  /**
   * The parts of the verdict, each an expression over a column `veladis_judged` of a table `veladis_readings`, the
   * reading, beside a table `machine_bounds`, what the query `bounds` gives.
   */
  readonly verdict: JoinedVerdict;
  /**
   * The whole query: all columns of the readings, `veladis_judged` (the reading, in the type that is judged), and the
   * parts of the verdict, each by its name with `veladis_` in front, as in `veladis_zone`.
   */
  readonly query: string;
}

const keys: Readonly<Record<KeyOf<MachinesToSqlOptions>, true>> = /* @__PURE__ */ Object.freeze({
  column: true,
  expression: true,
  table: true,
  machine: true,
  from: true,
  as: true,
  at: true,
  crestFactor: true,
  assume: true,
  schemes: true,
  limits: true,
  dialect: true,
});

const machineKeys: Readonly<Record<keyof NamedMachine | keyof RefusedMachine, true>> = /* @__PURE__ */ Object.freeze({
  name: true,
  machine: true,
  at: true,
  scheme: true,
  error: true,
});

/** A machine to judge, or one that was refused before and has the reason in the table. */
type Listed = NamedMachine | RefusedMachine;

/** The machines, each named once by a text that every engine can hold. */
function checkedMachines(machines: readonly Listed[]): readonly Listed[] {
  const all = requireList(machines, "a list of machines, each { name, machine }", { parameter: "machines" });
  if (all.length === 0) {
    throw new VeladisError("missing-option", {
      expected: "one machine or more",
      received: "an empty list",
      parameter: "machines",
    });
  }
  const seen = new Set<string>();
  return all.map((one, index) => {
    const expected = "a machine as { name, machine }";
    if (typeof one !== "object") {
      throw new VeladisError("wrong-type", { expected, received: shown(one), parameter: "machines", index });
    }
    requireKnownKeys(one, machineKeys, "a part of a machine on a list", { parameter: "machines", index });
    const name = requireText(one.name, "the name of a machine", { parameter: "machines", index, option: "name" });
    const isSecond = seen.has(name);
    if (isSecond || visibleText(name) !== name) {
      throw new VeladisError("syntax", {
        expected: "names of machines, each once, without control characters",
        received: isSecond ? `${shown(name)} twice` : shown(name),
        parameter: "machines",
        index,
      });
    }
    seen.add(name);
    return one;
  });
}

/** The name of what is judged, and the beginning of the names of the answers: a table of readings may have a column `zone`. */
const JUDGED = "veladis_judged";
const ANSWER = "veladis_";

/** What is judged: the readings themselves, or what they are in another type by the frequency of their row. */
interface Judged {
  readonly sql: string;
  readonly from: ReadingType;
  readonly at?: Frequency;
  readonly assumedBefore?: string;
  readonly isByRow?: boolean;
  readonly wasDisplacement?: boolean;
}

function judgedOf(options: MachinesToSqlOptions, dialect: SqlDialect): Judged {
  const { value, isNumber } = operand(options, dialect, keys);
  const { table: _, machine, from, as, at, assume, schemes, limits, ...where } = options;
  const before = readingType(checkedFrom(from));
  const byRow = at !== undefined && isColumn(at);
  if (byRow !== (as !== undefined)) {
    throw new VeladisError("missing-option", {
      expected: "as, what the readings are judged in, together with at as a column",
      received: byRow ? "at alone" : "as alone",
      option: byRow ? "as" : "at",
    });
  }
  if (!byRow || as === undefined) {
    const sql = isNumber === "" ? value : `CASE WHEN ${isNumber}TRUE THEN ${value} END`;
    return { sql, from: before, ...(at !== undefined && { at: at as Frequency }) };
  }
  const after = readingType(as);
  return {
    sql: toSql(before, after, { ...where, at, dialect } as Parameters<typeof toSql>[2]),
    from: after,
    isByRow: true,
    assumedBefore: assumptionText(before, after, options).replace(/^; assumed: /, ""),
    wasDisplacement: parsedType(before).quantity === "displacement" && parsedType(after).quantity !== "displacement",
  };
}

/**
 * The verdicts on all machines of a plant as one query of plain SQL: a table of limits, one row a machine, criterion and
 * limit, and one expression that judges every reading by joining it. The same answers as `machineClassifier` of
 * `veladis/severity` gives for each machine.
 *
 * A machine that the library refuses stands in the table with the reason and has no zone; so has a reading that is NULL,
 * negative, infinite or NaN, one whose row lacks its frequency, and one of a machine that is not on the list. A column
 * of texts gives no zone in any of the engines.
 *
 * @param machines - the machines, each `{ name, machine, at?, scheme? }`, by the name that the readings have for it; or `{ name, error }`
 *   for one that is refused already
 * @param options - `table`, `machine` (its column there), `column` or `expression`, `from`; `as` with `at` as a column,
 *   `at`, `crestFactor`, `assume` (`"lowest limits"` if not given), `schemes`, `limits`, `dialect` (`"duckdb"` if not given)
 * @returns the rows of limits, the machines refused, and the SQL, whole and in its parts
 * @throws {@link VeladisError} `missing-option`, `unknown-option`, `wrong-type`, `syntax` for names that cannot be or come
 *   twice, and as {@link toSql}
 * @example
 * ```ts
 * import { machinesToSql } from "veladis/sql";
 *
 * const plant = [
 *   { name: "P-11", machine: "pump 90 kW category II 2980 r/min" },
 *   { name: "V-02", machine: "fan 90 kW 1480 r/min rigid, in service" },
 *   { name: "X-01", machine: "90 kW" },
 * ];
 * const sql = machinesToSql(plant, { table: "readings", column: "velocity", from: "mm/s rms" });
 * sql.rows[0]?.name; // => "A/B"
 * sql.refused.map(({ name, error }) => [name, error.code]); // => [["X-01", "missing-fact"]]
 * sql.query.includes('ON machine_bounds.machine = veladis_readings."machine"'); // => true
 * machinesToSql([], { table: "readings", column: "velocity", from: "mm/s rms" }); // throws missing-option
 * ```
 */
export function machinesToSql(
  machines: readonly (NamedMachine | RefusedMachine)[],
  options: MachinesToSqlOptions,
): MachinesSql {
  return withParameters({ machines, options }, () => {
    const dialect = checkedDialect(options?.dialect);
    const all = checkedMachines(machines);
    const { sql, ...judged } = judgedOf(options, dialect);
    const { crestFactor, assume, schemes, limits: kept, machine = "machine" } = options;
    const table = inPlace({ parameter: "options", option: "table" }, () => dotted(options.table, dialect));
    // wrong for all of them, not for one
    if (judged.at !== undefined) hertz(judged.at);
    if (schemes !== undefined) requireList(schemes, "schemes as a list", { option: "schemes" });
    const { rows, refused } = limitRows(all, {
      ...judged,
      ...(crestFactor !== undefined && { crestFactor }),
      ...(assume !== undefined && { assume }),
      ...(schemes !== undefined && { schemes }),
    });
    const numbered = laddersOf(rows, dialect);
    const { ladders } = numbered;
    const isLevel = parsedType(judged.from).reference !== 0;
    const verdict = joinedVerdict(`veladis_readings.${JUDGED}`, { bounds: "machine_bounds", ladders, isLevel });
    const types = [...new Set(rows.map(({ readings }) => readings))].map((one) => `'${one}'`);
    const listed =
      kept === undefined
        ? ladderRows(rows, numbered, dialect)
        : ladderQuery(dotted(kept, dialect), { ladders, types, isLevel, dialect });
    const bounds = machineBounds(listed, mostSteps(ladders), isLevel);
    const answers = Object.entries(verdict).map(([name, expression]) => `  ${expression} AS ${ANSWER}${name}`);
    return {
      rows: Object.freeze(rows),
      refused: Object.freeze(refused),
      limits: rowsAsTable(rows, dialect),
      bounds,
      verdict,
      query: [
        `SELECT veladis_readings.*,\n${answers.join(",\n")}`,
        `FROM (SELECT veladis_listed.*, ${sql} AS ${JUDGED} FROM ${table} AS veladis_listed) AS veladis_readings`,
        `LEFT JOIN (${bounds}) AS machine_bounds`,
        `ON machine_bounds.machine = veladis_readings.${identifier(machine, dialect)}`,
      ].join("\n"),
    };
  });
}
