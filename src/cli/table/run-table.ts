import { pointedWords, VeladisError } from "../../core/index";
import { wholeAccount } from "../delimited/account-text";
import { accountOf, type RowAccount, readDelimited } from "../delimited/read-delimited";
import type { Io } from "../input/io";
import { openFile } from "../input/open-file";
import { confirmedOption } from "../options/confirmed-option";
import { givenScheme } from "../options/limits-option";
import { readParquet } from "../parquet/read-parquet";
import { isParquet, writtenParquet } from "../parquet/written-parquet";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";
import { byteSink } from "./byte-sink";
import { progressOf } from "./progress";
import { type RowAnswers, rowAnswers } from "./row-answers";
import { csvOutput, jsonOutput, type RowOutput } from "./row-output";
import type { RowVisitor } from "./row-source";
import type { TableSettings } from "./settings";
import { type Counts, summaryText } from "./summary";
import { outputsOf } from "./table-outputs";

/** Reasons shown on standard error where refused rows have no file to go to. */
const MOST_REASONS = 10;

/** What became of the rows of the input; of Parquet, whether each page has a checksum. */
interface InputRead {
  readonly account: RowAccount;
  readonly summed?: boolean;
}

/** Shows the rows of the input to a visitor. */
async function visitInput(io: Io, { file, written }: TableSettings, visitor: RowVisitor): Promise<InputRead> {
  if (isParquet(file)) return accountOf(readParquet(file, visitor), (share) => visitor.pause(share));
  if (file !== undefined) {
    const stream = await openFile(file);
    const { size } = stream;
    const reading = readDelimited(stream, file, written, visitor);
    return { account: await accountOf(reading, (read) => visitor.pause(read / size)) };
  }
  if (io.piped !== undefined) {
    const reading = readDelimited(io.piped, "standard input", written, visitor);
    return { account: await accountOf(reading, () => visitor.pause(undefined)) };
  }
  throw new VeladisError("missing-option", {
    expected: 'a file or piped CSV, as in veladis table readings.csv --column value --from "mm/s rms" --to "in/s pk"',
    received: "nothing",
  });
}

/** Refuses a table without rows: nothing would look like an answer. */
function requireRows({ rows }: Counts, file: string | undefined): void {
  if (rows > 0) return;
  throw new VeladisError("missing-fact", {
    expected: isParquet(file) ? "a Parquet file with rows" : "a header line, and rows below it",
    received: "no rows",
  });
}

/**
 * Answers every row of a table and writes it with columns added; refused rows go elsewhere, with line and reason.
 *
 * Resolves to the exit code. What stops it on the way leaves no output behind.
 *
 * @throws {@link VeladisError} for options, input or output that cannot be; never for a single row
 */
export async function runTable(io: Io, given: TableSettings): Promise<number> {
  const settings = isParquet(given.file) ? { ...given, written: writtenParquet(given.written) } : given;
  const { json, keepGoing, file } = settings;
  const schemes = await confirmedOption(settings.confirmed, io, json, [settings.scheme]);
  const told = { ...settings, "decimal-comma": settings.written.decimalComma };
  const scheme = await givenScheme(told, pointedWords(settings.machine, settings.written.decimalComma), schemes);
  const outputs = await outputsOf(io, settings);
  const progress = progressOf(io, file);
  const counts: Counts = { rows: 0, refused: 0, beyondRange: 0 };
  let answers: RowAnswers | undefined;
  let output: RowOutput | undefined;
  const written = byteSink();
  const refusals = byteSink();

  const refuse = (error: unknown, cells: readonly string[], raw: string, line: number): void => {
    if (!(error instanceof VeladisError)) throw error;
    counts.refused++;
    if (error.code === "sensor-fault") counts.beyondRange++;
    if (outputs.refuse !== undefined) refusals.text((output as RowOutput).refusedRow({ raw, cells, line }, error));
    else if (counts.refused <= MOST_REASONS) io.err(failureText(error, json, { ...(file && { file }), line }));
  };
  const visitor: RowVisitor = {
    header(cells, raw, form, units) {
      answers = rowAnswers(cells, settings, { scheme, schemes }, units);
      output = json
        ? jsonOutput(answers.titles, cells, form)
        : csvOutput(answers.titles, form, settings.written.decimalComma);
      written.text(output.header(raw, units?.raw));
      refusals.text(output.refusedHeader(raw));
    },
    row(cells, raw, line) {
      counts.rows++;
      try {
        (output as RowOutput).row(written, { raw, cells, line }, (answers as RowAnswers)(cells));
      } catch (error) {
        refuse(error, cells, raw, line);
      }
    },
    refused(error, raw, line, cells) {
      counts.rows++;
      refuse(error, cells, raw, line);
    },
    async pause(share) {
      progress.show(counts.rows, share);
      // a header waits for its first row
      if (output === undefined || counts.rows === 0) return;
      // a terminal shows text, whatever the encoding of the file
      const toTerminal = settings.out === undefined && io.terminal;
      const good = toTerminal ? written.take() : output.encoded(written.take());
      const bad = output.encoded(refusals.take());
      if (good.length > 0) await outputs.write(good);
      if (bad.length > 0) await outputs.refuse?.(bad);
    },
  };
  let read: InputRead;
  let removed: string | undefined;
  try {
    read = await visitInput(io, settings, visitor);
    wholeAccount(read.account, { answered: counts.rows - counts.refused, refused: counts.refused });
    requireRows(counts, file);
    removed = await outputs.commit(counts.refused);
  } catch (error) {
    await outputs.discard();
    throw error;
  } finally {
    progress.end();
  }
  const more = outputs.refuse === undefined ? counts.refused - MOST_REASONS : 0;
  if (more > 0 && !json) io.err(`veladis: ${more} more refused; --refused <file> lists them all\n`);
  const answered = (answers as unknown as RowAnswers).counts();
  io.err(summaryText(settings, { counts, answered, ...read, refusedPath: outputs.refusedPath, removed }));
  if (counts.refused > 0 && !keepGoing) return exitCodes.refused;
  if (settings.failFrom === undefined) return exitCodes.done;
  if (answered.reached + counts.beyondRange > 0) return exitCodes.reached;
  // a gate is not to pass where no row was judged
  return counts.rows > counts.refused ? exitCodes.done : exitCodes.refused;
}
