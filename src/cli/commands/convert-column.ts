import { conversionAssumes, convertAmplitude } from "../../amplitude/index";
import { counted, shown, VeladisError } from "../../core/index";
import { assumedText, parseAmplitude, readingType, writtenValue } from "../../reading/index";
import { accountText } from "../delimited/account-text";
import { type DelimitedWriter, delimitedWriter } from "../delimited/delimited-writer";
import { typeTold } from "../delimited/heading-agrees";
import { requireNewTitles } from "../delimited/new-titles";
import { numberCell } from "../delimited/number-cell";
import { accountOf, type DelimitedVisitor, readDelimited } from "../delimited/read-delimited";
import { type RowRefused, rowUnitsRefusal } from "../delimited/row-units";
import { headingsOf } from "../delimited/units-row";
import { headedColumn } from "../input/headed-column";
import type { Io } from "../input/io";
import { inputStream } from "../input/open-file";
import { measured, type SignalColumn, signalColumn } from "../input/signal-column";
import { exitCodes } from "../print/exit-codes";
import { explainedSteps } from "../print/explained";
import { failureText } from "../print/failure";
import { jsonLine } from "../print/json-line";
import type { ConvertSettings } from "./convert-settings";

/** What is converted, and to what. */
interface Asked {
  readonly type: string;
  /** How the numbers become that, where they are a signal. */
  readonly signal: SignalColumn | undefined;
  /** What tells it. */
  readonly by: string;
  /** What stands behind a bare number. */
  readonly suffix: string;
  /** Titles of the columns that are added. */
  readonly titles: readonly string[];
}

function askedOf({ from, at, source, targets, explain, json }: ConvertSettings): Asked {
  if (from === undefined || targets.length === 0) {
    throw new VeladisError("missing-option", {
      expected: 'a file or piped CSV, with --from "g rms" and --to "m/s2 rms" beside --column',
      received: "--column without them",
    });
  }
  if (explain && !json) {
    throw new VeladisError("unknown-option", {
      expected: "--explain with --json, since a row of CSV has no room for steps",
      received: "--explain with --column",
    });
  }
  const signal = signalColumn(from, source);
  const type = signal?.type ?? readingType(from);
  const titles = targets.map((target) =>
    `${target} ${assumedText({ assumed: conversionAssumes(type, target) })}`.trim(),
  );
  return { type, signal, by: `--from ${shown(from)}`, suffix: `${type}${at === undefined ? "" : ` at ${at}`}`, titles };
}

/** Rows converted, as text or JSON, that has not been written yet. */
function columnVisitor(io: Io, settings: ConvertSettings, { type, signal, by, suffix, titles }: Asked) {
  const { column, file, targets, written, explain, json } = settings;
  const counts = { answered: 0, refused: 0 };
  const nothing = targets.map(() => "");
  let writer: DelimitedWriter | undefined;
  const told = signal?.told ?? typeTold(by, type);
  let unitRefused: RowRefused = () => undefined;
  let index = -1;
  let width = 0;
  let text = "";

  const refuse = (error: unknown, line: number): void => {
    io.err(failureText(error, json, { ...(file !== undefined && { file }), line }));
    counts.refused++;
  };
  const visitor: DelimitedVisitor = {
    header(cells, raw, form, units) {
      index = headedColumn(cells, column as string, written);
      unitRefused = rowUnitsRefusal(headingsOf(cells, units, written), { read: [index] }, told, written);
      width = cells.length;
      writer = delimitedWriter(form, written.decimalComma);
      requireNewTitles(cells, titles);
      if (json) return;
      text = writer.start + writer.row(writer.kept(raw), titles.map(writer.cell));
      // with nothing below the new titles, which say their units themselves
      if (units !== undefined) text += writer.row(writer.kept(units.raw), nothing);
    },
    row(cells, raw, line) {
      const { kept, row, number } = writer as DelimitedWriter;
      let before: string | undefined;
      try {
        if (!json) before = kept(raw);
        const cell = cells[index] as string;
        const otherUnit = unitRefused(cells);
        if (otherUnit !== undefined) throw otherUnit;
        const plain = numberCell(cell, "a reading", written.decimalComma);
        const value = signal === undefined ? plain : measured(signal, plain);
        const reading = parseAmplitude(`${value} ${suffix}`);
        const answers = targets.map((target) => convertAmplitude(reading, target));
        for (const answer of json ? answers : []) {
          text += jsonLine(
            "conversion",
            { ...answer, from: reading },
            { line, ...explainedSteps(explain, ["", answer]) },
          );
        }
        if (before !== undefined)
          text += row(
            before,
            answers.map((answer) => number(writtenValue(answer))),
          );
        counts.answered++;
      } catch (error) {
        refuse(error, line);
        if (before !== undefined) text += row(before, nothing);
      }
    },
    refused(error, raw, line, cells) {
      refuse(error, line);
      // behind a row of another width an empty cell, or one of its own, would stand in the new column
      const { kept, row } = writer as DelimitedWriter;
      if (!json && cells.length === width) text += row(kept(raw), nothing);
    },
  };
  return {
    ...{ visitor, counts },
    /** Writes what there is. */
    async flush(): Promise<void> {
      // a header waits for its first row
      if (text === "" || counts.answered + counts.refused === 0) return;
      const ready = text;
      text = "";
      const bytes = Buffer.from(ready, "latin1");
      const encoded = io.terminal ? bytes : (writer as DelimitedWriter | undefined)?.encoded(bytes);
      await io.out(json ? ready : (encoded ?? bytes));
    },
  };
}

/**
 * Converts one column of delimited text, row for row: the row as it was, with a column more for each target. Separator,
 * encoding and line ends stay. A refused row has nothing in the new columns; one of another width than the header is
 * told alone, since what is added would stand in another column.
 */
export async function convertColumn(io: Io, settings: ConvertSettings): Promise<number> {
  const { file, written, json, keepGoing } = settings;
  const asked = askedOf(settings);
  const stream = await inputStream(io, file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "a file, or piped CSV, beside --column",
      received: "nothing",
    });
  }
  const { visitor, counts, flush } = columnVisitor(io, settings, asked);
  const account = await accountOf(readDelimited(stream, file ?? "standard input", written, visitor), flush);
  const { answered, refused } = counts;
  if (answered + refused === 0) {
    throw new VeladisError("missing-fact", { expected: "a header line, and rows below it", received: "no rows" });
  }
  const assumed = asked.titles.filter((title) => title.endsWith(")")).join("; ");
  if (!json) io.err(`${counted(answered, "row")} converted, ${refused} refused${assumed && `; assumed: ${assumed}`}\n`);
  io.err(accountText(account, counts, json));
  return refused > 0 && !keepGoing ? exitCodes.refused : exitCodes.done;
}
