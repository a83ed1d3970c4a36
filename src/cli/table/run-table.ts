import { stat } from "node:fs/promises";
import { VeladisError } from "../../core/index";
import type { Io } from "../input/io";
import { openFile } from "../input/open-file";
import { namedScheme } from "../options/named-scheme";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";
import { visitCsv } from "./csv-source";
import { visitParquet } from "./parquet-source";
import { progressOf } from "./progress";
import { type RowAnswers, rowAnswers } from "./row-answers";
import { csvOutput, jsonOutput, type RowOutput } from "./row-output";
import type { RowVisitor } from "./row-source";
import type { TableSettings } from "./settings";
import { type Counts, summaryText } from "./summary";
import { outputsOf } from "./table-outputs";

/** Reasons shown on standard error where refused rows have no file to go to. */
const MOST_REASONS = 10;

/** Shows the rows of the input to a visitor. */
async function visitInput(io: Io, { file }: TableSettings, visitor: RowVisitor): Promise<void> {
  if (file?.toLowerCase().endsWith(".parquet")) {
    return visitParquet(file, visitor);
  }
  if (file !== undefined) {
    const stream = await openFile(file);
    const { size } = await stat(file);
    return visitCsv(stream, size, visitor);
  }
  if (io.piped !== undefined) return visitCsv(io.piped, undefined, visitor);
  throw new VeladisError("missing-fact", {
    expected: 'a file or piped CSV, as in veladis table readings.csv --column value --from "mm/s rms" --to "in/s pk"',
    received: "nothing",
  });
}

/** The line on which a row begins, from that on which it ends. */
function firstLine(raw: string, last: number): number {
  return last - (raw.match(/\r\n|\n|\r/g)?.length ?? 0);
}

/**
 * Answers every row of a table and writes it with columns added; refused rows go elsewhere, with line and reason.
 *
 * Resolves to the exit code. What stops it on the way leaves no output behind.
 *
 * @throws {@link VeladisError} for options, input or output that cannot be; never for a single row
 */
export async function runTable(io: Io, settings: TableSettings): Promise<number> {
  const { json, keepGoing, file } = settings;
  const scheme = settings.scheme === undefined ? undefined : await namedScheme(settings.scheme);
  const outputs = await outputsOf(io, settings);
  const progress = progressOf(io, file);
  const counts: Counts = { rows: 0, refused: 0 };
  let answers: RowAnswers | undefined;
  let output: RowOutput | undefined;
  let width = 0;
  let written = "";
  let refusals = "";

  const refuse = (error: unknown, cells: readonly string[], raw: string, last: number): void => {
    if (!(error instanceof VeladisError)) throw error;
    const line = firstLine(raw, last);
    counts.refused++;
    if (outputs.refuse !== undefined) refusals += (output as RowOutput).refusedRow(raw, cells, line, error);
    else if (counts.refused <= MOST_REASONS) io.err(failureText(error, json, { ...(file && { file }), line }));
  };
  const visitor: RowVisitor = {
    header(cells, raw, form) {
      width = cells.length;
      answers = rowAnswers(cells, settings, scheme);
      output = json ? jsonOutput(answers.titles, cells, form) : csvOutput(answers.titles, form, settings.decimalComma);
      written = output.header(raw);
      refusals = output.refusedHeader(raw);
    },
    row(cells, raw, line) {
      counts.rows++;
      try {
        if (cells.length !== width) {
          // what is added would stand in another column
          throw new VeladisError("length-mismatch", {
            expected: `${width} cells, as the header has`,
            received: `${cells.length}`,
          });
        }
        written += (output as RowOutput).row(raw, cells, line, (answers as RowAnswers)(cells));
      } catch (error) {
        refuse(error, cells, raw, line);
      }
    },
    refused(error, cells, raw, line) {
      counts.rows++;
      refuse(error, cells, raw, line);
    },
    async pause(share) {
      progress.show(counts.rows, share);
      const [good, bad] = [written, refusals];
      written = "";
      refusals = "";
      if (good !== "") await outputs.write(good);
      if (bad !== "") await outputs.refuse?.(bad);
    },
  };
  try {
    await visitInput(io, settings, visitor);
    await outputs.commit(counts.refused);
  } catch (error) {
    await outputs.discard();
    throw error;
  } finally {
    progress.end();
  }
  const more = outputs.refuse === undefined ? counts.refused - MOST_REASONS : 0;
  if (more > 0 && !json) io.err(`veladis: ${more} more refused; --refused <file> lists them all\n`);
  io.err(summaryText(settings, counts, (answers as unknown as RowAnswers).tally(), outputs.refusedPath));
  return counts.refused > 0 && !keepGoing ? exitCodes.refused : exitCodes.done;
}
