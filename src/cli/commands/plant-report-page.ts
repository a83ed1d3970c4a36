import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { plantFileOptions, plantTables } from "../options/plant-options";
import { json, keepGoing } from "../options/shared-options";

/** The page of `plant report`. */
export const plantReportPage = {
  summary: "a page for each machine of a plant and an index of all, as a folder of HTML to read, sort and print",
  usage: "veladis plant report <list> [<route> ...] --out <folder>",
  does: "Writes a folder with a page for each machine (open findings, last reading on its zones, limits with grade and source, setpoints as set and as proposed, history, last check, record of changes, nameplate) and an index of all, the worst first. Each page stands alone: it asks for nothing elsewhere, is read without script, and prints on A4. The last route is judged; those before it are history.",
  examples: [
    "veladis plant report route-plant.csv route-april.csv --out plant-pages",
    "veladis plant report route-plant.csv route-march.csv \\\n    route-april.csv --on 2026-04-20 --out plant-pages --replace",
  ],
  texts: { what: "the list, and behind it the routes in the order of their days" },
  options: {
    out: { argument: "<folder>", help: "the folder to write, whole or not at all", example: "plant-pages" },
    replace: { help: "replace a folder that holds nothing but such a report" },
    on: {
      argument: "<date>",
      help: "the day for which checks are due and bypasses have expired",
      example: "2026-11-20",
      otherwise: "today",
    },
    name: {
      argument: "<text>",
      help: "what the plant is called on the pages",
      example: '"Hollowmere district heating"',
      otherwise: "the name of the file with the list",
    },
    changes: {
      argument: "<file>",
      help: "the record of changes beside the list",
      example: "plant-changes.csv",
      otherwise: "none, and no change is looked for",
    },
    history: {
      argument: "<folder or file>",
      help: "histories of levels: a folder with a file for each machine, called by its tag, or TAG=file; times in the first column, headings of the others with unit and detector; may be given several times",
      example: "LU-01=fan-bearing-months.csv",
      several: true,
    },
    column: {
      argument: "<name>",
      help: "the column of the readings on the routes",
      example: "velocity",
      otherwise: "the one headed reading, value or level, or the only one whose heading says unit and detector",
    },
    at: {
      argument: "<frequency>",
      help: "the frequency of readings on the routes that say none",
      example: '"24.75 Hz"',
    },
    "fail-on": {
      argument: "<gravity>",
      help: "exit 1 when a finding is as grave as this or graver",
      example: "error",
      values: ["error", "warning", "note"],
    },
    json: { help: `${json.help}: what was written` },
    "keep-going": keepGoing,
    ...grouped("how the files are written, the list, the routes and the others", plantFileOptions),
    ...grouped("tables of limits", plantTables),
  },
  notes: [
    "A row or a reading that is refused gets no verdict; the index names it, and the other machines are still told. A folder that holds anything else than a report is never replaced.",
    "Nothing is changed by a report: what it proposes is for the person who answers for the machine.",
  ],
} as const satisfies CommandPage;
