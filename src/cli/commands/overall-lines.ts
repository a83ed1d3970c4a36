import { convertAmplitude } from "../../amplitude/index";
import { parseNumeral, VeladisError } from "../../core/index";
import { bandOfText, frequency } from "../../frequency/index";
import { type Amplitude, format, parsedType, significant } from "../../reading/index";
import { type Band, noiseBandwidth, type WindowName, windowName, windowWeights } from "../../signal/index";
import { accountText } from "../delimited/account-text";
import { writtenAs } from "../delimited/written-as";
import { csvFrequencies } from "../input/csv-frequencies";
import type { Io } from "../input/io";
import { lineType } from "../input/line-type";
import { namedFile } from "../input/open-file";
import { isReached } from "../options/fail-from";
import { fullAnswer } from "../options/full-answer";
import { onlyColumn } from "../options/only-column";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { requireFitting } from "../options/options-beside";
import { ordersOption, requireSpeed } from "../options/orders-option";
import { tellingOption } from "../options/telling-option";
import { isParquet } from "../parquet/written-parquet";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { type Plot, plotText } from "../print/plot-text";
import { drawnLines } from "../record/drawn-lines";
import { judgeAsked } from "../record/judge-asked";
import { type LinesSettings, levelOfLines, linearLines, ordersOfLines, peaksOfLines } from "../record/lines-analysis";
import { linesText } from "../record/lines-text";
import { rowsOfFile } from "../record/rows-of-file";
import { spectrumPlot } from "../record/spectrum-plot";
import { requireChart, writeChart } from "./chart-file";
import type { overallPage } from "./overall-page";
import { plotWidth } from "./plot-width";

/** Options that tell of samples, or of a density. */
const others = [
  ...["density", "slope-column", "rate", "time", "resample", "edges", "order", "detrend", "causal", "waveform"],
  ...["format", "endian", "scale"],
];

/** Samples of a record in which the noise bandwidth of any window is what it is in the longest. */
const ENOUGH = 64;

/** What a verdict of tones leaves out. */
const OF_TONES =
  "the level is of the listed tones alone: what lies between them is not in it, so that the machine's may be higher and its zone worse";

/** Where the settings of a level come from. */
const named = {
  ...{ as: "--to", band: "--band", window: "--window", noiseBandwidth: "--noise-bandwidth", tones: "--tones" },
  lines: "--spectrum",
};

/** What the sum of squares is divided by, in words. */
function divisorText({ window, noiseBandwidth: given }: LinesSettings): string {
  if (window === undefined) return `the noise bandwidth ${given}`;
  const bandwidth = noiseBandwidth(windowWeights(window, ENOUGH));
  return `the noise bandwidth ${significant(bandwidth, 4)} of the ${windowName(window)} window`;
}

/** The overall level of the lines of a spectrum in a file, its highest lines, and its zone when a machine is given. */
export async function printLines(given: ParsedOptions<typeof overallPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  requireFitting(given, "lines of a spectrum", (name) => !others.includes(name));
  requireChart(values);
  const width = plotWidth(io, values);
  const digits = digitsOf(values.digits);
  const speed = values.speed === undefined ? undefined : frequency(values.speed);
  requireSpeed(values);
  const file = namedFile(texts[0]);
  const source = await rowsOfFile(
    io,
    { file, format: isParquet(file) ? "parquet" : "csv", written: writtenAs(values) },
    "a file of lines, as in veladis overall --spectrum lines.csv --window hann",
  );
  const name = file ?? "standard input";
  const { written } = source;
  let type = parsedType("mm/s rms");
  const rows = await csvFrequencies(source.reader, {
    file: name,
    written,
    frequency: { column: values["at-column"], unit: values["at-unit"], shaft: speed?.hertz },
    column: onlyColumn(values.column),
    what: "a line",
    told: (headings, index) => {
      type = lineType(headings, index, values.unit, written);
      return { negative: type.reference > 0, empty: false };
    },
  });
  requireGapless(values);
  const judge = await judgeAsked(values, io, type.unit);
  const band: Band = values.band === undefined ? (judge?.band ?? [10, 1000]) : bandOfText(values.band);
  const bandwidth = values["noise-bandwidth"];
  const settings: LinesSettings = {
    type,
    band,
    window: values.window as WindowName | undefined,
    noiseBandwidth: bandwidth === undefined ? undefined : parseNumeral(bandwidth, "a noise bandwidth in lines"),
    tones: values.tones,
  };
  requireCounted(settings);
  const all = linearLines(rows.hertz, rows.values, type);
  const asked = (values.to ?? "mm/s rms").split(",").map(parsedType);
  const levels = asked.map(({ unit, detector }) =>
    tellingOption(named, () => levelOfLines(all, `${unit} ${detector}`, settings)),
  );
  const writtenOut = levels.map((level, i) => convertAmplitude(level, (asked[i] as (typeof asked)[number]).type));
  // lines have no peaks; a criterion in peaks is told as one that is not judged
  const measurable = judge?.targets.filter((as) => parsedType(as).detector === "rms") ?? [];
  const judgedTypes = measurable.length > 0 ? measurable : (judge?.targets ?? []);
  const judged = judgedTypes.map((as) => levelOfLines(all, as, settings));
  const outside = values.tones ? all.filter(([at]) => at < band[0] || at > band[1]).length : 0;
  const cautions = [
    ...(values.tones ? [OF_TONES] : []),
    ...(outside > 0 ? [`${outside} of the tones lie outside the band and are not in the level`] : []),
  ];
  const judgement = judge?.judgement(judged, band, {
    digits,
    colour: io.colour,
    full: fullAnswer(values),
    cautions,
    failFrom: values["fail-from"],
  });
  const reached = judgement !== undefined && isReached(values["fail-from"], [judgement.judgement]);
  const code = reached ? exitCodes.reached : exitCodes.done;
  const as = `${(asked[0] as (typeof asked)[number]).unit} rms` as const;
  const peaks = peaksOfLines(all, settings);
  const isWithin = ({ hertz = 0 }: Amplitude) => hertz >= band[0] && hertz <= band[1];
  const most = values.lines === undefined ? 5 : parseNumeral(values.lines, "a number of lines");
  if (!(Number.isInteger(most) && most >= 1)) {
    throw new VeladisError("out-of-range", { expected: "a number of lines, 1 or more", received: `${most}` });
  }
  const lines = peaks
    .filter(isWithin)
    .map((line) => convertAmplitude(line, as as "mm/s rms"))
    .sort((a, b) => b.value - a.value)
    .slice(0, most);
  const [first] = levels;
  const orders =
    speed === undefined
      ? []
      : ordersOfLines(all, peaks, {
          shaft: speed.hertz,
          orders: ordersOption(values.orders),
          spacing: first?.resolution,
        }).map((one) => ({ ...one, line: one.line && convertAmplitude(one.line, as as "mm/s rms") }));
  const shownLevels = writtenOut.map((level) => format(level, { digits }));
  const drawn = () =>
    drawnLines(all, { from: `${type.unit} ${type.detector}`, as, spacing: first?.resolution as number, band });
  await writeChart(values, [...texts, values.scheme, ...values.confirmed], async (theme) =>
    (await import("../../chart/index")).spectrumChart({
      ...{ ...drawn(), theme },
      title: `${name}: spectrum from ${band[0]} to ${band[1]} Hz, overall ${shownLevels.join(", ")}`,
      ...(speed !== undefined && { speed, orders: ordersOption(values.orders) }),
    }),
  );
  io.err(accountText(rows.account, rows.counts, values.json));
  const explained: Explained[] = [
    ...writtenOut.map((level, i) => [shownLevels[i] as string, level] as const),
    ...(judgement === undefined ? [] : [["judgement", judgement.judgement] as const]),
  ];
  if (values.json) {
    const { text: _, judgement: verdict, ...told } = judgement ?? { text: "", judgement: undefined };
    await io.out(
      jsonLine(
        "record of lines",
        {
          levels: levels.map((level, i) => ({
            ...level,
            text: shownLevels[i],
            ...explainedSteps(values.explain, ["", writtenOut[i] as Amplitude]),
          })),
          lines,
          ...(verdict !== undefined && { judgement: { ...verdict, ...explainedSteps(values.explain, ["", verdict]) } }),
        },
        { file: name, count: all.length, type: type.type, ...(speed !== undefined && { orders }), ...told },
      ),
    );
    return code;
  }
  const page = {
    ...{ name, type: as, from: type.type, all, level: first as (typeof levels)[number], levels: shownLevels },
    ...{ divisor: divisorText(settings), lines, shaft: speed?.hertz, orders, digits },
  };
  const linesPlot = (): Plot => {
    const { spectrum, frequency: shown } = drawn();
    return spectrumPlot(spectrum, shown, orders);
  };
  await io.out(
    linesText(page) +
      (values.plot ? `\n${plotText(linesPlot(), width)}` : "") +
      (judgement === undefined ? "" : `\n${judgement.text}`) +
      (values.explain ? explainedText(explained) : ""),
  );
  return code;
}

type Values = ParsedOptions<typeof overallPage.options>["values"];

/** Refuses for a list of tones what needs all lines: between tones nothing is known. */
function requireGapless(values: Values): void {
  if (!values.tones) return;
  const odd = (["chart", "plot", "fail-from"] as const).filter(
    (name) => values[name] !== undefined && values[name] !== false,
  );
  if (odd.length === 0) return;
  throw new VeladisError("unknown-option", {
    expected: `all lines of a spectrum, with --window, for ${odd.map((name) => `--${name}`).join(" and ")}: a list of tones leaves out what lies between them`,
    received: "--tones",
  });
}

/** Refuses lines of which nobody says what their sum of squares is divided by, in the words of the command. */
function requireCounted({ window, noiseBandwidth, tones }: LinesSettings): void {
  const told = [
    window !== undefined && "--window",
    noiseBandwidth !== undefined && "--noise-bandwidth",
    tones && "--tones",
  ];
  const names = told.filter((one) => typeof one === "string");
  if (names.length === 1) return;
  throw new VeladisError(names.length === 0 ? "missing-option" : "unknown-option", {
    expected:
      "one of --window, as in --window hann, --noise-bandwidth 1.8 and --tones: all lines of a windowed spectrum over-count (Hann 22 %, flat top 94 %), tones listed one by one do not",
    received: names.length === 0 ? "nothing" : names.join(" and "),
  });
}
