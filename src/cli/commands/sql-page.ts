import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { plantFileOptions } from "../options/plant-options";
import {
  confirmed,
  crestFactor,
  fileOptions,
  json,
  keepGoing,
  machine,
  scheme,
  strict,
} from "../options/shared-options";

/** The page of `sql`. */
export const sqlPage = {
  summary:
    "conversions and verdicts as plain SQL, of one machine or of a whole list, for a database that holds the readings",
  usage: 'veladis sql --column <name> --from <type> --to <type> | --machine "<machine>" | --plant <file> ...',
  does: "Prints an expression of plain SQL that converts or judges a column of readings where it lies; for a list of machines a whole query, which joins the limits of each. Readings that are NULL, negative or no numbers, machines that are refused and machines that are not on the list get NULL, never a zone.",
  examples: [
    'veladis sql --column velocity --from "in/s pk" --to "mm/s rms"',
    'veladis sql --column shaft --from "um pp" --to "mm/s rms" --speed-column speed --speed-unit r/min',
    'veladis sql --column velocity --from "mm/s rms" --machine "pump 90 kW category II 2980 r/min"',
    'veladis sql --column velocity --from "mm/s rms" --machine "group 2 rigid" \\\n    --scheme iso-10816-3-2009 --dialect postgresql',
    'veladis sql --machines machines.csv --name-column tag --table readings \\\n    --column velocity --from "mm/s rms"',
    'veladis sql --machines machines.csv --name-column tag --table readings \\\n    --column velocity --from "mm/s rms" --limits-table limits --out limits.csv',
    'veladis sql --plant plant.csv --table readings \\\n    --column velocity --from "mm/s rms"',
  ],
  options: {
    ...grouped("the readings, in the database", {
      column: { argument: "<name>", help: "the column of the readings", example: "velocity" },
      from: { argument: "<type>", help: "what they are written in", example: '"mm/s rms"', list: "types" },
      at: {
        argument: "<frequency>",
        help: "the frequency of the vibration, the same for all rows",
        example: '"1500 r/min"',
      },
      "speed-column": {
        argument: "<name>",
        help: "the column of the running speed, where the frequency differs from row to row; with a list it needs --to",
        example: "speed",
      },
      "speed-unit": {
        argument: "<unit>",
        help: "unit of the numbers in --speed-column",
        example: "r/min",
        list: "frequency units",
      },
      "crest-factor": crestFactor,
      table: {
        argument: "<name>",
        help: "the table of the readings; a point stands between schema and name",
        example: "readings",
      },
    }),
    ...grouped("what is asked", {
      to: {
        argument: "<type>",
        help: "convert to this type; with --machines and --speed-column, judge in it",
        example: '"mm/s rms"',
        list: "types",
      },
      machine: { ...machine, help: "judge as readings of this machine, in words" },
      scheme: { ...scheme, otherwise: "all that the machine's facts admit; the worst governs" },
      machines: {
        argument: "<file>",
        help: "judge each row as a reading of its machine, by a list of machines in delimited text",
        example: "machines.csv",
      },
      plant: {
        argument: "<file>",
        help: "the same by a plant's list, each machine by the table or the limits that its row names; its tags name the readings",
        example: "plant.csv",
      },
      "name-column": {
        argument: "<name>",
        help: "what names the machine, in the list and in the table of the readings; of a plant's list in the latter alone",
        example: "tag",
        otherwise: "machine; for a plant's list tag",
      },
      "machine-column": {
        argument: "<name>",
        help: "words on the machine in the list; may be given several times",
        example: "nameplate",
        several: true,
        otherwise: "all columns of the list but its name",
      },
      confirmed,
      strict,
      worst: { help: "of one machine, the worst zone that is possible in place of the one that is judged" },
    }),
    ...grouped("how the list is written", {
      ...fileOptions,
      dates: plantFileOptions.dates,
      worksheet: plantFileOptions.worksheet,
      own: plantFileOptions.own,
    }),
    ...grouped("what is printed", {
      dialect: {
        argument: "<engine>",
        help: "the engine that reads it",
        default: "duckdb",
        list: "engines",
      },
      "limits-table": {
        argument: "<name>",
        help: "the table in which the limits were put, which the query then reads",
        example: "limits",
        otherwise: "the query brings the limits along",
      },
      out: {
        argument: "<file>",
        help: "the table of limits as a file, .csv, .parquet or .sql: a row a machine, criterion and limit, with grade and source",
        example: "limits.csv",
        otherwise: "none",
      },
      replace: { help: "replace a file of this name" },
      json: { help: `${json.help}: each row of the table of limits, then the query` },
      "keep-going": keepGoing,
    }),
  },
  words: [
    [
      "engines",
      "duckdb, postgresql, sqlite, clickhouse, spark, trino; what is written for the last two is held against their grammars and was not run",
    ],
  ],
  notes: [
    "Beside each reading the query of a list gives: veladis_judged (the reading, in the type that is judged), veladis_zone, veladis_zones (all that are possible), veladis_worst (the worst of them: act on this one), veladis_margin (the limit next to the reading, divided by the reading), veladis_assumed (with what was not judged or set aside, and how the limits are known), veladis_refused (why a machine has no limits).",
    "Limits of the machine's maker, site rules, local codes and licensed practice govern.",
  ],
} as const satisfies CommandPage;
