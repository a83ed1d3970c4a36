import { parseNumeral, VeladisError } from "../../core/index";
import { format, significant } from "../../reading/index";
import { type Change, changeFromBaseline, classify, type Judgement } from "../../severity/index";
import type { Io } from "../input/io";
import type { Given } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { choiceOf } from "../options/scheme-choice";
import { assumedWords } from "../print/assumed-words";
import { exitCodes } from "../print/exit-codes";
import { explainedSteps, explainedText } from "../print/explained";
import { judgementText } from "../print/judgement-text";
import { labelled } from "../print/labelled";
import { answerLines } from "./answer-lines";
import type { judgePage } from "./judge-page";

function changeText(change: Change, digits: number): string {
  const { significant: is, direction, unit, detector } = change;
  const by = significant(Math.abs(change.change), digits);
  return [
    `\nsince the baseline: a ${direction === "none" ? "change" : direction} of ${by} ${unit} ${detector}, ${is ? "SIGNIFICANT" : "not significant"}`,
    ` (more than ${significant(change.allowed, digits)} ${unit} ${detector} is, a quarter of the limit B/C)\n`,
    labelled("caution", change.cautions),
  ].join("");
}

/** Judges one reading, or lines of readings, of one machine. */
export async function judgeReadings({ values, texts }: Given<typeof judgePage.options>, io: Io): Promise<number> {
  const digits = digitsOf(values.digits);
  const { scheme, others } = await choiceOf(values.scheme, values.machine);
  const machine = values.machine.trim() === "" ? {} : values.machine;
  const assume = values.strict ? "nothing" : "lowest limits";
  const crest = values["crest-factor"];
  const judged = (written: string): Judgement =>
    classify(written, {
      scheme,
      machine,
      assume,
      ...(crest !== undefined && { crestFactor: parseNumeral(crest, "a crest factor") }),
    });
  const steps = (judgement: Judgement): string => (values.explain ? explainedText([["", judgement]]) : "");
  const answer = (written: string, extra: object = {}): string => {
    const judgement = judged(written);
    const change =
      values.since === undefined ? undefined : changeFromBaseline(written, values.since, { scheme, machine, assume });
    if (!values.json) {
      const text = judgementText(judgement, { written, digits, colour: io.colour, others });
      return `${text}${change === undefined ? "" : changeText(change, digits)}${steps(judgement)}`;
    }
    const text = `${format(judgement.judged, { digits })}: ${judgement.zone}`;
    return `${JSON.stringify({ ...extra, written, text, ...judgement, ...explainedSteps(values.explain, ["", judgement]), ...(change && { change }), others: others.map((one) => one.scheme) })}\n`;
  };
  if (texts.length > 0) {
    await io.out(answer(texts.join(" ")));
    return exitCodes.done;
  }
  if (io.piped === undefined) {
    throw new VeladisError("missing-fact", {
      expected: 'a reading, as in veladis judge "4.1 mm/s rms"',
      received: "nothing",
    });
  }
  return answerLines(io, { json: values.json, keepGoing: values["keep-going"] }, (text, line) => {
    if (values.json) return answer(text, { line });
    const judgement = judged(text.trim());
    return lineText(text.trim(), judgement, digits) + steps(judgement);
  });
}

/** A judgement on one line, for many readings. */
function lineText(written: string, judgement: Judgement, digits: number): string {
  const { zone, word, limit, margin, verified, standard, edition, assumed, assumedFacts, judged } = judgement;
  const words = assumedWords({ assumed, assumedFacts, crestFactor: judged.crestFactor });
  const resting = words.length === 0 ? "" : `; assumed: ${words.join("; ")}`;
  const next = `${limit.name} ${format(limit.value, limit.as, { digits })}`;
  const known = verified ? "" : ", FROM MEMORY";
  return `${written}: ${zone}${word === zone ? "" : `, ${word}`}; ${next} (${margin.decibels.toFixed(1)} dB); ${standard} (${edition})${known}${resting}\n`;
}
