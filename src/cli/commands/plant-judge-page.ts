import type { CommandPage } from "../options/command-page";
import { failFrom } from "../options/fail-from";
import { grouped } from "../options/option-row";
import { plantFileOptions, plantTables } from "../options/plant-options";
import { digits, fileOptions, json, keepGoing } from "../options/shared-options";

/** The page of `plant judge`. */
export const plantJudgePage = {
  summary: "a route of readings by tag, each judged by its own machine's table; worst first",
  usage: "veladis plant judge <plant.csv> <route.csv> [--before <route.csv>]",
  does: "Judges the readings of a route by the list of a plant: each by the table or the limits that the row of its machine names, else by every scheme that the nameplate admits, of which the worst governs. Tells what has changed since the baseline and since the last route, and which machines were not read.",
  examples: [
    "veladis plant judge route-plant.csv route-april.csv",
    "veladis plant judge route-plant.csv route-april.csv \\\n    --before route-march.csv --fail-from D",
    "veladis plant judge route-plant.csv route-april.csv --csv",
  ],
  texts: { most: 2, what: "two files: the list, such as plant.csv, and the route, such as route.csv" },
  options: {
    ...grouped("the route", {
      before: {
        argument: "<file>",
        help: "the route before, for what has changed since; by tag and point",
        example: "route-march.csv",
      },
      column: {
        argument: "<name>",
        help: "the column of the readings",
        example: '"overall"',
        otherwise: "the one headed reading or value, else the only one whose heading says unit and detector",
      },
      at: {
        argument: "<frequency>",
        help: "the frequency of the vibration, for readings that say none; never taken from the list",
        example: '"1490 r/min"',
      },
      "file-units": fileOptions["file-units"],
    }),
    ...grouped("the list, and how both files are written", { ...plantFileOptions, ...plantTables }),
    ...grouped("what is printed", {
      csv: { help: "a table of all readings as CSV; what holds for many of them is told once on standard error" },
      html: { argument: "<file>", help: "one HTML page, for the screen and A4 paper", example: "route.html" },
      replace: { help: "replace a file of this name" },
      digits,
      "fail-from": {
        ...failFrom,
        help: "exit 1 when any possible zone of a reading is this one or worse; alarm counts as C, shutdown and fail as D",
      },
      json: { help: `${json.help}: each reading, then what the verdicts rest on, then what was refused or not read` },
      "keep-going": keepGoing,
    }),
  },
  words: [
    [
      "columns",
      "tag; reading (or value) with its unit, or a number with a column unit or a unit in the heading, as in velocity [mm/s rms]; point; date; at, the frequency of the vibration. In any order; others play no part, and are named.",
    ],
    [
      "change",
      "* behind it: significant, more than a quarter of the limit B/C; ? where that is not known, as for a fall below the list's baseline at one of several points, since the baseline names none",
    ],
  ],
  notes: [
    "A reading of another quantity than the limits of its machine needs its frequency: the running speed on the list is not taken for it.",
    "A tag that no row of the list has, or two, and one whose row was refused, is refused by line; the other readings are judged. Exit 2 then, unless --keep-going.",
    "Limits of the machine's maker, site rules, local codes and licensed practice govern.",
  ],
} as const satisfies CommandPage;
