import { cellText, jsonText, VeladisError } from "../../core/index";
import { type PlantColumnEntry, plantColumns } from "../../plant/index";
import { quotedCell } from "../delimited/cells";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { exitCodes } from "../print/exit-codes";
import { plantColumnsText } from "../print/plant-columns-text";
import type { plantTemplatePage } from "./plant-template-page";

/** Columns that the example leaves empty: limits stand in the place of a table, and a fan has no shaft height. */
const empty: readonly string[] = ["limits", "limits source", "shaft height", "multiplier"];

/** A list of one machine, every column with its example. */
function templateCsv(semicolon: boolean): string {
  const separator = semicolon ? ";" : ",";
  const columns = Object.entries<PlantColumnEntry>(plantColumns);
  const examples = columns.map(([name, { holds, example }]) => {
    if (empty.includes(name)) return "";
    return semicolon && holds !== "date" ? example.replace(/(?<=\d)\.(?=\d)/g, ",") : example;
  });
  const rows = [columns.map(([name]) => name), examples];
  return rows.map((row) => `${row.map((cell) => quotedCell(cellText(cell), separator)).join(separator)}\n`).join("");
}

/** Prints an example of a plant's list, or what its columns hold. */
export async function printTemplate(
  { values }: ParsedOptions<typeof plantTemplatePage.options>,
  io: Io,
): Promise<number> {
  const { columns, semicolon, json } = values;
  if (semicolon && (columns || json)) {
    throw new VeladisError("unknown-option", {
      expected: "--semicolon for the list alone",
      received: `${columns ? "--columns" : "--json"} too`,
      option: "semicolon",
    });
  }
  if (json) {
    const lines = Object.entries<PlantColumnEntry>(plantColumns).map(
      ([column, entry]) => `${jsonText({ column, ...entry })}\n`,
    );
    await io.out(lines.join(""));
  } else await io.out(columns ? plantColumnsText() : templateCsv(semicolon));
  return exitCodes.done;
}
