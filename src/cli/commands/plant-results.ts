import { VeladisError } from "../../core/index";
import { doubtfulPeriods, takeResults } from "../../plant/index";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { delimitedRows } from "../input/plant-file";
import { updatedList } from "../input/updated-list";
import { isWorkbook } from "../input/workbook";
import type { ParsedOptions } from "../options/option-row";
import { cautionsText } from "../print/cautions-text";
import { csvText } from "../print/csv-text";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { refusedText } from "../print/plant-file-text";
import { resultsText } from "../print/results-text";
import { wholeFile } from "../table/whole-file";
import type { ListedPlant } from "./listed-plant";
import type { plantChecksPage } from "./plant-checks-page";

type GivenChecks = ParsedOptions<typeof plantChecksPage.options>;

/** Writes the list with its new cells. */
async function writeList(
  { values }: GivenChecks,
  file: string,
  results: Parameters<typeof updatedList>[3],
): Promise<void> {
  const { out, own, replace } = values;
  if (out === undefined) return;
  if (file === "-" || isWorkbook(file)) {
    throw new VeladisError("unknown-option", {
      expected: "--out beside a list in a file of delimited text",
      received: file === "-" ? "standard input" : "a workbook",
      option: "out",
    });
  }
  const bytes = await updatedList(file, writtenAs(values), own, results);
  // the list itself may be replaced where that is told; what came back from the bench never is
  const written = await wholeFile(out, replace, [values.results, ...(replace ? [] : [file])]);
  try {
    await written.write(bytes);
    await written.commit();
  } catch (error) {
    await written.discard();
    throw error;
  }
}

/** What came back from the bench: each result, the readings in doubt, and the list with its new cells. */
export async function printResults(
  given: GivenChecks,
  on: string,
  { plant, file }: ListedPlant,
  io: Io,
): Promise<number> {
  const { values } = given;
  const { results: name = "", dates, json, csv, out } = values;
  const as = writtenAs(values);
  const { refused: torn, account: _, ...table } = await delimitedRows(io, name, as);
  const options = { on, ...(as.decimalComma && { decimal: "," as const }), ...(dates !== undefined && { dates }) };
  const read = takeResults(plant, table, options);
  const taken = { ...read, refused: [...read.refused, ...torn].sort((a, b) => a.line - b.line) };
  for (const row of taken.refused) io.err(refusedText(row, name, json));
  const periods = doubtfulPeriods(plant, taken.results);
  const isWritten = out !== undefined && taken.results.length > 0;
  if (isWritten) await writeList(given, file, taken.results);
  else if (out !== undefined) io.err(`${out} is not written: no result was taken, and the list stays as it is\n`);
  if (json) {
    for (const one of taken.results) await io.out(jsonLine("check result", one));
    for (const one of taken.open) await io.out(jsonLine("open result", one));
    for (const one of periods) await io.out(jsonLine("doubtful period", one));
  } else if (csv) {
    const title = [
      "tag",
      "check date",
      "known",
      "as found",
      "as left",
      "tolerance",
      "checked by",
      "error %",
      "as found is",
      "as left is",
      "doubtful after",
      "doubtful to",
      "reads",
    ];
    await io.out(
      csvText(
        title,
        taken.results.map(({ tag, date, cells, by, tolerance, asFound, asLeft, machineLine }) => {
          const period = periods.find((one) => one.line === machineLine && one.to === date);
          return [
            ...[tag, date, cells.known, cells["as found"], cells["as left"], tolerance, by],
            ...[asFound.errorPercent, asFound.verdict, asLeft?.verdict, period?.from, period?.to, period?.reads],
          ];
        }),
      ),
    );
  } else {
    const written = !isWritten ? "" : `\nthe list with these cells: ${out}\n`;
    await io.out(resultsText(taken, periods) + written + cautionsText());
  }
  const isRefused = (taken.refused.length > 0 || plant.refused.length > 0) && !values["keep-going"];
  if (isRefused) return exitCodes.refused;
  return values["fail-on"] === "doubt" && periods.length > 0 ? exitCodes.reached : exitCodes.done;
}
