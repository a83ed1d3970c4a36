import type { CommandPage } from "../options/command-page";
import { json } from "../options/shared-options";

/** The page of `plant template`. */
export const plantTemplatePage = {
  summary: "an example of a plant's list as a file to start from, and what each of its columns holds",
  usage: "veladis plant template [--columns]",
  does: "Prints a list of one machine with a heading for every column, to be filled in with a spreadsheet or an editor; with --columns, what each column holds instead.",
  examples: ["veladis plant template > my-plant.csv", "veladis plant template --columns"],
  options: {
    columns: { help: "what each column holds, in place of the list" },
    semicolon: { help: "semicolons between cells, for spreadsheets that write 7,1; the list has decimal commas then" },
    json: { help: `${json.help}: each column with what it holds` },
  },
  notes: [
    "Only tag and kind must be filled in; an empty cell is not known, and what cannot be checked without it is told.",
    "Columns stand in any order; those of your own are kept. Each reading has its unit and detector in its cell.",
  ],
} as const satisfies CommandPage;
