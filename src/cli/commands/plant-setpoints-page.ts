import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { plantFileOptions, plantTables, plantTexts } from "../options/plant-options";
import { json, keepGoing } from "../options/shared-options";

/** The page of `plant setpoints`. */
export const plantSetpointsPage = {
  summary: "a schedule of setpoints for all machines of a list, beside what is set",
  usage: "veladis plant setpoints <plant.csv>",
  does: "Proposes alarm, trip, delays and hysteresis for every machine of a list, by its baseline, its table or limits, its loop, its band and the steps of its device, and tells what would be raised or lowered against what is set, by how much, and why. Nothing is changed by itself.",
  examples: ["veladis plant setpoints route-plant.csv", "veladis plant setpoints route-plant.csv --csv"],
  texts: plantTexts,
  options: {
    ...grouped("the list", { ...plantFileOptions, ...plantTables }),
    ...grouped("what is printed", {
      full: { help: "the reasons of every number with their sources" },
      csv: { help: "a row for each setting as CSV" },
      json: { help: `${json.help}: each machine with its proposal, then those for which nothing is proposed` },
      "keep-going": keepGoing,
    }),
  },
  notes: [
    "First what is set above all that the rules allow, then machines for which no trip can be proposed, then what would be lowered, then what would change otherwise.",
    "Limits of the machine's maker, site rules, local codes and licensed practice govern; a schedule is for the people who answer for the machines to decide.",
  ],
} as const satisfies CommandPage;
