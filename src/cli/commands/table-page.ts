import type { CommandPage } from "../options/command-page";
import { failFrom } from "../options/fail-from";
import { limits } from "../options/limits-option";
import { grouped } from "../options/option-row";
import {
  allDigits,
  confirmed,
  crestFactor,
  explain,
  fileOptions,
  json,
  keepGoing,
  machine,
  schemeFound,
  strict,
} from "../options/shared-options";
import { signalOptions } from "../options/signal-options";

/** The page of `table`. */
export const tablePage = {
  summary: "a CSV or Parquet file of any size with converted columns and zones added to each row",
  usage: 'veladis table <file> --column <name> ... [--to <types>] [--machine "<machine>"]',
  does: "Adds converted columns and zones to every row of a file. CSV of any size, with any separator and in any encoding, also piped; Parquet where the package hyparquet is installed beside veladis. What is written has the separator, the encoding and the line ends of the file; of Parquet it is CSV.",
  examples: [
    'veladis table readings.csv --column value --from "mm/s rms" --to "in/s pk" --out metric.csv',
    'veladis table readings.csv --column value --from-column unit --detector rms --to "mm/s rms"',
    'veladis table shaft.csv --column value --from "um pp" --to "mm/s rms" \\\n    --speed-column speed --speed-unit r/min --at 1x',
    'veladis table readings.csv --column value --from "mm/s rms" --machine "group 2 rigid" \\\n    --scheme iso-10816-3-2009 --out judged.csv',
    'veladis table readings.csv --column value --from "mm/s rms" --machine-column machine',
    'veladis table readings.csv --column value --from "mm/s rms" \\\n    --machine "pump 90 kW 2980 r/min category II" --fail-from D',
  ],
  texts: { most: 1, what: "one file, as in veladis table readings.csv --column value" },
  options: {
    ...grouped("columns, by name or number", {
      column: {
        argument: "<name>",
        help: 'the readings; without a type told, whole ones as in "4.1 mm/s rms"',
        example: "value",
      },
      "from-column": {
        argument: "<name>",
        help: "the reading type of each row, or its unit where the detector is told apart",
        example: "unit",
      },
      "detector-column": { argument: "<name>", help: "the detector of each row", example: "detector" },
      "at-column": { argument: "<name>", help: "the frequency of each row", example: "frequency" },
      "at-unit": {
        argument: "<unit>",
        help: "unit of bare numbers in --at-column, e.g. Hz",
        example: "Hz",
        list: "frequency units",
      },
      "speed-column": { argument: "<name>", help: "the running speed of each row", example: "speed" },
      "speed-unit": {
        argument: "<unit>",
        help: "unit of bare numbers in --speed-column, e.g. r/min",
        example: "r/min",
        list: "frequency units",
      },
      "machine-column": {
        argument: "<name>",
        help: "words on the machine of each row; may be given several times",
        example: "machine",
        several: true,
      },
      "background-column": {
        argument: "<name>",
        help: "the reading of each row with the machine stopped; a bare number is in the type of its row",
        example: '"at rest"',
      },
    }),
    ...grouped("how the file is written", fileOptions),
    ...grouped("the same for all rows", {
      from: {
        argument: "<type>",
        help: "the reading type, or the unit where the detector is told apart; a signal too, mV pk with --sensor or mA with --loop",
        example: '"mm/s rms"',
        list: "types",
      },
      ...signalOptions,
      detector: { argument: "<detector>", help: "the detector", example: "rms", list: "detectors" },
      at: {
        argument: "<frequency>",
        help: "the frequency, or an order of the running speed such as 1x",
        example: '"1500 r/min"',
      },
      background: {
        argument: "<reading>",
        help: "the reading with the machine stopped: whether rows may be judged; one that may not is NOT RELIABLE in the column assumed",
        example: '"0.4 mm/s rms"',
      },
      "crest-factor": crestFactor,
      machine: {
        ...machine,
        help: "the machine in words; those of columns stand behind them",
        default: "",
      },
    }),
    ...grouped("what is added", {
      to: {
        argument: "<types>",
        help: "columns with the reading in these types",
        example: '"mm/s rms, in/s pk"',
        list: "types",
      },
      scheme: schemeFound,
      limits: {
        ...limits,
        help: "upper limits of zones A, B and C, of the maker or the site, in the place of a scheme, for all rows; of the shaft where --machine says shaft",
      },
      confirmed,
      strict,
      digits: allDigits,
    }),
    ...grouped("where it goes", {
      out: {
        argument: "<file>",
        help: "written beside its place and moved there whole at the end",
        example: "judged.csv",
        otherwise: "standard output",
      },
      refused: {
        argument: "<file>",
        help: "refused rows with line and reason",
        example: "refused.csv",
        otherwise: "<out>.refused.csv",
      },
      replace: { help: "replace files of these names" },
      json: { help: `${json.help}, in place of CSV` },
      explain: { help: `${explain.help}; with --json, since a row of CSV has no room for it` },
      "keep-going": keepGoing,
      "fail-from": failFrom,
    }),
  },
  notes: [
    "Added are, behind the row as it was: the types of --to; zone; worst (the worst zone that is possible: act on this one); scheme (several joined by +, of which the worst governs); limits (how the least known of them is known: MEMORY, practice, reported, quoted, printed or confirmed; check all but the last two against the standard); assumed (with what was not judged or set aside).",
    "Limits of the machine's maker, site rules, local codes and licensed practice govern.",
  ],
} as const satisfies CommandPage;
