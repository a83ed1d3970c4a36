import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { plantFileOptions, plantTables, plantTexts } from "../options/plant-options";
import { load, shakerRows } from "../options/shaker-rows";
import { json, keepGoing, uncertainty } from "../options/shared-options";

/** The page of `plant checks`. */
export const plantChecksPage = {
  summary: "which devices of a plant are to be checked, a round on the bench for them, and results that come back",
  usage: "veladis plant checks <list> --on <date> [--shaker <range> [--sheets <folder>]] [--results <csv>]",
  does: "Which devices of a list are to be checked on a day, the most urgent first. With a shaker also a round on the bench: few settings of it, each for as many devices as it suits, and a numbered sheet for each. With results, what came back from such a round: each held against its known level, the readings that are in doubt, and the list with the new cells.",
  examples: [
    "veladis plant checks plant.csv --on 2026-12-01",
    'veladis plant checks plant.csv --on 2026-12-01 --ahead 30 --shaker "8 Hz to 3 kHz" \\\n    --stroke "5 mm pp" --acceleration "6 g pk"',
    "veladis plant checks plant.csv --on 2026-12-05 --results results.csv --out plant-new.csv",
  ],
  texts: plantTexts,
  options: {
    on: {
      argument: "<date>",
      help: "the day asked for; beside --results the day on which they are read, so that no check is later",
      example: "2026-12-01",
    },
    ahead: {
      argument: "<days>",
      help: "checks that are due so many days later count too",
      example: '"30 days"',
      otherwise: "none",
    },
    ...grouped("round on the bench, with a shaker from its data sheet", {
      ...shakerRows,
      resolution: {
        argument: "<reading>",
        help: "the smallest step in which its level is set",
        example: '"0.1 mm/s rms"',
        otherwise: "levels in as few digits as there may be",
      },
      uncertainty,
      load,
      at: {
        argument: "<frequencies>",
        help: "frequencies to choose from, with commas",
        example: '"79.4 Hz, 159.2 Hz"',
        otherwise: "those of a shaker that has fixed ones, else 79.4 Hz and the middle of each band,",
      },
      sheets: {
        argument: "<folder>",
        help: "a sheet for each device (.html) and results.csv to be filled in, into this folder",
        example: "round",
      },
    }),
    ...grouped("results that came back", {
      results: {
        argument: "<csv>",
        help: "columns number, tag, date, known, as found, as left, tolerance, by, as results.csv beside the sheets has them",
        example: "results.csv",
      },
      out: {
        argument: "<csv>",
        help: "the list with the new cells of the checks, every other byte as it was; never the list itself without --replace",
        example: "plant-new.csv",
      },
    }),
    replace: { help: "files that are there may be replaced, the list itself too" },
    "fail-on": {
      argument: "<what>",
      help: "exit 1 when a device is due, or readings are in doubt",
      example: "due",
      values: ["due", "doubt"],
    },
    "keep-going": keepGoing,
    csv: { help: "the answer as CSV: the checks, those of a round with its settings; beside --results the results" },
    json,
    ...grouped("how the files are written, the list and the results", plantFileOptions),
    ...grouped("tables of limits", plantTables),
  },
  notes: [
    "A check is due so many months after the last, by the calendar: on the same day of the month, or on the last day of a shorter one. One that was never done is due at once, and one after which the device was left out of tolerance is due since the day of that check. Without an interval nothing says when; it is told, and not assumed.",
    "The number of a sheet is tag and day of the round. A result whose number, tag or date is wrong is refused by line, and so is one whose tolerance is not that of the list.",
  ],
} as const satisfies CommandPage;
