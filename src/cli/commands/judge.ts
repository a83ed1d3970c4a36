import { decidedVerdict, pointsWithin, type ZoneRule, type ZonesWithin, zonesWithin } from "../../conformity/index";
import { parseNumeral, VeladisError } from "../../core/index";
import { type Amplitude, format, isUncertain } from "../../reading/index";
import { plainSpelling } from "../../sentence/index";
import {
  changeFromBaseline,
  type Judgement,
  judgePoints,
  namesPoints,
  type Scheme,
  type Verdict,
} from "../../severity/index";
import type { Io } from "../input/io";
import { overRangeOr } from "../input/over-range";
import { type ReadAtState, readAtState } from "../input/state-at-reading";
import { backgroundOption, pointsWithTold, withTold } from "../options/background-option";
import { confirmedOption } from "../options/confirmed-option";
import { isReached } from "../options/fail-from";
import { fullAnswer } from "../options/full-answer";
import { type JudgeSettings, judgeOf, judgeOptions } from "../options/judge-of";
import { limitsAlone } from "../options/limits-option";
import { loadLine, loadNotes, loadText, stateData } from "../options/load-text";
import { schemeAmong, statedScheme } from "../options/named-scheme";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { pointsRead } from "../options/points-read";
import { requireSignal, vibrationOf } from "../options/signal-options";
import { requireBareSpeed, withSpeedUnit } from "../options/speed-unit";
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
import { refuseOfOne, requireFits } from "./judge-refusals";
import { oneToDraw, pictureAsked } from "./one-to-draw";
import { plotWidth } from "./plot-width";
import { writtenNumbers } from "./written-numbers";

/** What is printed of an answer: a page, a line among many, or data. */
type Form = "page" | "line" | "data";

/** What is judged: the reading, as it was written, in its plain spelling and with what was noted of the machine beside it. */
interface Judged extends ReadAtState {
  readonly written: string;
  /** The name of the machine, before several of its points. */
  readonly place?: string;
  /** The machine, with the speed at the reading. */
  readonly machine: string;
}

/** The name of a machine before several of its points: `Feed pump A: DE-H 3.1, DE-V 2.2 mm/s rms`. */
const MACHINE_NAMED = /^\s*([^:,;=]*[^:,;=\s])\s*:\s+([A-Za-z][^:]*\d[^:]*[,;].*)$/s;

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
  const { machine, since, uncertainty, crest, background: atRest, source, readingIn } = writtenNumbers(values);
  const full = fullAnswer(values);
  const schemes = await confirmedOption(values.confirmed, io, json, [values.scheme]);
  const scheme = limitsAlone(values, machine) ?? (await statedScheme(values.scheme, machine, schemes));
  const settings: JudgeSettings = {
    ...{ scheme, schemes, machine, strict: values.strict },
    ...(crest !== undefined && { crestFactor: parseNumeral(crest, "a crest factor") }),
  };
  const options = judgeOptions(settings);
  const { background, told } = backgroundOption(atRest, source);
  const unit = values["speed-unit"];
  const judgedBy = (own: string) => judgeOf({ ...settings, machine: own, background });
  // a slip in the words on the machine shows before the first reading
  const judgeAlone = judgedBy(machine);
  const schemeBy = (id: string): Scheme => (scheme?.id === id ? scheme : schemeAmong(id, schemes));
  const changeOf = ({ reading, machine }: Judged, judgement: Judgement) =>
    since === undefined
      ? undefined
      : changeFromBaseline(vibrationOf(reading, source), vibrationOf(since, source), {
          scheme: scheme ?? schemeAmong(judgement.scheme, schemes),
          assume: options.assume,
          ...(machine.trim() !== "" && { machine }),
        });
  let drawn: { readonly judgement: Verdict; readonly within?: ZonesWithin } | undefined;
  let reached = false;
  let isAnyJudged = false;
  const noted = (verdicts: readonly Verdict[]): void => {
    isAnyJudged = true;
    reached ||= isReached(values["fail-from"], verdicts);
  };
  const page = { digits, full, colour: io.colour, notes: tableNotes(scheme ? [scheme] : schemes) };
  const withinOf = (reading: string | Amplitude, verdict: Verdict): ZonesWithin | undefined => {
    const isKnown = typeof reading === "object" && isUncertain(reading.history ?? []);
    requireFits(isKnown, values);
    return isKnown ? zonesWithin(verdict, { ...(rule && { rule: rule as ZoneRule }) }) : undefined;
  };
  const ofReading = (given: Judged, form: Form, extra: object): string => {
    const { written } = given;
    const judged = given.speed === undefined ? judgeAlone : judgedBy(given.machine);
    const reading = uncertainReading(given.reading, uncertainty, source);
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
    const change = changeOf(given, verdict);
    const load = loadNotes(given, [verdict], schemeBy);
    const explained: Explained[] = [["", verdict]];
    if (within !== undefined) explained.splice(0, 1, ["verdict", verdict], ["uncertainty", within]);
    if (form === "data") {
      const text = `${format(verdict.judged, { digits })}: ${verdict.headline}`;
      const answer = { ...verdict, ...(within && { within }), ...(change && { change }) };
      return jsonLine("verdict", answer, {
        ...extra,
        written,
        text,
        ...stateData(given, load),
        ...explainedSteps(explain, ...explained),
      });
    }
    const steps = explain ? explainedText(explained) : "";
    if (form === "line") {
      return loadLine(verdictLine(written, verdict, digits, within && withinLine(within, digits)), load) + steps;
    }
    const middle = { within: loadText(load) + (within === undefined ? "" : withinText(within, digits)) };
    const text = judgementText(verdict, { ...page, written, ...middle });
    return `${text}${change === undefined ? "" : changeText(change, digits)}${steps}`;
  };
  const ofPoints = (given: Judged, form: Form, extra: object): string => {
    refuseOfOne(values);
    const { written } = given;
    const points = pointsRead(given.reading, source);
    requireFits(
      points.some(({ reading }) => isUncertain(reading.history ?? [])),
      values,
    );
    const ofBest = judgePoints(points, given.machine, {
      ...options,
      ...(background !== undefined && { background }),
      ...(scheme ? { scheme } : schemes && { schemes }),
    });
    const answer = pointsWithin(pointsWithTold(ofBest, told), { ...(rule && { rule: rule as ZoneRule }) });
    noted(answer.points.map(({ verdict }) => verdict));
    const load = loadNotes(
      given,
      answer.points.map(({ verdict }) => verdict),
      schemeBy,
    );
    const explained = answer.points.map(({ point, verdict }): Explained => [point, verdict]);
    if (form === "data") {
      const text = `${answer.governing.point}: ${answer.headline}`;
      return jsonLine("points verdict", answer, {
        ...extra,
        written,
        text,
        ...stateData(given, load),
        ...explainedSteps(explain, ...explained),
      });
    }
    const steps = explain ? explainedText(explained) : "";
    const place = given.place === undefined ? "" : `${given.place}: `;
    if (form === "line") return place + loadLine(pointsLine(answer, digits), load) + steps;
    return place + pointsText(answer, page) + loadText(load) + steps;
  };
  const judgedOf = (written: string): Judged => {
    const { reading, ...state } = readAtState(written, unit);
    const [, place, behind] = MACHINE_NAMED.exec(reading) ?? [];
    const spelt = withSpeedUnit(plainSpelling(behind ?? reading), unit);
    return {
      ...(place !== undefined && { place }),
      written,
      reading: spelt,
      machine: [machine, state.speed ?? ""].join(" ").trim(),
      ...state,
    };
  };
  const answer = (written: string, form: Form, extra: object = {}): string => {
    const given = judgedOf(written);
    return (namesPoints(given.reading) ? ofPoints : ofReading)(given, form, extra);
  };
  if (texts.length > 0) {
    const written = readingIn(texts.join(" ").trim());
    requireSignal(source, written, since, atRest);
    requireBareSpeed(unit, written);
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
  const code = await answerLines(io, { json, keepGoing: values["keep-going"] }, (text, line) => {
    try {
      return answer(readingIn(text.trim()), json ? "data" : full ? "page" : "line", json ? { line } : {});
    } catch (refused) {
      const error = overRangeOr(refused, text);
      // beyond a range, or of a failed loop, the vibration may be anything
      reached ||= values["fail-from"] !== undefined && error instanceof VeladisError && error.code === "sensor-fault";
      throw error;
    }
  });
  // a gate is not to pass where no line was judged
  if (values["fail-from"] !== undefined && !isAnyJudged && !reached) return exitCodes.refused;
  return code === exitCodes.done && reached ? exitCodes.reached : code;
}
