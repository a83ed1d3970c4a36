import { assumedText, equivalents, type FormatOptions, format, significant } from "../../amplitude/index";
import { numeral, VeladisError } from "../../core/index";
import type { Sentence } from "../../sentence/index";
import type { Io } from "../input/io";
import { splitPlace } from "../input/split-place";
import { alone, parsedArguments } from "../options/arguments";
import { targetsOf } from "../options/option-values";
import { answerObject, answersOf } from "../print/answer";
import { exitCodes } from "../print/exit-codes";
import { textTable } from "../print/text-table";
import { answerLines } from "./answer-lines";
import type { Command } from "./command";
import { help } from "./convert-help";
import { type ConvertSettings, sentenceOf } from "./convert-settings";

const options = {
  to: { type: "string" },
  from: { type: "string" },
  at: { type: "string" },
  file: { type: "string" },
  column: { type: "string" },
  digits: { type: "string", default: "3" },
  json: { type: "boolean", default: false },
  "keep-going": { type: "boolean", default: false },
} as const;

function equivalentsTable({ reading, written, options: told }: Sentence, digits: FormatOptions): string {
  const rows = equivalents(reading, told);
  const cell = (value: number): string => significant(value, digits.digits);
  const table = textTable(
    [{ title: "" }, ...["rms", "pk", "pp"].map((title) => ({ title, align: "right" as const }))],
    rows.map(({ unit, rms, pk, pp }) => [unit, cell(rms.value), cell(pk.value), cell(pp.value)]),
  );
  const assumed = new Set(rows.flatMap((row) => [assumedText(row.rms), assumedText(row.pk)]));
  const how = [...assumed].sort((a, b) => b.length - a.length)[0];
  const hint = reading.hertz === undefined ? "\nwith a frequency (at 1500 r/min) also the other quantities\n" : "";
  return `${written} ${how}\n\n${table}${hint}`;
}

/** The answer to one sentence, as it is printed. */
function answerText(sentence: Sentence, settings: ConvertSettings, extra: object = {}): string {
  const { digits, json } = settings;
  const targets = sentence.targets.length > 0 ? sentence.targets : settings.targets;
  if (json) {
    const answers =
      targets.length > 0
        ? answersOf(sentence, targets)
        : equivalents(sentence.reading, sentence.options).flatMap(({ rms, pk, pp }) => [rms, pk, pp]);
    return answers.map((answer) => `${JSON.stringify(answerObject(answer, sentence, digits, extra))}\n`).join("");
  }
  if (targets.length === 0) return equivalentsTable(sentence, { digits });
  return answersOf(sentence, targets)
    .map((answer) => `${sentence.written} = ${format(answer, { digits })}  ${assumedText(answer)}`.trimEnd())
    .map((line) => `${line}\n`)
    .join("");
}

/** The answer to a line of standard input, behind its place if it has one. */
function lineText(text: string, settings: ConvertSettings, line: number): string {
  const [place, reading] = splitPlace(text);
  const answer = answerText(sentenceOf(reading, settings), settings, { line, ...(place && { place }) });
  return place && !settings.json ? `${place}: ${answer}` : answer;
}

/** The digits option as a number. */
export function digitsOf(written: string): number {
  const digits = numeral(written, "a number of significant digits");
  significant(1, digits);
  return digits;
}

async function run(args: readonly string[], io: Io): Promise<number> {
  const { values, positionals } = parsedArguments(args, options);
  const settings: ConvertSettings = {
    targets: targetsOf(values.to),
    from: values.from,
    at: values.at,
    file: values.file,
    column: values.column,
    digits: digitsOf(values.digits),
    json: values.json,
    keepGoing: values["keep-going"],
  };
  for (const option of ["file", "column"] as const) if (values[option] !== undefined) alone(option, positionals);
  if (positionals.length > 0) {
    await io.out(answerText(sentenceOf(positionals.join(" "), settings), settings));
    return exitCodes.done;
  }
  if (settings.column !== undefined) return (await import("./convert-column")).convertColumn(io, settings);
  if (settings.file !== undefined) return (await import("./convert-route")).convertRoute(io, settings);
  if (io.piped !== undefined) {
    return answerLines(io, settings, (text, line) => lineText(text, settings, line));
  }
  throw new VeladisError("missing-fact", {
    expected: 'a reading, as in veladis "0.25 in/s pk at 1500 r/min to mm/s rms"',
    received: "nothing",
  });
}

/** Converts one reading, lines of readings, a route file or a column of a CSV file. */
export const convertCommand: Command = { help, run };
