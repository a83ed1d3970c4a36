import { numeral, VeladisError } from "../../core/index";
import type { Io } from "../input/io";
import { parsedArguments } from "../options/arguments";
import { targetsOf } from "../options/option-values";
import { judges, type TableSettings } from "../table/settings";
import type { Command } from "./command";
import { digitsOf } from "./convert";
import { help } from "./table-help";

const options = {
  column: { type: "string" },
  "decimal-comma": { type: "boolean", default: false },
  from: { type: "string" },
  "from-column": { type: "string" },
  detector: { type: "string" },
  "detector-column": { type: "string" },
  at: { type: "string" },
  "at-column": { type: "string" },
  "at-unit": { type: "string" },
  "speed-column": { type: "string" },
  "speed-unit": { type: "string" },
  "crest-factor": { type: "string" },
  to: { type: "string" },
  machine: { type: "string", default: "" },
  "machine-column": { type: "string", multiple: true },
  scheme: { type: "string" },
  strict: { type: "boolean", default: false },
  digits: { type: "string" },
  out: { type: "string" },
  refused: { type: "string" },
  replace: { type: "boolean", default: false },
  json: { type: "boolean", default: false },
  "keep-going": { type: "boolean", default: false },
} as const;

function settingsOf(args: readonly string[]): TableSettings {
  const { values, positionals } = parsedArguments(args, options);
  if (values.column === undefined || positionals.length > 1) {
    throw new VeladisError("missing-fact", {
      expected: "one file, and the column of the readings, as in veladis table readings.csv --column value",
      received: positionals.length > 1 ? `${positionals.length} files` : "no column",
    });
  }
  const crest = values["crest-factor"];
  const settings: TableSettings = {
    file: positionals[0],
    column: values.column,
    decimalComma: values["decimal-comma"],
    from: { column: values["from-column"], fixed: values.from },
    detector: { column: values["detector-column"], fixed: values.detector },
    at: { column: values["at-column"], fixed: values.at },
    atUnit: values["at-unit"],
    speedColumn: values["speed-column"],
    speedUnit: values["speed-unit"],
    crestFactor: crest === undefined ? undefined : numeral(crest, "a crest factor"),
    targets: targetsOf(values.to),
    machine: values.machine,
    machineColumns: values["machine-column"] ?? [],
    scheme: values.scheme,
    strict: values.strict,
    out: values.out,
    refused: values.refused,
    replace: values.replace,
    digits: values.digits === undefined ? undefined : digitsOf(values.digits),
    json: values.json,
    keepGoing: values["keep-going"],
  };
  if (settings.targets.length > 0 || judges(settings)) return settings;
  throw new VeladisError("missing-fact", {
    expected: 'what to add: --to "mm/s rms", or --machine "group 2 rigid" to judge',
    received: "nothing",
  });
}

async function run(args: readonly string[], io: Io): Promise<number> {
  const settings = settingsOf(args);
  return (await import("../table/run-table")).runTable(io, settings);
}

/** Adds converted columns and zones to every row of a table. */
export const tableCommand: Command = { help, run };
