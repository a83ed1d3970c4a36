import { findingSeverities } from "../../plant/index";
import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { plantFileOptions, plantTables, plantTexts } from "../options/plant-options";
import { recordOptions } from "../options/record-options";
import { keepGoing } from "../options/shared-options";

/** The page of `plant audit`. */
export const plantAuditPage = {
  summary: "every machine of a plant's list held against its limits and the rules of the trade, worst first",
  usage: "veladis plant audit <file> [--on <date>] ...",
  does: "Holds every row of a plant's list against its own nameplate, its table of limits and the rules of the trade: setpoints, baseline, loop and band, delays, which failures nobody would see, checks that are overdue. Each finding says what, why, by which source and what would mend it; what cannot be checked since a fact is missing is told too. Nothing is changed.",
  examples: [
    "veladis plant audit plant.csv --on 2026-11-28",
    "veladis plant audit plant.csv --on 2026-11-28 --fail-on error --keep-going",
    "veladis plant audit plant.csv --csv > findings.csv",
    "veladis plant audit plant.csv --on 2026-11-28 --changes plant-changes.csv",
  ],
  texts: plantTexts,
  options: {
    ...grouped("what is asked", {
      on: {
        argument: "<date>",
        help: "the day of the audit, by which checks are overdue",
        example: "2026-11-28",
        otherwise: "nothing is said of what is overdue",
      },
      ...plantTables,
      ...recordOptions,
    }),
    ...grouped("how the list is written", plantFileOptions),
    ...grouped("answer", {
      "fail-on": {
        argument: "<severity>",
        help: "exit 1 when any finding is as bad as this or worse",
        example: "error",
        values: findingSeverities,
      },
      json: { help: "the whole audit as one JSON object" },
      csv: { help: "the findings as a table, a row each" },
      "keep-going": keepGoing,
    }),
  },
  notes: [
    "error: the machine is not protected as the rules ask, or the list contradicts itself. warning: it may not be. note: what is to be known.",
    "veladis plant template --columns tells what each column of the list holds.",
  ],
} as const satisfies CommandPage;
