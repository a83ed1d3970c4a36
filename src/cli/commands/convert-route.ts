import type { ConvertedAmplitude } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { assumedText } from "../../reading/index";
import type { Io } from "../input/io";
import { type Line, linesOf } from "../input/lines";
import { inputStream } from "../input/open-file";
import { isRemark } from "../input/remark";
import { RouteHeadings, unusedHeading } from "../input/route-headings";
import { stateNotes } from "../input/state-at-reading";
import { answersOf, numberText } from "../print/answer";
import { answerLine } from "../print/answer-line";
import { exitCodes } from "../print/exit-codes";
import { explainedText } from "../print/explained";
import { failureText } from "../print/failure";
import { stateText } from "../print/state-text";
import { textTable } from "../print/text-table";
import { knownUncertainty, uncertaintyNote } from "../print/uncertain";
import type { ConvertSettings } from "./convert-settings";
import { type Placed, placedSentences } from "./placed-sentences";

function checkedTargets({ targets }: ConvertSettings): readonly string[] {
  if (targets.length > 0) return targets;
  throw new VeladisError("missing-option", {
    expected: 'the types to convert to, as in --to "mm/s rms"',
    received: "a file without them",
  });
}

/**
 * Converts a route file and prints it as one table, refused lines in their place with the reason below.
 */
export async function convertRoute(io: Io, settings: ConvertSettings): Promise<number> {
  const file = settings.file as string;
  const targets = checkedTargets(settings);
  const stream = await inputStream(io, file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "a route that is piped in, for --file -",
      received: "nothing",
    });
  }
  const rows: string[][] = [];
  const failures: string[] = [];
  const explained: (readonly [string, ConvertedAmplitude])[] = [];
  let json = "";
  let isAnyUncertain = false;
  const refuse = (error: unknown, number: number, place: string, written: string): void => {
    failures.push(failureText(error, settings.json, { ...(file !== "-" && { file }), line: number }));
    rows.push([`${number}`, place, written, ...targets.map(() => "-"), "REFUSED"]);
  };
  const add = ({ place, written, sentence: read }: Placed, number: number): void => {
    const sentence = read();
    const answers = answersOf(sentence, targets);
    for (const answer of answers) {
      json += answerLine(answer, sentence, settings, { line: number, place, ...sentence.state });
    }
    isAnyUncertain ||= answers.some((answer) => knownUncertainty(answer) !== undefined);
    explained.push(...answers.map((answer, i) => [`line ${number}, ${targets[i]}`, answer] as const));
    const notes = [
      ...new Set([
        ...answers.flatMap((one) => [assumedText(one), uncertaintyNote(one), stateText(one).trim()]),
        stateNotes(sentence.state).join("; "),
      ]),
    ]
      .filter(Boolean)
      .join(" ");
    rows.push([`${number}`, place, written, ...answers.map((answer) => numberText(answer, settings.digits)), notes]);
  };
  const addOrRefuse = (one: Placed, heading: string, number: number): void => {
    const place = [heading, one.place].filter((part) => part !== "").join(", ");
    try {
      add({ ...one, place }, number);
    } catch (error) {
      refuse(error, number, place, one.written);
    }
  };
  const headings = new RouteHeadings();
  const refuseUnused = (next: Line | undefined): void => {
    const heading = headings.unused(next);
    if (heading !== undefined) refuse(unusedHeading(heading), heading.number, heading.text.trim(), "");
  };
  for await (const line of linesOf(stream)) {
    let heading = "";
    try {
      if (isRemark(line.text, { bare: settings.from !== undefined })) continue;
      refuseUnused(line);
      const headed = headings.under(line);
      if (headed === undefined) continue;
      heading = headed.heading;
      for (const one of placedSentences(line.text, settings)) addOrRefuse(one, heading, line.number);
    } catch (error) {
      refuse(error, line.number, heading, line.text.trim().replace(/\s+/g, " "));
    }
  }
  refuseUnused(undefined);
  if (rows.length === 0) {
    throw new VeladisError("missing-option", {
      expected: "a route with at least one line that holds a reading",
      received: "nothing",
    });
  }
  const table = textTable(
    [
      { title: "line", align: "right" },
      { title: "place" },
      { title: "as read" },
      ...targets.map((title) => ({ title, align: "right" as const })),
      { title: "assumed" },
    ],
    rows,
  );
  const k = isAnyUncertain ? "± are expanded uncertainties, k = 2\n" : "";
  const count = `${k}${rows.length - failures.length} converted, ${failures.length} refused\n`;
  const steps = settings.explain && explained.length > 0 ? explainedText(explained) : "";
  await io.out(settings.json ? json : `${table}\n${count}${steps}`);
  if (failures.length > 0) io.err(`${settings.json ? "" : "\n"}${failures.join("")}`);
  return failures.length > 0 && !settings.keepGoing ? exitCodes.refused : exitCodes.done;
}
