import { shown, VeladisError } from "../../core/index";
import { readingType, significant, union } from "../../reading/index";
import type { Scheme } from "../../severity/index";
import { assumedWords } from "../print/assumed-words";
import { type RowConverters, rowConverters } from "./row-converters";
import { type RowJudge, rowJudges } from "./row-judge";
import { type RowFacts, rowReader } from "./row-reader";
import { judges, type TableSettings } from "./settings";

/** What rows of one zone, judge and reading type have in common: the cells behind the converted ones. */
export interface Tail {
  readonly cells: readonly string[];
  readonly zone: string | undefined;
  /** How many rows it was given to since it was last counted. */
  rows: number;
}

/** The cells that are added to a row: converted readings, and what is behind them. */
export interface Answer {
  readonly values: readonly (number | string)[];
  readonly tail: Tail;
}

/** Counts of all rows answered so far. */
export interface Tally {
  /** How many rows are in each zone. */
  readonly zones: ReadonlyMap<string, number>;
  /** How many rows rest on limits from memory. */
  readonly fromMemory: number;
  /** All that was assumed in any row. */
  readonly assumed: readonly string[];
}

/** Answers rows of a table. */
export interface RowAnswers {
  (cells: readonly string[]): Answer;
  /** Titles of the columns that are added. */
  readonly titles: readonly string[];
  tally(): Tally;
}

/** The titles of the columns that are added; refused when the table has one of them already. */
function titlesFor(header: readonly string[], settings: TableSettings): string[] {
  const titles = [
    ...settings.targets.map((target) => readingType(target)),
    ...(judges(settings) ? ["zone", "scheme", "limits"] : []),
    "assumed",
  ];
  const twice = titles.find((title, i) => header.includes(title) || titles.indexOf(title) !== i);
  if (twice === undefined) return titles;
  throw new VeladisError("syntax", {
    expected: "a table without the columns that are added, and each added once",
    received: `a second column ${shown(twice)}`,
  });
}

/** What is compiled for rows that say the same but for the value. */
interface Compiled extends Pick<RowConverters, "each"> {
  readonly judge: RowJudge | undefined;
  readonly assumed: readonly string[];
  readonly tails: Map<string | undefined, Tail>;
}

function same(a: Omit<RowFacts, "value">, b: Omit<RowFacts, "value">): boolean {
  return a.type === b.type && a.machine === b.machine && a.hertz === b.hertz;
}

/** A tally to which the rows of what was compiled are added, each once. */
function tallied(): Tally & { add(compiled: Compiled): void } {
  const zones = new Map<string, number>();
  const assumed = new Set<string>();
  let fromMemory = 0;
  return {
    zones,
    get fromMemory() {
      return fromMemory;
    },
    get assumed() {
      return [...assumed];
    },
    add({ judge, assumed: names, tails }) {
      for (const tail of tails.values()) {
        if (tail.rows === 0) continue;
        for (const name of names) assumed.add(name);
        if (tail.zone !== undefined) zones.set(tail.zone, (zones.get(tail.zone) ?? 0) + tail.rows);
        if (judge?.verified === false) fromMemory += tail.rows;
        tail.rows = 0;
      }
    },
  };
}

/**
 * Compiles what is added to the rows of a table with this header.
 *
 * @param scheme - the scheme that the options name; undefined to select one for each machine
 * @throws {@link VeladisError} whatever can be told before the first row: columns, types, a scheme, a machine
 */
export function rowAnswers(header: readonly string[], settings: TableSettings, scheme: Scheme | undefined): RowAnswers {
  const { digits, crestFactor } = settings;
  const titles = titlesFor(header, settings);
  const read = rowReader(header, settings);
  const conversionsFor = rowConverters(read, settings);
  const judgeFor = judges(settings) ? rowJudges(settings, scheme) : undefined;
  const compile = ({ each, assumed: byConversion }: RowConverters, judge: RowJudge | undefined): Compiled => {
    const assumed = assumedWords({
      assumed: union(byConversion, judge?.assumed),
      assumedFacts: judge?.assumedFacts ?? [],
      crestFactor,
    });
    return { each, judge, assumed, tails: new Map() };
  };
  const byJudge = new WeakMap<RowConverters | RowJudge, WeakMap<RowConverters, Compiled>>();
  const compiled = (facts: Omit<RowFacts, "value">): Compiled => {
    const conversions = conversionsFor(facts);
    const judge = judgeFor?.(facts);
    const key = judge ?? conversions;
    const known = byJudge.get(key) ?? new WeakMap<RowConverters, Compiled>();
    const found = known.get(conversions) ?? compile(conversions, judge);
    known.set(conversions, found);
    byJudge.set(key, known);
    return found;
  };
  const tailOf = ({ judge, assumed, tails }: Compiled, zone: string | undefined): Tail => {
    let tail = tails.get(zone);
    if (tail === undefined) {
      const judged = judge === undefined ? [] : [zone as string, judge.scheme, judge.verified ? "read" : "MEMORY"];
      tail = { cells: [...judged, assumed.join("; ")], zone, rows: 0 };
      tails.set(zone, tail);
    }
    return tail;
  };
  const counted = tallied();
  let facts = read.fixed;
  let last = facts === undefined ? undefined : compiled(facts);
  const answer = (cells: readonly string[]): Answer => {
    const said = read(cells);
    const { value, hertz } = said;
    if (last === undefined || facts === undefined || !same(facts, said)) {
      const next = compiled(said);
      if (last !== undefined && last !== next) counted.add(last);
      last = next;
      facts = said;
    }
    const { each, judge } = last;
    const values: (number | string)[] = [];
    for (const one of each) {
      const converted = one(value, hertz);
      values.push(digits === undefined ? converted : significant(converted, digits));
    }
    const tail = tailOf(last, judge?.zone(value));
    tail.rows++;
    return { values, tail };
  };
  return Object.assign(answer, {
    titles,
    tally(): Tally {
      if (last !== undefined) counted.add(last);
      return counted;
    },
  });
}
