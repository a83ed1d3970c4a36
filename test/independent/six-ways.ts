import type { DuckDBListValue } from "@duckdb/node-api";
import { assumedText, type ConvertOptions, convertAmplitude, converter, VeladisError } from "veladis";
import { evaluateLine } from "veladis/mathjs";
import {
  type Classifier,
  classifier,
  classify,
  type Judgement,
  judge,
  type MachineClassifier,
  machineClassifier,
  type SchemeId,
  type Verdict,
} from "veladis/severity";
import { machineToSql, schemeToSql, toSql } from "veladis/sql";
import { conversionAssumes } from "../../src/amplitude/index";
import { veladis } from "../cli/in-process";
import { answersTo } from "../sql/duckdb";

/** A reading of a machine, and the type that it is converted to; by one scheme, or by those that the machine admits. */
export interface Asked {
  readonly value: string;
  readonly as: string;
  readonly hertz: number | undefined;
  readonly machine: string;
  readonly scheme: string | undefined;
  readonly to: string;
}

/** What each way says of it; a refusal by its code alone. */
export type Said =
  | { readonly refused: string }
  | {
      readonly zone: string;
      readonly worst: string;
      readonly number: number;
      readonly schemes: readonly string[];
      /** What it rests on: assumed, set aside, not judged; each part of a text that semicolons divide, in order. */
      readonly rests: readonly string[];
    };

interface Words {
  readonly assumed: Parameters<typeof assumedText>[0]["assumed"];
  readonly assumedFacts: readonly string[];
  readonly setAside: readonly string[];
  readonly unjudged: readonly { readonly as: string; readonly because: string }[];
}

/** A place that both come to is known of one reading, not of all that a compiled judge will be asked for. */
const alike = (text: string): string =>
  text.replace(/^(place: not given)[;,] (housing and shaft|and the worse).*/, "$1");
const parts = (texts: readonly string[]): string[] =>
  [...new Set(texts.map(alike).flatMap((text) => text.split("; ")))].sort();
const named = (assumed: Words["assumed"] = []): string[] =>
  assumed.map((one) => assumedText({ assumed: [one], history: [] }).slice(1, -1));
const notJudged = ({ unjudged }: Pick<Words, "unjudged">): string[] => [
  ...new Set(unjudged.map(({ as, because }) => `${as}: ${because}`)),
];
const facts = ({ assumedFacts, setAside }: Words): string[] => [
  ...assumedFacts,
  ...setAside.map((text) => `set aside: ${text}`),
];
/** What a judgement and a conversion rest on. */
const restsOf = (judged: Words, conversion: Words["assumed"]): string[] =>
  parts([
    ...named(judged.assumed),
    ...named(conversion),
    ...facts(judged),
    ...notJudged(judged).map((text) => `not judged: limits in ${text}`),
  ]);

const written = ({ value, as, hertz }: Asked): string =>
  `${value} ${as}${hertz === undefined ? "" : ` at ${hertz} Hz`}`;
const told = ({ hertz }: Asked) => (hertz === undefined ? {} : { at: { hertz } });

function schemesOf(answer: Judgement | Verdict | Classifier | MachineClassifier): readonly string[] {
  if ("judgements" in answer) return answer.judgements.map(({ scheme }) => scheme).sort();
  return "schemes" in answer ? [...answer.schemes].sort() : [answer.scheme];
}

async function orRefused(ask: () => Said | Promise<Said>): Promise<Said> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof VeladisError) return { refused: error.code };
    throw error;
  }
}

/** `judge` or `classify`, and `convertAmplitude`. */
export const byLibrary = (asked: Asked): Promise<Said> =>
  orRefused(() => {
    const { scheme, machine, to } = asked;
    const reading = written(asked);
    const answer =
      scheme === undefined
        ? judge(reading, machine)
        : classify(reading, { scheme: scheme as SchemeId, machine, assume: "lowest limits" });
    const { value: number, assumed } = convertAmplitude(reading, to as "mm/s rms");
    const { zone, worst } = answer;
    return { zone, worst, number, schemes: schemesOf(answer), rests: restsOf(answer, assumed) };
  });

/** True where the schemes that the machine admits name their zones alike; else no compiled judge holds them all. */
export function hasOneLadder({ machine, scheme, ...asked }: Asked): boolean {
  if (scheme !== undefined) return true;
  const { judgements } = judge(written({ machine, scheme, ...asked }), machine);
  return new Set(judgements.map(({ zones }) => zones.join())).size === 1;
}

const conversionOf = (asked: Asked) =>
  converter(asked.as as "mm/s rms", asked.to as "mm/s rms", told(asked) as ConvertOptions);
function classifierOf(asked: Asked): Classifier | MachineClassifier {
  const { scheme, machine, as } = asked;
  if (scheme === undefined) return machineClassifier(machine, as, told(asked));
  return classifier(scheme as SchemeId, machine, as, { ...told(asked), assume: "lowest limits" });
}
const compiledRests = (asked: Asked): string[] => restsOf(classifierOf(asked), conversionAssumes(asked.as, asked.to));

/** `classifier` or `machineClassifier`, and `converter`, number by number. */
export const byCompiled = (asked: Asked): Promise<Said> =>
  orRefused(() => {
    const one = classifierOf(asked);
    const value = Number(asked.value);
    const number = conversionOf(asked)(value);
    return { zone: one(value), worst: one.worst(value), number, schemes: schemesOf(one), rests: compiledRests(asked) };
  });

/** The same over arrays; the worst zone has no array. */
export const byArray = (asked: Asked): Promise<Said> =>
  orRefused(() => {
    const one = classifierOf(asked);
    const values = Float64Array.of(0, Number(asked.value));
    const zone = one.zones[one.array(values)[1] as number] as string;
    const worst = one.worst(values[1] as number);
    const number = conversionOf(asked).array(values)[1] as number;
    return { zone, worst, number, schemes: schemesOf(one), rests: compiledRests(asked) };
  });

/** The calculator: what its answer holds, once all of it has been found in its text. */
export const byCalculator = (asked: Asked): Promise<Said> =>
  orRefused(async () => {
    const { machine, scheme, to } = asked;
    const third = scheme === undefined ? "" : `, "${scheme}"`;
    const { value, text } = await evaluateLine(`judge(${written(asked)}, "${machine}"${third})`);
    const data = (value as { data: Verdict }).data;
    const { converted } = await evaluateLine(`${written(asked)} to ${to}`);
    const told = [
      ...data.assumedFacts.map((fact) => `  assumed: ${fact}`),
      ...data.setAside.map((fact) => `  set aside: ${fact}`),
      ...notJudged(data).map((one) => `  not judged: ${one}`),
      ...named(data.assumed),
      data.headline,
    ];
    const lost = told.filter((part) => !text.includes(part));
    if (lost.length > 0) throw new Error(`not in the calculator's text: ${lost.join(" | ")}\n${text}`);
    const [{ value: number, assumed } = { value: Number.NaN, assumed: [] }] = converted;
    const { zone, worst } = data;
    return { zone, worst, number, schemes: schemesOf(data), rests: restsOf(data, assumed) };
  });

/** The texts of a remark; the words for what a conversion assumes are one part. */
function remarkParts(sql: string): string[] {
  const remark = sql.slice(sql.lastIndexOf("/*") + 3, -3);
  return remark.split("; ").flatMap((part) => {
    const [, words] = /^assumed: (.*)$/.exec(part) ?? [];
    return words === undefined ? [part] : words.split(", ");
  });
}

/** What a remark says besides: the schemes, which zone it is, how far the limits are known. */
const titles =
  /^(ISO|IEC|ANSI|API|NEMA|Lloyd|Compressor|the worst|the zone|worse is|limits (?:from memory|of common practice|read on|quoted in)|not printed on Table 9\)|[^:]+ to [^:]+$)/i;

/** The expressions of SQL, run by DuckDB; what they rest on is read from their remarks. */
export const bySql = (asked: Asked): Promise<Said> =>
  orRefused(async () => {
    const { machine, scheme, as, to, value } = asked;
    const sql = (answer: "zone" | "worst"): string => {
      const options = { column: "x", from: as, answer, ...told(asked) } as const;
      if (scheme === undefined) return machineToSql(machine, options);
      return schemeToSql(scheme as SchemeId, machine, { ...options, assume: "lowest limits" });
    };
    const conversion = toSql(as as "mm/s rms", to as "mm/s rms", { column: "x", ...told(asked) });
    const all = `[${sql("zone")}, ${sql("worst")}, (${conversion})::VARCHAR]`;
    const [list] = await answersTo(all, [Number(value)]);
    const [zone, worst, number] = (list as DuckDBListValue).items;
    const rests = restsOf(classifierOf(asked), conversionAssumes(as, to));
    const said = new Set([...remarkParts(sql("zone")), ...remarkParts(conversion)].map(alike));
    const more = [...said].filter((part) => !rests.includes(part) && !titles.test(part));
    return {
      zone: zone as string,
      worst: worst as string,
      number: Number(number),
      schemes: schemesOf(classifierOf(asked)),
      rests: [...rests.filter((part) => said.has(part)), ...more],
    };
  });

/** A line of JSON of `table`: a row, a row refused, or the summary. */
interface TableLine extends Readonly<Record<string, unknown>> {
  readonly cells?: { readonly row: string };
  readonly error?: { readonly line: number; readonly code: string };
}

const rowSaid = (line: TableLine, to: string): Said => ({
  zone: String(line.zone),
  worst: String(line.worst),
  number: Number(line[to]),
  schemes: String(line.scheme).split(" + ").sort(),
  rests: parts([...new Set(String(line.assumed).split("; ").filter(Boolean))]),
});

/** The `table` command: all that are judged by one scheme and converted to one type in one run. */
export async function byTable(all: readonly Asked[]): Promise<Said[]> {
  const said: Said[] = all.map(() => ({ refused: "no row" }));
  const groups = new Map<string, number[]>();
  for (const [i, { scheme = "", to }] of all.entries()) {
    const key = `${scheme}\t${to}`;
    groups.set(key, [...(groups.get(key) ?? []), i]);
  }
  for (const [key, members] of groups) {
    const [scheme = "", to = ""] = key.split("\t");
    const rows = members.map((i) => `${i};${written(all[i] as Asked)};"${(all[i] as Asked).machine}"`);
    const args = ["table", "--column", "reading", "--machine-column", "machine", "--to", to, "--json", "--keep-going"];
    const input = `${["row;reading;machine", ...rows].join("\n")}\n`;
    const { out, err } = await veladis([...args, ...(scheme === "" ? [] : ["--scheme", scheme])], input);
    const lines = `${out}${err}`.split("\n").filter((line) => line.startsWith("{"));
    for (const line of lines.map((text) => JSON.parse(text) as TableLine)) {
      if (line.error !== undefined) said[members[line.error.line - 2] as number] = { refused: line.error.code };
      else if (line.cells !== undefined) said[Number(line.cells.row)] = rowSaid(line, to);
    }
  }
  return said;
}
