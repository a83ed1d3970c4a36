import { conversionAssumes, convertAmplitude } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { assumedText, parseAmplitude, readingType, writtenValue } from "../../reading/index";
import { headedColumn } from "../delimited/column-index";
import { csvRows } from "../input/csv-rows";
import type { Io } from "../input/io";
import { openFile } from "../input/open-file";
import { exitCodes } from "../print/exit-codes";
import { explainedSteps } from "../print/explained";
import { failureText } from "../print/failure";
import type { ConvertSettings } from "./convert-settings";

/** Converts one column of CSV, row for row: the row as it was, with a column more for each target. */
export async function convertColumn(io: Io, settings: ConvertSettings): Promise<number> {
  const { column, file, from, at, targets, explain, json, keepGoing } = settings;
  const stream = file === undefined ? io.piped : await openFile(file);
  if (from === undefined || targets.length === 0 || stream === undefined) {
    throw new VeladisError("missing-fact", {
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
  const type = readingType(from);
  const suffix = `${type}${at === undefined ? "" : ` at ${at}`}`;
  const titles = targets.map((target) =>
    `${target} ${assumedText({ assumed: conversionAssumes(type, target) })}`.trim(),
  );
  let index = -1;
  let converted = 0;
  let refused = 0;
  for await (const { line, cells, raw } of csvRows(stream)) {
    if (index < 0) {
      index = headedColumn(cells, column as string);
      if (!json) await io.out(Buffer.from(`${[raw, ...titles].join(",")}\n`));
      continue;
    }
    try {
      const reading = parseAmplitude(`${cells[index] ?? ""} ${suffix}`);
      const answers = targets.map((target) => convertAmplitude(reading, target));
      converted++;
      await io.out(
        json
          ? answers
              .map(
                (answer) =>
                  `${JSON.stringify({ line, ...answer, ...explainedSteps(explain, ["", answer]), from: reading })}\n`,
              )
              .join("")
          : Buffer.from(`${[raw, ...answers.map(writtenValue)].join(",")}\n`),
      );
    } catch (error) {
      refused++;
      io.err(failureText(error, json, { ...(file !== undefined && { file }), line }));
      if (!json) await io.out(Buffer.from(`${[raw, ...targets.map(() => "")].join(",")}\n`));
    }
  }
  const assumed = titles.filter((title) => title.endsWith(")")).join("; ");
  io.err(json ? "" : `${converted} rows converted, ${refused} refused${assumed && `; assumed: ${assumed}`}\n`);
  return refused > 0 && !keepGoing ? exitCodes.refused : exitCodes.done;
}
