import { type ConvertOptions, conversionAssumes, converter } from "../amplitude/index";
import { inPlace, requirePositive, requireText, withParameters } from "../core/index";
import { type Frequency, frequency } from "../frequency/index";
import { assumedText, parsedType, type ReadingType, readingType, typeOf } from "../reading/index";
import { checkedDialect, type SqlDialect } from "./dialects";
import { type KeyOf, operand, type SqlOperand } from "./identifier";
import { numberLiteral, remark } from "./literal";

/** A frequency that differs from row to row. */
export type SqlFrequency = SqlOperand & {
  /** What the numbers are in: `"Hz"`, `"r/min"`. */
  readonly unit: string;
  /** The order of the running speed, where the numbers are one and the vibration is not at once per turn. */
  readonly order?: number;
};

/** What {@link toSql} is told besides the two types. */
export type ToSqlOptions = SqlOperand & {
  /** The frequency of the vibration, the same for all rows or from a column; needed when the quantity changes. */
  readonly at?: Frequency | SqlFrequency;
  readonly crestFactor?: number;
  readonly dialect?: SqlDialect;
};

const whereKeys: Readonly<Record<KeyOf<SqlOperand>, true>> = /* @__PURE__ */ Object.freeze({
  column: true,
  expression: true,
});

const keys: Readonly<Record<KeyOf<ToSqlOptions>, true>> = /* @__PURE__ */ Object.freeze({
  column: true,
  expression: true,
  at: true,
  crestFactor: true,
  dialect: true,
});

const MAX_VALUE = 1.7976931348623157e308; // Number.MAX_VALUE, written out so that a bundle can drop it
/** Products stay this share below the greatest number, which a dozen roundings cannot make up for. */
const BELOW = 0.9999999999999964;
/** Products whose logarithm is taken stay above this, since that of zero stops a query. */
const LEAST_PRODUCT = 1e-300;
/** A frequency of a row beyond these is none of a vibration, and its powers could leave the range of numbers. */
const LEAST_HERTZ = 1e-9;
const MOST_HERTZ = 1e9;
/** The same for a level in decibels, and what it is of its reference. */
const MOST_DECIBELS = 5000;
const MOST_RATIO = 1e250;

/** A reading type as a conversion in SQL needs it: the linear type, and the reference of a level. */
interface Linear {
  readonly type: string;
  readonly order: number;
  readonly reference: number | undefined;
}

function linear(type: string): Linear {
  const { unit, detector, order, reference } = parsedType(type);
  return { type: typeOf(unit, detector).type, order, reference: reference === 0 ? undefined : reference };
}

const converterText = converter as unknown as (
  from: string,
  to: string,
  options?: ConvertOptions,
) => { readonly factor: number };

/** True for a frequency that differs from row to row. */
export function isColumn(at: Frequency | SqlFrequency): at is SqlFrequency {
  return typeof at === "object" && at !== null && !("hertz" in at);
}

/** The frequency of a row in hertz, as SQL. */
function hertzOf({ unit, order, ...where }: SqlFrequency, dialect: SqlDialect): { sql: string; valid: string } {
  requireText(unit, 'the unit of the frequencies in a column, such as "r/min"', { option: "unit" });
  const turns =
    order === undefined
      ? ""
      : `${requirePositive(order, "an order of the shaft speed above zero", { option: "order" })}x `;
  const { hertz } = frequency(`${turns}1 ${unit}`);
  const { value: number, isNumber } = operand(where as SqlOperand, dialect, whereKeys);
  return {
    sql: hertz === 1 ? number : `(${number} * ${numberLiteral(hertz)})`,
    valid: `${isNumber}${number} BETWEEN ${numberLiteral(LEAST_HERTZ / hertz)} AND ${numberLiteral(MOST_HERTZ / hertz)}`,
  };
}

/** What a linear value is multiplied with: as SQL, the least and greatest it can be, and the condition on the row for it. */
interface Multiplier {
  readonly sql: string;
  readonly least: number;
  readonly greatest: number;
  readonly valid: readonly string[];
}

function multiplier(before: string, after: string, steps: number, options: ToSqlOptions): Multiplier {
  const { at, crestFactor, dialect } = options;
  const crest = crestFactor === undefined ? {} : { crestFactor };
  const byRow = at !== undefined && isColumn(at) ? at : undefined;
  const fixed = byRow === undefined ? (at as Frequency | undefined) : { hertz: 1 };
  const { factor } = converterText(before, after, { ...crest, ...(fixed !== undefined && { at: fixed }) });
  if (byRow === undefined || steps === 0) {
    return { sql: factor === 1 ? "" : ` * ${numberLiteral(factor)}`, least: factor, greatest: factor, valid: [] };
  }
  const { sql: hertz, valid } = inPlace({ option: "at" }, () => hertzOf(byRow, checkedDialect(dialect)));
  const once = Math.abs(steps) === 1;
  const most = MOST_HERTZ ** Math.abs(steps);
  return {
    sql: ` * (${numberLiteral(factor)} ${steps > 0 ? "*" : "/"} ${once ? hertz : `(${hertz} * ${hertz})`})`,
    least: factor / most,
    greatest: factor * most,
    valid: [valid],
  };
}

/** The condition under which a value has an answer that a number can hold, and a level one that a vibration can have. */
function condition(value: string, source: Linear, target: Linear, { least, greatest }: Multiplier): string {
  const { reference } = target;
  const lowest = reference === undefined ? LEAST_PRODUCT : Math.max(LEAST_PRODUCT, reference / MOST_RATIO);
  const highest = reference === undefined ? MAX_VALUE : Math.min(MAX_VALUE, reference * MOST_RATIO);
  const from = lowest / least;
  const upTo = greatest <= 1 ? highest : (highest / greatest) * BELOW;
  if (source.reference !== undefined) {
    const decibels = (size: number): number => 20 * Math.log10(size / (source.reference as number));
    const [low, high] = [Math.max(-MOST_DECIBELS, decibels(from)), Math.min(MOST_DECIBELS, decibels(upTo))];
    return `${value} BETWEEN ${numberLiteral(low)} AND ${numberLiteral(high)}`;
  }
  const low = reference === undefined ? 0 : Math.max(LEAST_PRODUCT, from);
  return `${value} >= ${numberLiteral(low)} AND ${value} <= ${numberLiteral(upTo)}`;
}

/** What a conversion assumes, in words; nothing where it assumes nothing. */
export function assumptionText(
  before: string,
  after: string,
  { crestFactor }: Pick<ToSqlOptions, "crestFactor">,
): string {
  const assumed = conversionAssumes(before, after, crestFactor);
  const words = assumedText({ assumed, ...(crestFactor !== undefined && { crestFactor }) }).slice(1, -1);
  return words && `; assumed: ${words}`;
}

function atText(at: ToSqlOptions["at"]): string {
  if (at === undefined) return "";
  if (isColumn(at)) return ` at ${at.order === undefined ? "" : `${at.order}x `}the frequency of the row`;
  return ` at ${typeof at === "string" ? at : `${Number(at.hertz.toPrecision(12))} Hz`}`;
}

/**
 * A conversion as an expression of plain SQL, for an engine that holds the data, such as DuckDB, PostgreSQL or SQLite.
 *
 * The expression multiplies by the same factor as `converter`, and is NULL where the value is NULL, negative, infinite
 * or NaN, a level is beyond 5000 dB, or the frequency of the row is not from 1e-9 to 1e9 Hz: never zero. In SQLite it is
 * NULL for texts too, those of digits among them; DuckDB and PostgreSQL refuse a column of texts. Names are
 * quoted, so that a column may be called anything; an `expression` is taken as it is and must be your own. A remark
 * behind it tells the types and what was assumed. Levels use `POWER` and `LOG10`.
 *
 * @param from - what the values are written in, e.g. `"in/s pk"`
 * @param to - what they shall be written in
 * @param options - `column` or `expression`; `at`, a frequency or `{ column, unit }`; `crestFactor`; `dialect`
 * @returns the expression, to stand where a value may stand
 * @throws {@link VeladisError} `missing-option` without a column, `syntax` for a name that cannot be, and as
 *   `converter`
 * @example
 * ```ts
 * import { toSql } from "veladis/sql";
 *
 * toSql("in/s pk", "mm/s pk", { column: "reading" });
 * // => 'CASE WHEN +"reading" >= 0e0 AND +"reading" <= 7.077532027016967e306 THEN +"reading" * 2.54e1 END /* in/s pk to mm/s pk *\/'
 * toSql("g pk", "mm/s rms", { column: "reading" }); // throws missing-frequency
 * ```
 */
export function toSql(from: string, to: string, options: ToSqlOptions): string {
  return withParameters({ from, to, options }, () => {
    const dialect = checkedDialect(options?.dialect);
    const { value, isNumber } = operand(options, dialect, keys);
    const [before, after] = Object.entries({ from, to }).map(([parameter, type]) =>
      inPlace({ parameter }, () => readingType(type)),
    ) as [ReadingType, ReadingType];
    const [source, target] = [linear(before), linear(after)];
    const factor = multiplier(source.type, target.type, target.order - source.order, { ...options, dialect });
    const conditions = [condition(value, source, target, factor), ...factor.valid];
    const amplitude =
      source.reference === undefined ? value : `${numberLiteral(source.reference)} * POWER(1e1, ${value} / 2e1)`;
    const product = `${amplitude}${factor.sql}`;
    const byLevel = `2e1 * LOG10(${product} / ${numberLiteral(target.reference ?? 1)})`;
    const result = target.reference === undefined ? product : byLevel;
    const told = `${before} to ${after}${atText(options.at)}${assumptionText(source.type, target.type, options)}`;
    return `CASE WHEN ${isNumber}${conditions.join(" AND ")} THEN ${result} END ${remark(told)}`;
  });
}
