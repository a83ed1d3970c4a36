import { parseNumeral, VeladisError } from "../../core/index";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { namedFile } from "../input/open-file";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf, requireOption, targetsOf } from "../options/option-values";
import { signalSource } from "../options/signal-options";
import { judges, type TableSettings } from "../table/settings";
import type { tablePage } from "./table-page";

function settingsOf(given: ParsedOptions<typeof tablePage.options>): TableSettings {
  const { values, texts } = given;
  const crest = values["crest-factor"];
  const settings: TableSettings = {
    file: namedFile(texts[0]),
    column: requireOption(given, "column"),
    written: writtenAs(values),
    from: { column: values["from-column"], fixed: values.from },
    detector: { column: values["detector-column"], fixed: values.detector },
    at: { column: values["at-column"], fixed: values.at },
    atUnit: values["at-unit"],
    speedColumn: values["speed-column"],
    speedUnit: values["speed-unit"],
    background: { column: values["background-column"], fixed: values.background },
    crestFactor: crest === undefined ? undefined : parseNumeral(crest, "a crest factor"),
    source: signalSource(values),
    targets: targetsOf(values.to),
    machine: values.machine,
    machineColumns: values["machine-column"],
    scheme: values.scheme,
    limits: values.limits,
    confirmed: values.confirmed,
    strict: values.strict,
    out: values.out,
    refused: values.refused,
    replace: values.replace,
    digits: values.digits === undefined ? undefined : digitsOf(values.digits),
    json: values.json,
    explain: values.explain,
    keepGoing: values["keep-going"],
    failFrom: values["fail-from"],
  };
  if (settings.explain && !settings.json) {
    throw new VeladisError("unknown-option", {
      expected: "--explain with --json, since a row of CSV has no room for steps",
      received: "--explain alone",
    });
  }
  if (settings.failFrom !== undefined && !judges(settings)) {
    throw new VeladisError("missing-option", {
      expected: "--machine, --machine-column or --scheme beside --fail-from: without them nothing is judged",
      received: "--fail-from alone",
    });
  }
  if (settings.targets.length > 0 || judges(settings)) return settings;
  throw new VeladisError("missing-option", {
    expected: 'what to add: --to "mm/s rms", or --machine "group 2 rigid" to judge',
    received: "nothing",
  });
}

/** Adds converted columns and zones to every row of a file. */
export async function addColumns(given: ParsedOptions<typeof tablePage.options>, io: Io): Promise<number> {
  const settings = settingsOf(given);
  return (await import("../table/run-table")).runTable(io, settings);
}
