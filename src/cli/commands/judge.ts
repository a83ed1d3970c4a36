import { parseNumeral, VeladisError } from "../../core/index";
import { format } from "../../reading/index";
import { changeFromBaseline, type Judgement, judgePoints } from "../../severity/index";
import type { Io } from "../input/io";
import { confirmedOption } from "../options/confirmed-option";
import { type JudgeSettings, judgeOf, judgeOptions } from "../options/judge-of";
import { schemeAmong, statedScheme } from "../options/named-scheme";
import type { Given } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { changeText } from "../print/change-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { judgementText } from "../print/judgement-text";
import { pointsText } from "../print/points-text";
import { pointsLine, verdictLine } from "../print/verdict-line";
import { answerLines } from "./answer-lines";
import type { judgePage } from "./judge-page";

/** What is printed of an answer: a page, a line among many, or data. */
type Form = "page" | "line" | "data";

/** Whether a text names points: a reading alone begins with its number. */
function namesPoints(text: string): boolean {
  return /^\p{L}/u.test(text);
}

function refuseSince(): never {
  throw new VeladisError("out-of-range", {
    expected: "one reading and its baseline, since each point has a baseline of its own",
    received: "--since with several points",
  });
}

/** Judges one reading, readings of several points, or lines of them, of one machine. */
export async function judgeReadings({ values, texts }: Given<typeof judgePage.options>, io: Io): Promise<number> {
  const digits = digitsOf(values.digits);
  const { machine, since, explain, json } = values;
  const schemes = await confirmedOption(values.confirmed, io, json);
  const scheme = await statedScheme(values.scheme, machine, schemes);
  const crest = values["crest-factor"];
  const settings: JudgeSettings = {
    ...{ scheme, schemes, machine, strict: values.strict },
    ...(values.background !== undefined && { background: values.background }),
    ...(crest !== undefined && { crestFactor: parseNumeral(crest, "a crest factor") }),
  };
  const options = judgeOptions(settings);
  const judged = judgeOf(settings);
  const changeOf = (written: string, judgement: Judgement) =>
    since === undefined
      ? undefined
      : changeFromBaseline(written, since, {
          scheme: scheme ?? schemeAmong(judgement.scheme, schemes),
          assume: options.assume,
          ...(machine.trim() !== "" && { machine }),
        });
  const ofReading = (written: string, form: Form, extra: object): string => {
    const verdict = judged(written);
    const change = changeOf(written, verdict);
    const explained: Explained = ["", verdict];
    if (form === "data") {
      const text = `${format(verdict.judged, { digits })}: ${verdict.headline}`;
      return `${JSON.stringify({ ...extra, written, text, ...verdict, ...explainedSteps(explain, explained), ...(change && { change }) })}\n`;
    }
    const steps = explain ? explainedText([explained]) : "";
    if (form === "line") return verdictLine(written, verdict, digits) + steps;
    const text = judgementText(verdict, { written, digits, colour: io.colour });
    return `${text}${change === undefined ? "" : changeText(change, digits)}${steps}`;
  };
  const ofPoints = (written: string, form: Form, extra: object): string => {
    if (since !== undefined) refuseSince();
    const { background } = values;
    const rest = background === undefined ? {} : { background };
    const answer = judgePoints(written, machine, {
      ...options,
      ...rest,
      ...(scheme ? { scheme } : schemes && { schemes }),
    });
    const explained = answer.points.map(({ point, verdict }): Explained => [point, verdict]);
    if (form === "data") {
      const text = `${answer.governing.point}: ${answer.headline}`;
      return `${JSON.stringify({ ...extra, written, text, ...answer, ...explainedSteps(explain, ...explained) })}\n`;
    }
    const steps = explain ? explainedText(explained) : "";
    return (form === "line" ? pointsLine(answer, digits) : pointsText(answer, { digits, colour: io.colour })) + steps;
  };
  const answer = (written: string, form: Form, extra: object = {}): string =>
    (namesPoints(written) ? ofPoints : ofReading)(written, form, extra);
  if (texts.length > 0) {
    await io.out(answer(texts.join(" ").trim(), json ? "data" : "page"));
    return exitCodes.done;
  }
  if (io.piped === undefined) {
    throw new VeladisError("missing-fact", {
      expected: 'a reading, as in veladis judge "4.1 mm/s rms"',
      received: "nothing",
    });
  }
  return answerLines(io, { json, keepGoing: values["keep-going"] }, (text, line) =>
    answer(text.trim(), json ? "data" : "line", json ? { line } : {}),
  );
}
