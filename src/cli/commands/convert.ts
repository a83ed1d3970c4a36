import { type ConvertedAmplitude, equivalents } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { assumedText, historyOf, isUncertain } from "../../reading/index";
import { toldOf, writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { namedFile } from "../input/open-file";
import { stateNotes } from "../input/state-at-reading";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf, targetsOf } from "../options/option-values";
import { requireAlone } from "../options/parsed-arguments";
import { requireSignal, signalSource } from "../options/signal-options";
import { frequencyTold, requireBareSpeed } from "../options/speed-unit";
import { answersOf, numberText } from "../print/answer";
import type { answerLine } from "../print/answer-line";
import { exitCodes } from "../print/exit-codes";
import { explainedText } from "../print/explained";
import { stateText } from "../print/state-text";
import { textTable } from "../print/text-table";
import { uncertainText, uncertaintyNote } from "../print/uncertain";
import { answerLines } from "./answer-lines";
import type { convertPage } from "./convert-page";
import { type ConvertSettings, type NotedSentence, sentenceOf } from "./convert-settings";
import { placedSentences } from "./placed-sentences";

/** What was noted beside the reading, for behind its answer. */
function notesText({ state }: NotedSentence): string {
  const notes = stateNotes(state);
  return notes.length === 0 ? "" : `  (${notes.join("; ")})`;
}

/** A reading in all everyday types, as a table. */
function equivalentsTable(sentence: NotedSentence, settings: ConvertSettings): string {
  const { reading, written, options } = sentence;
  const rows = equivalents(reading, options);
  const cell = (answer: ConvertedAmplitude): string => numberText(answer, settings.digits);
  const table = textTable(
    [{ title: "" }, ...["rms", "pk", "pp"].map((title) => ({ title, align: "right" as const }))],
    rows.map(({ unit, rms, pk, pp }) => [unit, cell(rms), cell(pk), cell(pp)]),
  );
  const assumed = new Set(rows.flatMap((row) => [assumedText(row.rms), assumedText(row.pk)]));
  const how = [...assumed].sort((a, b) => b.length - a.length)[0];
  const note = [...new Set(rows.map(({ rms }) => uncertaintyNote(rms)))].join(" ");
  const hint = reading.hertz === undefined ? "\nwith a frequency (at 1500 r/min) also the other quantities\n" : "";
  const cells = rows.flatMap(({ rms, pk, pp }) => [rms, pk, pp]);
  const steps = settings.explain ? explainedText(cells.map((one) => [`${one.unit} ${one.detector}`, one])) : "";
  const k = isUncertain(historyOf(reading)) ? `\n± are expanded uncertainties, k = 2  ${note}`.trimEnd() : "";
  return `${written} ${how}${stateText(reading)}${notesText(sentence)}\n\n${table}${k === "" ? "" : `${k}\n`}${hint}${steps}`;
}

/** What writes an answer as a line of JSON, loaded where it is asked for. */
type InJson = typeof answerLine | undefined;

/** The answer to one sentence, as it is printed. */
function answerText(sentence: NotedSentence, settings: ConvertSettings, inJson: InJson, given: object = {}): string {
  const extra = { ...given, ...sentence.state };
  const { digits, explain } = settings;
  const targets = sentence.targets.length > 0 ? sentence.targets : settings.targets;
  if (inJson !== undefined) {
    const answers =
      targets.length > 0
        ? answersOf(sentence, targets)
        : equivalents(sentence.reading, sentence.options).flatMap(({ rms, pk, pp }) => [rms, pk, pp]);
    return answers.map((answer) => inJson(answer, sentence, settings, extra)).join("");
  }
  if (targets.length === 0) return equivalentsTable(sentence, settings);
  const answers = answersOf(sentence, targets);
  const lines = answers.map((answer) =>
    `${sentence.written} = ${uncertainText(answer, digits)}  ${assumedText(answer)} ${uncertaintyNote(answer)}`
      .replace(/ {3,}/, "  ")
      .trimEnd()
      .concat(notesText(sentence)),
  );
  const named = answers.map((answer, i) => [answers.length > 1 ? (targets[i] as string) : "", answer] as const);
  return `${lines.join("\n")}\n${explain ? explainedText(named) : ""}`;
}

/** The answers to a line of standard input, each behind its place if it has one. */
function lineText(text: string, settings: ConvertSettings, inJson: InJson, line: number): string {
  return placedSentences(text, settings)
    .map(({ place, sentence }) => {
      const answer = answerText(sentence(), settings, inJson, { line, ...(place && { place }) });
      return place && !settings.json ? `${place}: ${answer}` : answer;
    })
    .join("");
}

/** Converts one reading, lines of readings, a route file or a column of a CSV file. */
export async function convertReadings(
  { values, texts }: ParsedOptions<typeof convertPage.options>,
  io: Io,
): Promise<number> {
  const { to, from, at, file, column, digits, explain, json } = values;
  const settings: ConvertSettings = {
    ...{
      targets: targetsOf(to),
      from,
      at: frequencyTold(at, values["speed-unit"]),
      file: column === undefined ? file : namedFile(file),
      column,
      digits: digitsOf(digits),
      explain,
      json,
    },
    ...{
      written: writtenAs(values),
      source: signalSource(values),
      speedUnit: values["speed-unit"],
      keepGoing: values["keep-going"],
    },
  };
  for (const option of ["file", "column"] as const) if (values[option] !== undefined) requireAlone(option, texts);
  const told = toldOf(settings.written);
  if (column === undefined && told.length > 0) {
    throw new VeladisError("unknown-option", {
      expected: "--column, for the options that say how its file is written",
      received: told.join(" "),
    });
  }
  const inJson = json ? (await import("../print/answer-line")).answerLine : undefined;
  if (texts.length > 0) {
    requireSignal(settings.source, `${texts.join(" ")} ${from ?? ""}`.trim());
    requireBareSpeed(settings.speedUnit, texts.join(" "), at === undefined ? undefined : `at ${at}`);
    await io.out(answerText(sentenceOf(texts.join(" "), settings), settings, inJson));
    return exitCodes.done;
  }
  if (column !== undefined) {
    requireBareSpeed(settings.speedUnit, `at ${at ?? ""}`);
    return (await import("./convert-column")).convertColumn(io, settings);
  }
  if (file !== undefined) return (await import("./convert-route")).convertRoute(io, settings);
  if (io.piped !== undefined) {
    return answerLines(io, settings, (text, line) => lineText(text, settings, inJson, line));
  }
  throw new VeladisError("missing-option", {
    expected: 'a reading, as in veladis "0.25 in/s pk at 1500 r/min to mm/s rms"',
    received: "nothing",
  });
}
