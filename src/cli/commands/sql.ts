import { parseNumeral, pointedWords, VeladisError, visibleLines } from "../../core/index";
import {
  type MachinesToSqlOptions,
  machinesToSql,
  machineToSql,
  type SqlDialect,
  type SqlFrequency,
  schemeToSql,
  toSql,
} from "../../sql/index";
import { accountText } from "../delimited/account-text";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { machineList } from "../input/machine-list";
import { confirmedOption } from "../options/confirmed-option";
import { namedScheme } from "../options/named-scheme";
import type { ParsedOptions, Values } from "../options/option-row";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";
import { jsonLine } from "../print/json-line";
import { limitFile } from "../print/limit-file";
import { wholeFile } from "../table/whole-file";
import type { sqlPage } from "./sql-page";

type SqlValues = Values<typeof sqlPage.options>;

/** The value of an option that is needed here. */
function needed(value: string | undefined, name: string, why: string): string {
  if (value !== undefined) return value;
  throw new VeladisError("missing-option", { expected: `--${name}, ${why}`, received: "nothing", option: name });
}

/** Refuses options that have no meaning beside what is asked. */
function requireNone(values: SqlValues, names: readonly (keyof SqlValues)[], asked: string): void {
  const given = names.find((name) => {
    const value = values[name];
    return Array.isArray(value) ? value.length > 0 : value !== undefined && value !== false;
  });
  if (given === undefined) return;
  throw new VeladisError("unknown-option", { expected: `options of ${asked}`, received: `--${given}`, option: given });
}

function frequencyOf({ at, "speed-column": column, "speed-unit": unit }: SqlValues): string | SqlFrequency | undefined {
  if (column === undefined && unit === undefined) return at;
  if (column === undefined || unit === undefined || at !== undefined) {
    throw new VeladisError("missing-option", {
      expected: "--speed-column and --speed-unit together, without --at",
      received: at !== undefined ? "--at too" : column === undefined ? "--speed-unit alone" : "--speed-column alone",
    });
  }
  return { column, unit };
}

/** What all expressions are told. */
function common(values: SqlValues) {
  const { "crest-factor": crest, dialect, strict } = values;
  return {
    column: needed(values.column, "column", "the column of the readings in the database"),
    from: needed(values.from, "from", 'what the readings are written in, such as "mm/s rms"'),
    dialect: dialect as SqlDialect,
    ...(crest !== undefined && { crestFactor: parseNumeral(crest, "a crest factor") }),
    ...(strict && { assume: "nothing" as const }),
  };
}

const LIST_ONLY = ["table", "machine-column", "limits-table", "out", "replace"] as const;

function converted(values: SqlValues): string {
  requireNone(values, [...LIST_ONLY, "machine", "scheme", "worst", "confirmed", "strict"], "a conversion");
  const { from, assume: _, ...told } = { assume: undefined, ...common(values) };
  const at = frequencyOf(values);
  return toSql(from, values.to as string, { ...told, ...(at !== undefined && { at }) } as Parameters<typeof toSql>[2]);
}

async function judged(values: SqlValues, io: Io): Promise<string> {
  requireNone(values, [...LIST_ONLY, "to", "speed-column", "speed-unit"], "one machine");
  const { scheme, machine = "", at, worst } = values;
  const words = pointedWords(machine, values["decimal-comma"]);
  const schemes = await confirmedOption(values.confirmed, io, values.json, [scheme]);
  const told = {
    ...common(values),
    ...(at !== undefined && { at }),
    ...(worst && { answer: "worst" as const }),
  } as Parameters<typeof machineToSql>[1];
  if (scheme !== undefined) return schemeToSql(await namedScheme(scheme, schemes), words, told);
  return machineToSql(words, { ...told, ...(schemes !== undefined && { schemes }) });
}

/** The answer for a list and the file of its limits, what was refused told on standard error; with the number of those refused. */
async function judgedList(values: SqlValues, file: string, io: Io) {
  requireNone(values, ["machine", "worst"], "a list of machines");
  const { table, to, out, "name-column": name, "machine-column": words, "limits-table": limits, scheme, json } = values;
  const at = frequencyOf(values);
  const schemes = await confirmedOption(values.confirmed, io, json, [scheme]);
  const chosen = scheme === undefined ? schemes : [await namedScheme(scheme, schemes)];
  const parts = (text: string): string[] => text.split(".");
  const told = {
    ...common(values),
    table: parts(needed(table, "table", "the table of the readings in the database")),
    machine: name,
    ...(at !== undefined && { at }),
    ...(to !== undefined && { as: to }),
    ...(limits !== undefined && { limits: parts(limits) }),
    ...(chosen !== undefined && { schemes: chosen }),
  } as MachinesToSqlOptions;
  const list = await machineList(file, writtenAs(values), { name, words });
  for (const { line, error } of list.refused) io.err(failureText(error, json, { file, line }));
  const answer = machinesToSql(
    list.machines.map(({ line: _, ...one }) => one),
    told,
  );
  const limitsFile = out === undefined ? undefined : await limitFile(out, answer);
  const lines = new Map(list.machines.map(({ name: called, line }) => [called, line]));
  const unanswered = new Set<string>();
  for (const { name: called, error } of [...answer.refused, ...(limitsFile?.leftOut ?? [])]) {
    const line = lines.get(called);
    io.err(failureText(error, json, { file, ...(line !== undefined && { line }) }));
    unanswered.add(called);
  }
  const refused = list.refused.length + unanswered.size;
  io.err(accountText(list.account, { answered: list.machines.length - unanswered.size, refused }, json));
  return { answer, refused, bytes: limitsFile?.bytes };
}

/** Prints conversions and verdicts as SQL. */
export async function printSql({ values }: ParsedOptions<typeof sqlPage.options>, io: Io): Promise<number> {
  const { machines, machine, scheme, to, json, out, replace } = values;
  const told = (sql: string): string => (json ? jsonLine("sql", { sql }) : `${visibleLines(sql)}\n`);
  if (machines === undefined) {
    const isVerdict = machine !== undefined || scheme !== undefined;
    if (!isVerdict && to === undefined) {
      throw new VeladisError("missing-option", {
        expected: "what is asked: --to to convert, --machine, --scheme or --machines to judge",
        received: "nothing",
      });
    }
    await io.out(told(isVerdict ? await judged(values, io) : converted(values)));
    return exitCodes.done;
  }
  const { answer, refused, bytes } = await judgedList(values, machines, io);
  if (out !== undefined && bytes !== undefined) {
    const file = await wholeFile(out, replace, [machines, scheme, ...values.confirmed]);
    try {
      await file.write(bytes);
      await file.commit();
    } catch (error) {
      await file.discard();
      throw error;
    }
  }
  const rows = json ? answer.rows.map((row) => jsonLine("limit row", row)) : [];
  await io.out([...rows, told(answer.query)].join(""));
  return refused > 0 && !values["keep-going"] ? exitCodes.refused : exitCodes.done;
}
