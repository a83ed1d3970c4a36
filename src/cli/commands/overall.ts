import { VeladisError, visibleText } from "../../core/index";
import type { Io } from "../input/io";
import { namedFile } from "../input/open-file";
import type { ParsedOptions } from "../options/option-row";
import { requireFitting } from "../options/options-beside";
import type { overallPage } from "./overall-page";
import { printRecord } from "./overall-record";

/** Options of what is no record of samples. */
const ofLines = ["noise-bandwidth", "tones", "at-column", "at-unit", "slope-column"];

/** Refuses what one column alone can be given. */
function requireReadAgain(file: string | undefined, chart: string | undefined): void {
  if (file !== undefined && chart === undefined) return;
  throw new VeladisError("missing-option", {
    expected:
      file === undefined
        ? "a file for several columns, since it is read once for each"
        : "one --column beside --chart: each has a picture of its own",
    received: file === undefined ? "standard input" : "several",
  });
}

/**
 * The overall level of each column of samples that is named, of the only one without; or of the lines of a spectrum, or of
 * the points of a density. Of several exit codes the worst.
 */
export async function printOverall(given: ParsedOptions<typeof overallPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  if (values.spectrum) return (await import("./overall-lines")).printLines(given, io);
  if (values.density) return (await import("./overall-profile")).printProfile(given, io);
  requireFitting(
    given,
    "a file of samples (those of lines and densities with --spectrum or --density)",
    (name) => !ofLines.includes(name),
  );
  const { column: columns } = values;
  if (columns.length <= 1) return printRecord(given, { column: columns[0], title: "" }, io);
  requireReadAgain(namedFile(texts[0]), values.chart);
  let worst = 0;
  for (const [i, column] of columns.entries()) {
    const title = `${i === 0 ? "" : "\n"}column ${visibleText(column)}\n`;
    worst = Math.max(worst, await printRecord(given, { column, title }, io));
  }
  return worst;
}
