import { parseNumeral, pointedWords, shown, VeladisError, visibleLines } from "../../core/index";
import type { Scheme } from "../../severity/index";
import {
  type MachinesToSqlOptions,
  machinesToSql,
  machineToSql,
  type NamedMachine,
  type RefusedMachine,
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

/** Options that only a plant's list has. */
const PLANT_ONLY = ["dates", "worksheet", "own"] as const;
const LIST_ONLY = ["table", "name-column", "machine-column", "limits-table", "out", "replace", ...PLANT_ONLY] as const;

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

/** The machines of a list, those that are refused with the reason, and what became of its rows. */
interface Listed {
  readonly machines: readonly ((NamedMachine | RefusedMachine) & { readonly line: number })[];
  /** Rows that name no machine. */
  readonly unnamed: number;
  /** The schemes to choose from, where the list was read with them. */
  readonly schemes?: readonly Scheme[] | undefined;
  /** Tells what became of the rows, when it is known which machines have no limits. */
  readonly tell: (answered: number, refused: number) => void;
}

/** The machines of a list in delimited text. */
async function machinesListed(values: SqlValues, file: string, io: Io): Promise<Listed> {
  requireNone(values, ["machine", "worst", ...PLANT_ONLY], "a list of machines");
  const { "name-column": name = "machine", "machine-column": words, json } = values;
  const list = await machineList(file, writtenAs(values), { name, words });
  for (const { line, error } of list.refused) io.err(failureText(error, json, { file, line }));
  return {
    machines: list.machines,
    unnamed: list.refused.length,
    tell: (answered, refused) => void io.err(accountText(list.account, { answered, refused }, json)),
  };
}

/** The machines of a plant's list, each with the table or the limits that its row names. */
async function plantListed(given: ParsedOptions<typeof sqlPage.options>, file: string, io: Io): Promise<Listed> {
  const { values } = given;
  const { scheme, json } = values;
  requireNone(values, ["machine", "machines", "machine-column", "worst", "file-units"], "a plant's list");
  if (scheme !== undefined && !scheme.endsWith(".json")) {
    throw new VeladisError("unknown-option", {
      expected:
        "a .json file with a table that rows of the list name by its id: the list says by which each machine is judged",
      received: `--scheme ${shown(scheme)}`,
      option: "scheme",
    });
  }
  const [{ listedPlant }, { plantMachines }] = await Promise.all([
    import("./listed-plant"),
    import("./plant-machines"),
  ]);
  const told = { ...values, scheme: scheme === undefined ? [] : [scheme] };
  const { plant, schemes } = await listedPlant({ ...given, values: told }, file, io);
  const { machines, unnamed, unheld } = plantMachines(plant, schemes);
  for (const { line, error } of unheld) io.err(failureText(error, json, { file, line }));
  const tell = (answered: number, refused: number): void => {
    if (!json) io.err(`machines: ${answered} with limits + ${refused} refused\n`);
  };
  return { machines, unnamed, tell, schemes };
}

/** The one scheme that is named, or those to choose from. */
async function schemesChosen({ confirmed, scheme, json }: SqlValues, io: Io): Promise<readonly Scheme[] | undefined> {
  const schemes = await confirmedOption(confirmed, io, json, [scheme]);
  return scheme === undefined ? schemes : [await namedScheme(scheme, schemes)];
}

/** The answer for a list and the file of its limits, what was refused told on standard error; with the number of those refused. */
async function judgedList(given: ParsedOptions<typeof sqlPage.options>, file: string, io: Io) {
  const { values } = given;
  const { table, to, out, "limits-table": limits, json, plant } = values;
  const name = values["name-column"] ?? (plant === undefined ? "machine" : "tag");
  const at = frequencyOf(values);
  const list = await (plant === undefined ? machinesListed(values, file, io) : plantListed(given, file, io));
  const chosen = plant === undefined ? await schemesChosen(values, io) : list.schemes;
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
  const refused = list.unnamed + unanswered.size;
  list.tell(list.machines.length - unanswered.size, refused);
  return { answer, refused, bytes: limitsFile?.bytes };
}

/** Prints conversions and verdicts as SQL. */
export async function printSql(given: ParsedOptions<typeof sqlPage.options>, io: Io): Promise<number> {
  const { values } = given;
  const { machines, plant, machine, scheme, to, json, out, replace } = values;
  const list = plant ?? machines;
  const told = (sql: string): string => (json ? jsonLine("sql", { sql }) : `${visibleLines(sql)}\n`);
  if (list === undefined) {
    const isVerdict = machine !== undefined || scheme !== undefined;
    if (!isVerdict && to === undefined) {
      throw new VeladisError("missing-option", {
        expected: "what is asked: --to to convert, --machine, --scheme, --machines or --plant to judge",
        received: "nothing",
      });
    }
    await io.out(told(isVerdict ? await judged(values, io) : converted(values)));
    return exitCodes.done;
  }
  const { answer, refused, bytes } = await judgedList(given, list, io);
  if (out !== undefined && bytes !== undefined) {
    const file = await wholeFile(out, replace, [list, scheme, ...values.confirmed]);
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
