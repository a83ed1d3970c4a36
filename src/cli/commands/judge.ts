import {
  decidedVerdict,
  pointsWithin,
  uncertainPoints,
  type ZoneRule,
  type ZonesWithin,
  zoneRules,
  zonesWithin,
} from "../../conformity/index";
import { parseNumeral, plainNumerals, requireChoice, VeladisError } from "../../core/index";
import { type Amplitude, format, isUncertain } from "../../reading/index";
import {
  changeFromBaseline,
  type Judgement,
  judgePoints,
  namesPoints,
  type Scheme,
  type Verdict,
} from "../../severity/index";
import { pointedWords } from "../delimited/decimal-words";
import type { Io } from "../input/io";
import { backgroundOption, pointsWithTold, withTold } from "../options/background-option";
import { confirmedOption } from "../options/confirmed-option";
import { isReached } from "../options/fail-from";
import { fullAnswer } from "../options/full-answer";
import { type JudgeSettings, judgeOf, judgeOptions } from "../options/judge-of";
import { schemeOfLimits } from "../options/limits-option";
import { schemeAmong, statedScheme } from "../options/named-scheme";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { requireSignal, signalSource, vibrationOf } from "../options/signal-options";
import { uncertainReading } from "../options/uncertain-reading";
import { changeText } from "../print/change-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { judgementText } from "../print/judgement-text";
import { pointsText } from "../print/points-text";
import { tableNotes } from "../print/table-notes";
import { pointsLine, verdictLine } from "../print/verdict-line";
import { withinLine, withinText } from "../print/within-text";
import { zonesPlot } from "../print/zones-plot";
import { answerLines } from "./answer-lines";
import { requireChart, writeChart } from "./chart-file";
import type { judgePage } from "./judge-page";
import { oneToDraw, pictureAsked } from "./one-to-draw";
import { plotWidth } from "./plot-width";

/** What is printed of an answer: a page, a line among many, or data. */
type Form = "page" | "line" | "data";

/** The options that hold numbers, and the reader of a reading, with points for decimals. */
function writtenNumbers({
  "decimal-comma": decimalComma,
  "crest-factor": crest,
  ...values
}: ParsedOptions<typeof judgePage.options>["values"]) {
  const readingIn = (text: string): string => (decimalComma ? plainNumerals(text, { decimal: "," }) : text);
  const told = (text: string | undefined): string | undefined => (text === undefined ? undefined : readingIn(text));
  return {
    machine: pointedWords(values.machine, decimalComma),
    since: told(values.since),
    uncertainty: told(values.uncertainty),
    background: told(values.background),
    crest: told(crest),
    source: signalSource({ sensor: told(values.sensor), loop: told(values.loop) }),
    limits: told(values.limits),
    readingIn,
  };
}

/** Options that stand for one reading alone, refused beside several points. */
function refuseOfOne(values: ParsedOptions<typeof judgePage.options>["values"]): void {
  if (values.since !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "one reading and its baseline, since each point has a baseline of its own",
      received: "--since with several points",
    });
  }
  if (values.uncertainty === undefined) return;
  throw new VeladisError("out-of-range", {
    expected:
      'one reading with its uncertainty; of several points, each with its own: "DE-H 3.1 ± 0.2 (k=2), DE-V 2.2 mm/s rms"',
    received: "--uncertainty with several points",
  });
}

/** What a rule asks for that the reading does not have, or the baseline cannot. */
function requireFits(isKnown: boolean, { rule, since }: ParsedOptions<typeof judgePage.options>["values"]): void {
  if (isKnown && since !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "a reading without an uncertainty: whether a change is significant is told of best values alone",
      received: "--since with an uncertainty",
    });
  }
  if (rule !== undefined) requireChoice(rule, Object.keys(zoneRules), "a decision rule");
  if (isKnown || rule !== "guard band") return;
  throw new VeladisError("missing-fact", {
    expected: 'a reading with its uncertainty, such as "4.9 ± 0.3 mm/s rms (k=2)", for --rule',
    received: "one without",
  });
}

/** The scheme of limits that are given, in the place of one that is named. */
function limitsAlone({
  limits,
  scheme,
  confirmed,
}: Pick<ParsedOptions<typeof judgePage.options>["values"], "scheme" | "confirmed"> & {
  readonly limits: string;
}): Scheme {
  if (scheme === undefined && confirmed.length === 0) return schemeOfLimits(limits);
  throw new VeladisError("unknown-option", {
    expected: "--limits in the place of --scheme and --confirmed",
    received: scheme === undefined ? "--confirmed too" : "--scheme too",
    option: "limits",
  });
}

/** Judges one reading, readings of several points, or lines of them, of one machine. */
export async function judgeReadings(
  { values, texts }: ParsedOptions<typeof judgePage.options>,
  io: Io,
): Promise<number> {
  requireChart(values);
  const width = plotWidth(io, values);
  const pictured = pictureAsked(values);
  const digits = digitsOf(values.digits);
  const { explain, json, rule } = values;
  const { machine, since, uncertainty, crest, background: atRest, source, limits, readingIn } = writtenNumbers(values);
  const full = fullAnswer(values);
  const schemes = await confirmedOption(values.confirmed, io, json, [values.scheme]);
  const scheme =
    limits === undefined ? await statedScheme(values.scheme, machine, schemes) : limitsAlone({ ...values, limits });
  const settings: JudgeSettings = {
    ...{ scheme, schemes, machine, strict: values.strict },
    ...(crest !== undefined && { crestFactor: parseNumeral(crest, "a crest factor") }),
  };
  const options = judgeOptions(settings);
  const { background, told } = backgroundOption(atRest, source);
  const judged = judgeOf({ ...settings, background });
  const changeOf = (written: string, judgement: Judgement) =>
    since === undefined
      ? undefined
      : changeFromBaseline(vibrationOf(written, source), vibrationOf(since, source), {
          scheme: scheme ?? schemeAmong(judgement.scheme, schemes),
          assume: options.assume,
          ...(machine.trim() !== "" && { machine }),
        });
  let drawn: { readonly judgement: Verdict; readonly within?: ZonesWithin } | undefined;
  let reached = false;
  const noted = (verdicts: readonly Verdict[]): void => {
    reached ||= isReached(values["fail-from"], verdicts);
  };
  const page = { digits, full, colour: io.colour, notes: tableNotes(scheme ? [scheme] : schemes) };
  const withinOf = (reading: string | Amplitude, verdict: Verdict): ZonesWithin | undefined => {
    const isKnown = typeof reading === "object" && isUncertain(reading.history ?? []);
    requireFits(isKnown, values);
    return isKnown ? zonesWithin(verdict, { ...(rule && { rule: rule as ZoneRule }) }) : undefined;
  };
  const ofReading = (written: string, form: Form, extra: object): string => {
    const reading = uncertainReading(written, uncertainty, source);
    if (Array.isArray(background)) {
      throw new VeladisError("wrong-type", {
        expected: "one reading with the machine stopped for one that is judged",
        received: "those of several points",
      });
    }
    const ofBest = withTold(judged(reading), told);
    const within = withinOf(reading, ofBest);
    const verdict = within === undefined ? ofBest : decidedVerdict(ofBest, within);
    noted([verdict]);
    drawn = { judgement: ofBest, ...(within && { within }) };
    const change = changeOf(written, verdict);
    const explained: Explained[] = [["", verdict]];
    if (within !== undefined) explained.splice(0, 1, ["verdict", verdict], ["uncertainty", within]);
    if (form === "data") {
      const text = `${format(verdict.judged, { digits })}: ${verdict.headline}`;
      const answer = { ...verdict, ...(within && { within }), ...(change && { change }) };
      return jsonLine("verdict", answer, { ...extra, written, text, ...explainedSteps(explain, ...explained) });
    }
    const steps = explain ? explainedText(explained) : "";
    if (form === "line") {
      return verdictLine(written, verdict, digits, within && withinLine(within, digits)) + steps;
    }
    const middle = within && { within: withinText(within, digits) };
    const text = judgementText(verdict, { ...page, written, ...middle });
    return `${text}${change === undefined ? "" : changeText(change, digits)}${steps}`;
  };
  const ofPoints = (written: string, form: Form, extra: object): string => {
    refuseOfOne(values);
    const points = uncertainPoints(written);
    requireFits(
      points.some(({ reading }) => isUncertain(reading.history ?? [])),
      values,
    );
    const ofBest = judgePoints(points, machine, {
      ...options,
      ...(background !== undefined && { background }),
      ...(scheme ? { scheme } : schemes && { schemes }),
    });
    const answer = pointsWithin(pointsWithTold(ofBest, told), { ...(rule && { rule: rule as ZoneRule }) });
    noted(answer.points.map(({ verdict }) => verdict));
    const explained = answer.points.map(({ point, verdict }): Explained => [point, verdict]);
    if (form === "data") {
      const text = `${answer.governing.point}: ${answer.headline}`;
      return jsonLine("points verdict", answer, { ...extra, written, text, ...explainedSteps(explain, ...explained) });
    }
    const steps = explain ? explainedText(explained) : "";
    return (form === "line" ? pointsLine(answer, digits) : pointsText(answer, page)) + steps;
  };
  const answer = (written: string, form: Form, extra: object = {}): string =>
    (namesPoints(written) ? ofPoints : ofReading)(written, form, extra);
  if (texts.length > 0) {
    const written = readingIn(texts.join(" ").trim());
    requireSignal(source, written, since, atRest);
    if (pictured !== undefined && namesPoints(written)) throw oneToDraw(pictured, "several points");
    const text = answer(written, json ? "data" : "page");
    await writeChart(values, [values.scheme, ...values.confirmed], async (theme) =>
      (await import("../../chart/index")).severityBar({ ...(drawn as NonNullable<typeof drawn>), theme }),
    );
    const { judgement, within } = drawn ?? {};
    const bar = values.plot && judgement ? `\n${zonesPlot(judgement, within !== undefined, width)}` : "";
    await io.out(text + bar);
    return reached ? exitCodes.reached : exitCodes.done;
  }
  if (io.piped === undefined) {
    throw new VeladisError("missing-option", {
      expected: 'a reading, as in veladis judge "4.1 mm/s rms"',
      received: "nothing",
    });
  }
  if (pictured !== undefined) throw oneToDraw(pictured, "lines that are piped in");
  const code = await answerLines(io, { json, keepGoing: values["keep-going"] }, (text, line) =>
    answer(readingIn(text.trim()), json ? "data" : full ? "page" : "line", json ? { line } : {}),
  );
  return code === exitCodes.done && reached ? exitCodes.reached : code;
}
