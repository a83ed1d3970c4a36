import { type SignalSource, wayOfSignal } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { type Amplitude, format } from "../../reading/index";
import type { SheetRequest } from "../../report/index";
import {
  asFoundAsLeft,
  badness,
  checkAgainstKnown,
  checkPoints,
  type DecisionRule,
  type KnownCheck,
  type KnownCheckResult,
  linearity,
} from "../../verification/index";
import { writtenAs } from "../delimited/written-as";
import { leftOutText } from "../input/bad-rows";
import { csvPoints } from "../input/csv-points";
import type { Io } from "../input/io";
import { inputStream, namedFile } from "../input/open-file";
import { seriesData, seriesText } from "../input/series-told";
import { notReadText } from "../input/unread-columns";
import type { ParsedOptions } from "../options/option-row";
import { requireOption } from "../options/option-values";
import { knownOfShaker, shakerOption } from "../options/shaker-option";
import { sheetFacts } from "../options/sheet-facts";
import { sheetText } from "../options/sheet-option";
import { signalSource, vibrationOf } from "../options/signal-options";
import { cautionsText } from "../print/cautions-text";
import { checkText, linearityText, pairText, pointsText } from "../print/check-text";
import { errorPlot } from "../print/error-plot";
import { exitCodes } from "../print/exit-codes";
import { explainedList, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { type Draw, requireChart, sheetPicture, writeChart } from "./chart-file";
import type { checkPage } from "./check-page";
import { signalsOfCheck } from "./check-signals";
import { plotWidth } from "./plot-width";

type GivenCheck = ParsedOptions<typeof checkPage.options>;

/** What is said of a check besides its levels. */
type CheckRest = Pick<KnownCheck, "tolerance" | "uncertainty" | "rule">;

/** An answer of the command: as a line of JSON, on a sheet and as text, and the checks it is made of. */
interface Answer {
  /** What is told of the file it was read from. */
  readonly told?: (json: boolean) => string;
  readonly line: (more: object) => string;
  readonly sheet: Omit<SheetRequest, "machine">;
  readonly text: string;
  readonly checks: readonly (readonly [name: string, check: KnownCheckResult])[];
}

/** What is of one level and plays no part beside a file. */
const ofOne = ["shaker", "known", "indicated", "as-left", "threshold"] as const;

/** Several levels of a CSV: in one unit at one frequency, or each in its own. */
async function severalOf(given: GivenCheck, rest: CheckRest, io: Io): Promise<Answer> {
  const { values } = given;
  const stray = ofOne.find((name) => values[name] !== undefined);
  if (stray !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: `one level beside --${stray}: those of a CSV are known each by itself`,
      received: `--${stray} and --${values.file === undefined ? "from" : "file"}`,
      option: stray,
    });
  }
  const file = namedFile(values.file);
  const source = signalSource(values);
  const ways = Object.keys(source) as (keyof SignalSource)[];
  if (values.from !== undefined && ways[0] !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: `--from ${values.from}, or --${ways[0]} beside signals that each say their unit, without --from`,
      received: `--from and --${ways[0]}`,
      option: ways[0],
    });
  }
  const used = new Set<string>();
  const stream = await inputStream(io, file);
  if (stream === undefined) throw new VeladisError("missing-option", { expected: "a CSV file", received: "nothing" });
  const { points, atFrequencies, notRead, told } = await csvPoints(stream, {
    file: file ?? "standard input",
    from: values.from,
    levelOf(written) {
      const way = wayOfSignal(written);
      if (way !== undefined) used.add(way);
      return vibrationOf(written, source);
    },
    written: writtenAs(values),
    skipBad: values["skip-bad"] ? "given" : "not given",
  });
  const unused = ways.find((way) => !used.has(way));
  if (unused !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: `a level in ${unused === "sensor" ? "volts" : "mA or per cent"} for --${unused}`,
      received: "none in the file",
      option: unused,
    });
  }
  const by = ways.map((way) => `${way} ${source[way]}`).join(", ");
  const ofFile = [by === "" ? "" : `signals read by ${by}\n`, leftOutText(told.leftOut), notReadText(notRead)].filter(
    (text) => text !== "",
  );
  const remarks = ofFile.length > 0 && { remarks: ofFile.map((text) => text.trimEnd()) };
  const shared = { told: (json: boolean) => seriesText(told, json) };
  const read = { read: { ...seriesData(told), ...(notRead.length > 0 && { columnsNotRead: notRead }), ...source } };
  if (values.from === undefined || atFrequencies) {
    const data = checkPoints(points, rest);
    return {
      ...shared,
      line: (more) => jsonLine("check points", data, { ...read, ...more }),
      sheet: { points: data, ...remarks },
      text: pointsText(data) + ofFile.join(""),
      checks: data.points.map((one) => [one.point, one] as const),
    };
  }
  const data = linearity(
    points.map(({ known, indicated }) => ({ known, indicated })),
    rest,
  );
  return {
    ...shared,
    line: (more) => jsonLine("linearity", data, { ...read, ...more }),
    sheet: { linearity: data, ...remarks },
    text: linearityText(data) + ofFile.join(""),
    checks: data.points.map((point, i) => [points[i]?.point || `${i + 1}`, point] as const),
  };
}

/** The answer of one level, of which there is a check. */
interface AnswerOfOne extends Answer {
  readonly checks: readonly [Answer["checks"][number], ...Answer["checks"]];
}

function alone(check: KnownCheck): AnswerOfOne {
  const data = checkAgainstKnown(check);
  return {
    line: (more) => jsonLine("known check", data, more),
    sheet: { check: data },
    text: checkText(data),
    checks: [["", data]],
  };
}

function pair(both: Parameters<typeof asFoundAsLeft>[0]): AnswerOfOne {
  const data = asFoundAsLeft(both);
  return {
    line: (more) => jsonLine("as found as left", data, more),
    sheet: { asFoundAsLeft: data },
    text: pairText(data),
    checks: [
      ["as found", data.asFound],
      ["as left", data.asLeft],
    ],
  };
}

/** One level, as found, and as left if it is told. */
function checkOf(given: GivenCheck, rest: CheckRest): Answer {
  const { values } = given;
  const { shaker } = values;
  const source = signalSource(values);
  const written = shaker === undefined ? requireOption(given, "known") : values.known;
  const level = written === undefined ? undefined : vibrationOf(written, source);
  const known = shaker === undefined ? (level as string | Amplitude) : knownOfShaker(level, shakerOption(shaker));
  const shows = requireOption(given, "indicated");
  const left = values["as-left"];
  const indicated = vibrationOf(shows, source);
  const asLeft = left === undefined ? undefined : vibrationOf(left, source);
  const told = written ?? (typeof known === "string" ? known : format(known));
  const answer =
    asLeft === undefined ? alone({ known, indicated, ...rest }) : pair({ known, asFound: indicated, asLeft, ...rest });
  const { line, sheet, text, checks } = answer;
  const signals = signalsOfCheck(values.threshold, source, checks[0][1].known);
  if (signals === "") return { ...answer, sheet: { known: told, ...sheet } };
  const signalLine = signals.trim().replace(/\s+/g, " ");
  return {
    line: (more) => line({ signals: signalLine, ...more }),
    sheet: { known: told, ...sheet, remarks: [signalLine] },
    text: text + signals,
    checks,
  };
}

/** Whether the verdict of any check is the named one or worse. */
function isVerdictReached(from: keyof typeof badness | undefined, checks: Answer["checks"]): boolean {
  return from !== undefined && checks.some(([, { verdict }]) => badness[verdict] >= badness[from]);
}

/** Holds a reading, or several, against a known vibration. */
export async function checkReading(given: GivenCheck, io: Io): Promise<number> {
  const { values } = given;
  const { file, from, uncertainty, rule, sheet, name = "Machine", explain, json } = values;
  requireChart(values);
  const width = plotWidth(io, values);
  const proof = sheetFacts(values.fact, "reference shaker", sheet);
  const rest: CheckRest = {
    tolerance: requireOption(given, "tolerance"),
    ...(uncertainty !== undefined && { uncertainty }),
    ...(rule !== undefined && { rule: rule as DecisionRule }),
  };
  const several = file !== undefined || from !== undefined;
  const {
    told,
    line,
    sheet: request,
    text,
    checks,
  } = several ? await severalOf(given, rest, io) : checkOf(given, rest);
  const named = checks.map(([one, check]) => ({ name: one, check }));
  const draw: Draw = async (theme) =>
    (await import("../../chart/index")).checkChart({
      checks: named,
      theme,
      ...(name !== "Machine" && { title: `${name}: error against tolerance` }),
    });
  await writeChart(values, [namedFile(file)], draw);
  io.err(told?.(json) ?? "");
  if (json) await io.out(line(explainedList(explain, checks)));
  else if (sheet !== undefined) {
    const picture = await sheetPicture(sheet, values.chart, draw);
    await io.out(sheetText(sheet, { machine: name, ...proof, ...request, ...picture }));
  } else {
    const drawn = values.plot ? `\n${errorPlot(named, width)}` : "";
    await io.out(text + drawn + (explain ? explainedText(checks) : "") + cautionsText());
  }
  return isVerdictReached(values["fail-from"], checks) ? exitCodes.reached : exitCodes.done;
}
