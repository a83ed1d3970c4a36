import { limitsCell, type Provenance, provenances } from "../../core/index";
import { readingType, significant, union } from "../../reading/index";
import { ZERO_READING } from "../../severity/index";
import { requireNewTitles } from "../delimited/new-titles";
import type { UnitsRow } from "../delimited/table-form";
import { headingsOf } from "../delimited/units-row";
import { type FailFrom, isZoneReached } from "../options/fail-from";
import { assumedWords } from "../print/assumed-words";
import { type Background, backgroundTexts, rowBackground } from "./row-background";
import { type RowConverters, rowConverters } from "./row-converters";
import { type RowExplained, rowExplained } from "./row-explained";
import { type RowJudge, rowJudges, type SchemesAsked } from "./row-judge";
import { type RowFacts, rowReader } from "./row-reader";
import { judges, type TableSettings } from "./settings";

/** What rows of one zone, judge and reading type have in common: the cells behind the converted ones. */
export interface Tail {
  readonly cells: readonly string[];
  readonly zone: string | undefined;
  /** The worst zone that is possible. */
  readonly worst: string | undefined;
  /** The zones possible, in few words. */
  readonly headline: string | undefined;
  /** What is to be known of its rows alone, before what was assumed. */
  readonly remarks: readonly string[];
  /** Whether it is told by the exit code. */
  readonly isReached: boolean;
  /** How many rows it was given to since it was last counted. */
  rows: number;
}

/** What a tail has of its zone alone. */
type TailCells = Omit<Tail, "rows" | "remarks" | "isReached">;

/** The cells that are added to a row: converted readings, and what is behind them. */
export interface Answer {
  readonly values: readonly (number | string)[];
  readonly tail: Tail;
  /** The steps to them, where they are asked for. */
  readonly explained?: ReturnType<RowExplained>;
}

/** Counts of all rows answered so far. */
export interface RowCounts {
  /** How many rows are in each zone. */
  readonly zones: ReadonlyMap<string, number>;
  /** How many rows may be as bad as each zone. */
  readonly worst: ReadonlyMap<string, number>;
  /** How many rows have each headline. */
  readonly headlines: ReadonlyMap<string, number>;
  /** How many rows reach the zone of --fail-from. */
  readonly reached: number;
  /** How many rows rest on limits that are known so at best; the worst known first. */
  readonly known: ReadonlyMap<Provenance, number>;
  /** All that was assumed in any row, or set aside, with the number of rows; what most rows have first. */
  readonly assumed: readonly (readonly [text: string, rows: number])[];
}

/** Answers rows of a table. */
export interface RowAnswers {
  (cells: readonly string[]): Answer;
  /** Titles of the columns that are added. */
  readonly titles: readonly string[];
  counts(): RowCounts;
}

/** The titles of the columns that are added; refused when the table has one of them already. */
function titlesFor(header: readonly string[], settings: TableSettings): readonly string[] {
  const titles = [
    ...settings.targets.map((target) => readingType(target)),
    ...(judges(settings) ? ["zone", "worst", "scheme", "limits"] : []),
    "assumed",
  ];
  return requireNewTitles(header, titles);
}

/** What is compiled for rows that say the same but for the value. */
interface Compiled extends Pick<RowConverters, "each"> {
  readonly background: Background | undefined;
  readonly judge: RowJudge | undefined;
  readonly assumed: readonly string[];
  /** By the numbers of the zone and of the worst that is possible. */
  readonly tails: Map<number, Tail>;
}

function same(a: Omit<RowFacts, "value">, b: Omit<RowFacts, "value">): boolean {
  return a.type === b.type && a.machine === b.machine && a.hertz === b.hertz;
}

function addTo(counts: Map<string, number>, key: string | undefined, rows: number): void {
  if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + rows);
}

/** Counts to which the rows of what was compiled are added, each once. */
function rowCounts(): RowCounts & { add(compiled: Compiled): void } {
  const zones = new Map<string, number>();
  const worst = new Map<string, number>();
  const headlines = new Map<string, number>();
  const assumed = new Map<string, number>();
  const known = new Map<Provenance, number>();
  let reached = 0;
  return {
    ...{ zones, worst, headlines },
    get reached() {
      return reached;
    },
    get known() {
      const grades = Object.keys(provenances) as Provenance[];
      return new Map(grades.flatMap((one) => (known.has(one) ? [[one, known.get(one) as number] as const] : [])));
    },
    get assumed() {
      return [...assumed].sort(([, a], [, b]) => b - a);
    },
    add({ judge, assumed: names, tails }) {
      for (const tail of tails.values()) {
        if (tail.rows === 0) continue;
        for (const name of [...tail.remarks, ...names]) addTo(assumed, name, tail.rows);
        addTo(zones, tail.zone, tail.rows);
        addTo(worst, tail.worst, tail.rows);
        addTo(headlines, tail.headline, tail.rows);
        addTo(known, judge?.provenance, tail.rows);
        if (tail.isReached) reached += tail.rows;
        tail.rows = 0;
      }
    },
  };
}

/** The cells of a judge's zone, and of the worst that is possible. */
function judgedTail(
  { zones, schemes, provenance, confirmed }: RowJudge,
  at: number,
  upTo: number,
  background: Background | undefined,
): TailCells {
  const doubt = background === "too high" ? " (NOT RELIABLE)" : "";
  const [zone, worst] = [zones[at] as string, zones[upTo] as string];
  const range = upTo === zones.length - 1 ? `${zone} or worse` : `${zone} to ${worst}`;
  const cells = [zone, worst, schemes.join(" + "), limitsCell(provenance, confirmed)];
  return { cells, zone, worst, headline: `${at === upTo ? zone : range}${doubt}` };
}

const UNJUDGED: TailCells = { cells: [], zone: undefined, worst: undefined, headline: undefined };

/**
 * Compiles what is added to the rows of a table with this header.
 *
 * @param units - the row of units below the header
 * @throws {@link VeladisError} whatever can be told before the first row: columns, types, a scheme, a machine
 */
export function rowAnswers(
  header: readonly string[],
  settings: TableSettings,
  among: SchemesAsked,
  units?: UnitsRow,
): RowAnswers {
  const { digits, crestFactor } = settings;
  const titles = titlesFor(header, settings);
  const read = rowReader(header, settings, units);
  const conversionsFor = rowConverters(read, settings);
  const explain = settings.explain ? rowExplained(settings, among) : undefined;
  const judgeFor = judges(settings) ? rowJudges(settings, among) : undefined;
  const backgroundOf = rowBackground(header, headingsOf(header, units, settings.written), settings);
  const compile = (
    { each, assumed: byConversion }: RowConverters,
    judge: RowJudge | undefined,
    background: Background | undefined,
  ): Compiled => {
    const words = assumedWords({
      assumed: union(byConversion, judge?.assumed),
      assumedFacts: judge?.assumedFacts ?? [],
      crestFactor,
    });
    const not = (judge?.unjudged ?? []).map(({ as, because }) => `not judged: limits in ${as}: ${because}`);
    const aside = (judge?.setAside ?? []).map((text) => `set aside: ${text}`);
    const atRest = background === undefined ? [] : [backgroundTexts[background]];
    const assumed = [...atRest, ...(judge?.differences ?? []), ...words, ...new Set(not), ...aside];
    return { each, judge, background, assumed, tails: new Map() };
  };
  const byBackground = new Map<
    Background | undefined,
    WeakMap<RowConverters | RowJudge, WeakMap<RowConverters, Compiled>>
  >();
  const compiled = (facts: Omit<RowFacts, "value">, background: Background | undefined): Compiled => {
    const conversions = conversionsFor(facts);
    const judge = judgeFor?.(facts);
    const key = judge ?? conversions;
    const byJudge =
      byBackground.get(background) ?? new WeakMap<RowConverters | RowJudge, WeakMap<RowConverters, Compiled>>();
    const known = byJudge.get(key) ?? new WeakMap<RowConverters, Compiled>();
    const found = known.get(conversions) ?? compile(conversions, judge, background);
    known.set(conversions, found);
    byJudge.set(key, known);
    byBackground.set(background, byJudge);
    return found;
  };
  const reaches = ({ kind, zones }: RowJudge, at: number, upTo: number): boolean => {
    const isOpen = at !== upTo && upTo === zones.length - 1;
    return isZoneReached(settings.failFrom as FailFrom, { kind, worst: zones[upTo] as string, isOpen });
  };
  const tailOf = ({ judge, background, assumed, tails }: Compiled, value: number): Tail => {
    const at = judge === undefined ? 0 : judge.index(value);
    const upTo = judge === undefined || judge.complete ? at : judge.zones.indexOf(judge.worst(value));
    const isZero = judge !== undefined && value === 0;
    const key = (at * 64 + upTo) * 2 + Number(isZero);
    let tail = tails.get(key);
    if (tail === undefined) {
      const judged = judge === undefined ? UNJUDGED : judgedTail(judge, at, upTo, background);
      const remarks = isZero ? [ZERO_READING] : [];
      const isReached =
        judge !== undefined &&
        settings.failFrom !== undefined &&
        (background === "too high" || reaches(judge, at, upTo));
      tail = { ...judged, remarks, isReached, cells: [...judged.cells, [...remarks, ...assumed].join("; ")], rows: 0 };
      tails.set(key, tail);
    }
    return tail;
  };
  const counted = rowCounts();
  let facts = read.fixed;
  let last = facts === undefined || backgroundOf !== undefined ? undefined : compiled(facts, undefined);
  const answer = (cells: readonly string[]): Answer => {
    const said = read(cells);
    const { value, hertz } = said;
    const background = backgroundOf?.(cells, said);
    if (last === undefined || facts === undefined || background !== last.background || !same(facts, said)) {
      const next = compiled(said, background);
      if (last !== undefined && last !== next) counted.add(last);
      last = next;
      facts = said;
    }
    const { each } = last;
    const values: (number | string)[] = [];
    for (const one of each) {
      const converted = one(value, hertz);
      values.push(digits === undefined ? converted : significant(converted, digits));
    }
    const tail = tailOf(last, value);
    tail.rows++;
    return explain === undefined ? { values, tail } : { values, tail, explained: explain(said) };
  };
  return Object.assign(answer, {
    titles,
    counts(): RowCounts {
      if (last !== undefined) counted.add(last);
      return counted;
    },
  });
}
