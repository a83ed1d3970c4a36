import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { plantFileOptions, plantTables } from "../options/plant-options";
import { json } from "../options/shared-options";

/** The page of `plant change`. */
export const plantChangePage = {
  summary: "adds an entry to the record of changes of a plant: a setting, or a bypass with its expiry",
  usage: "veladis plant change <record> --date <date> --tag <tag> --setting <column> --old <cell> --new <cell> --reason <text> --who <name> ...",
  does: "Adds one row to the record of changes beside a plant's list, and changes nothing else: neither earlier rows nor the list. The entry is refused where it does not go on from what the record, or the list, says stood there before.",
  examples: [
    'veladis plant change changes.csv --list docs/examples/plant-checks.csv --date 2026-12-01 --tag LU-01 \\\n    --setting trip --old "9 mm/s rms" --new "8.6 mm/s rms" --reason "new baseline" --who "shift B" \\\n    --approved-by "plant engineer" --dry-run',
    'veladis plant change changes.csv --date 2026-12-01 --tag LU-01 --setting bypass --new trip \\\n    --until 2026-12-02 --reason "sensor is changed" --who "shift B" --approved-by "plant engineer" --dry-run',
  ],
  texts: { most: 1, what: "one file with the record of changes, such as plant-changes.csv; it is made where there is none" },
  options: {
    ...grouped("the entry", {
      date: { argument: "<date>", help: "the day of the change", example: "2026-12-01" },
      tag: { argument: "<tag>", help: "the machine, as the list calls it", example: "LU-01" },
      setting: { argument: "<column>", help: "the column of the list that was changed, or bypass", example: "trip", list: "changed settings" },
      old: {
        argument: "<cell>",
        help: "the cell before; of a bypass that is lifted, what was bypassed",
        example: '"9 mm/s rms"',
        otherwise: "nothing stood there",
      },
      new: {
        argument: "<cell>",
        help: "the cell now; of a bypass, what is bypassed",
        example: '"8.6 mm/s rms"',
        otherwise: "nothing stands there any more",
      },
      reason: { argument: "<text>", help: "why", example: '"new baseline"' },
      who: { argument: "<name>", help: "who changed it", example: '"shift B"' },
      "approved-by": {
        argument: "<name>",
        help: "the person who answers for the machine, or who acts for them; a bypass is refused without",
        example: '"plant engineer"',
      },
      until: {
        argument: "<date>",
        help: "the last day of a bypass, which is refused without, or of a change for a time",
        example: "2026-12-02",
      },
      "put-back": { argument: "<date>", help: "the day on which the old state was restored, where it is over already", example: "2026-12-02" },
    }),
    list: {
      argument: "<file>",
      help: "the plant's list, to hold tag and cell against",
      example: "plant.csv",
      otherwise: "held against the record alone, which is told",
    },
    "dry-run": { help: "check the entry and print it; write nothing" },
    json,
    ...grouped("how the files are written, the record and the list", plantFileOptions),
    ...grouped("tables of limits", plantTables),
  },
  notes: [
    "A bypass is lifted by an entry of its own, with --old and without --new: --setting bypass --old trip. A change for a time is put back in the same way.",
    "Changing a setting, and a bypass above all, is the decision of the person who answers for the machine, under the permit of the site; the record only says that it was made.",
  ],
} as const satisfies CommandPage;
