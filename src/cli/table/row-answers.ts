import { readingType, significant } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import type { Scheme } from "../../severity/index";
import { rowConverters } from "./row-converters";
import { type RowJudge, rowJudges } from "./row-judge";
import { type RowFacts, rowReader } from "./row-reader";
import { judges, type TableSettings } from "./settings";

/** The cells that are added to a row. */
export type Answer = number | string;

/** Answers rows of a table, and remembers what was found. */
export interface RowAnswers {
  /** The cells to add to a row. */
  (cells: readonly string[]): readonly Answer[];
  /** Titles of the columns that are added. */
  readonly titles: readonly string[];
  /** How many rows are in each zone, in the order in which they came. */
  readonly zones: Map<string, number>;
  /** How many rows rest on limits from memory. */
  fromMemory(): number;
  /** All that was taken for granted in any row. */
  readonly granted: ReadonlySet<string>;
}

function grantedText(name: string, crestFactor: number | undefined): string {
  return name === "one-frequency" ? "one frequency" : name === "crest-factor" ? `crest factor ${crestFactor}` : name;
}

/** The titles of the columns that are added; refused when the table has one of them already. */
function titlesFor(header: readonly string[], settings: TableSettings): string[] {
  const titles = [
    ...settings.targets.map((target) => readingType(target)),
    ...(judges(settings) ? ["zone", "judged by", "limits"] : []),
    "taken for granted",
  ];
  const twice = titles.find((title, i) => header.includes(title) || titles.indexOf(title) !== i);
  if (twice === undefined) return titles;
  throw new VeladisError("syntax", {
    expected: "a table without the columns that are added, and each added once",
    received: `a second column ${JSON.stringify(twice)}`,
  });
}

/**
 * Compiles what is added to the rows of a table with this header.
 *
 * @param scheme - the table of limits that the options name; undefined to select one for each machine
 * @throws {@link VeladisError} whatever can be told before the first row: columns, types, a scheme, a machine
 */
export function rowAnswers(header: readonly string[], settings: TableSettings, scheme: Scheme | undefined): RowAnswers {
  const { digits, crestFactor } = settings;
  const titles = titlesFor(header, settings);
  const read = rowReader(header, settings);
  const conversionsFor = rowConverters(read, settings);
  const judgeFor = judges(settings) ? rowJudges(settings, scheme) : undefined;
  const zones = new Map<string, number>();
  const granted = new Set<string>();
  let memory = 0;
  const compiled = (facts: Omit<RowFacts, "value">) => {
    const { each, assumed } = conversionsFor(facts);
    const judge: RowJudge | undefined = judgeFor?.(facts);
    const names = [...new Set([...assumed, ...(judge?.assumed ?? [])])].map((name) => grantedText(name, crestFactor));
    const all = [...names, ...(judge?.assumedFacts ?? [])];
    const known = judge === undefined ? [] : [judge.by, judge.verified ? "read" : "MEMORY"];
    return { each, judge, all, tail: [...known, all.join("; ")] };
  };
  let { type, hertz, machine } = read.fixed ?? { type: "", hertz: undefined, machine: "" };
  let last = read.fixed === undefined ? undefined : compiled(read.fixed);
  const answer = (cells: readonly string[]): readonly Answer[] => {
    const facts = read(cells);
    if (last === undefined || facts.type !== type || facts.machine !== machine || facts.hertz !== hertz) {
      last = undefined;
      const next = compiled(facts);
      ({ type, hertz, machine } = facts);
      last = next;
    }
    const { each, judge, tail, all } = last;
    const added: Answer[] = [];
    for (const one of each) {
      const value = one(facts.value, facts.hertz);
      added.push(digits === undefined ? value : significant(value, digits));
    }
    if (judge !== undefined) {
      const zone = judge.zone(facts.value);
      added.push(zone);
      zones.set(zone, (zones.get(zone) ?? 0) + 1);
      if (!judge.verified) memory++;
    }
    for (const one of all) granted.add(one);
    for (const one of tail) added.push(one);
    return added;
  };
  return Object.assign(answer, { titles, zones, granted, fromMemory: () => memory });
}
