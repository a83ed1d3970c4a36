import { convertAmplitude } from "../../amplitude/index";
import { parseNumeral, VeladisError } from "../../core/index";
import { bandOfText, frequency } from "../../frequency/index";
import { type AmplitudeType, format, parsedType, type ReadingType, significant } from "../../reading/index";
import { type BandEdges, orderLines, type Spectrum, type Trend, topLines, type WindowName } from "../../signal/index";
import { unitSymbol } from "../../units/index";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { namedFile } from "../input/open-file";
import { isReached } from "../options/fail-from";
import { fullAnswer } from "../options/full-answer";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf, requireOption } from "../options/option-values";
import { ordersOption, requireSpeed } from "../options/orders-option";
import { tellingOption, toldOption } from "../options/telling-option";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { plotText } from "../print/plot-text";
import { judgeAsked } from "../record/judge-asked";
import { linesOfRecord } from "../record/lines-of-record";
import { overallText } from "../record/overall-text";
import { type Analysis, type AnalysisSettings, recordAnalyser } from "../record/record-analysis";
import { type SampleFile, sampleFile } from "../record/sample-file";
import { spectrumPlot } from "../record/spectrum-plot";
import { requireChart, writeChart } from "./chart-file";
import type { overallPage } from "./overall-page";
import { plotWidth } from "./plot-width";

/** A type to answer in, and what is measured for it: an RMS value where it is a level in decibels. */
function askedType(written: string): { readonly type: ReadingType; readonly measured: AmplitudeType } {
  const { type, unit, detector } = parsedType(written);
  return { type, measured: `${unit} ${detector}` };
}

/** Where the settings of an analysis come from. */
const named = {
  ...{ as: "--to", band: "--band", edges: "--edges", order: "--order", window: "--window", detrend: "--detrend" },
  rate: "--rate",
};

/** The edge rule; "3dB" too, since a value that begins with a dash looks like an option. */
function edgesOf(written: string | undefined): BandEdges | undefined {
  return written !== undefined && /^-?3\s*dB$/i.test(written) ? "-3 dB" : (written as BandEdges | undefined);
}

/** Takes the whole file in, showing how far it is. */
async function analysed(file: SampleFile, settings: AnalysisSettings, io: Io) {
  const analyser = recordAnalyser(settings);
  let count = 0;
  let shownAt = 0;
  for await (const samples of file.chunks) {
    analyser.push(samples);
    count += samples.length;
    const now = Date.now();
    if (io.progress === undefined || now - shownAt < 200) continue;
    shownAt = now;
    const part = file.size ? `${Math.floor((100 * file.bytesRead()) / file.size)} %, ` : "";
    io.progress(`${file.name}: ${part}${(count / 1e6).toFixed(1)} million samples`);
  }
  return analyser.finish();
}

/**
 * The overall level of a file of samples, its highest lines, and its zone when a machine is given.
 *
 * @param title - what stands above the answer
 */
export async function printRecord(
  given: ParsedOptions<typeof overallPage.options>,
  { column, title }: { readonly column: string | undefined; readonly title: string },
  io: Io,
): Promise<number> {
  const { values, texts } = given;
  requireChart(values);
  const width = plotWidth(io, values);
  const digits = digitsOf(values.digits);
  const toldRate =
    values.rate === undefined ? undefined : parseNumeral(requireOption(given, "rate"), "a sampling rate in Hz");
  const unit = unitSymbol(requireOption(given, "unit"));
  const asked = (values.to ?? "mm/s rms").split(",").map(askedType);
  const speed = values.speed === undefined ? undefined : frequency(values.speed);
  requireSpeed(values);
  const full = fullAnswer(values);
  const judge = await judgeAsked(values, io, unit);
  const band = values.band === undefined ? (judge?.band ?? [10, 1000]) : bandOfText(values.band);
  const targets = [...new Set([...asked.map(({ measured }) => measured), ...(judge?.targets ?? [])])];
  const { format: stored, endian, scale, time, resample } = values;
  const written = writtenAs(values);
  const file = await sampleFile(io, {
    file: namedFile(texts[0]),
    column,
    format: stored,
    endian,
    scale,
    written,
    unit,
    rate: toldRate,
    time,
    resample,
    waveform: values.waveform,
  });
  const { rate, how, highest } = file;
  if (highest !== undefined && band[1] > highest) {
    throw new VeladisError("out-of-range", {
      expected: `--band that ends at or below ${significant(highest, 4)} Hz, up to which resampled times are good`,
      received: `${band[0]} to ${band[1]} Hz`,
    });
  }
  const settings: AnalysisSettings = {
    rate,
    unit,
    band,
    edges: edgesOf(values.edges),
    order: values.order === undefined ? undefined : parseNumeral(values.order, "an order of the edges"),
    detrend: values.detrend as Trend | undefined,
    window: values.window as WindowName | undefined,
    targets,
    causal: values.causal,
  };
  let analysis: Awaited<ReturnType<typeof analysed>>;
  try {
    analysis = await analysed(file, settings, io);
  } catch (error) {
    throw toldOption(named, error);
  } finally {
    io.progress?.("");
  }
  const levels = asked.map(({ type, measured }) => {
    const level = analysis.levels[targets.indexOf(measured)] as Analysis["levels"][number];
    const written = convertAmplitude(level, type);
    return { level, written, text: format(written, { digits }) };
  });
  const spectrum: Spectrum = linesOfRecord(analysis.spectrum, targets[0] as AmplitudeType, band);
  const count = values.lines === undefined ? 5 : parseNumeral(values.lines, "a number of lines");
  const lines = tellingOption({ count: "--lines", band: "--band" }, () => topLines(spectrum, { count, band }));
  const orders =
    speed === undefined
      ? []
      : orderLines(spectrum, {
          speed,
          orders: ordersOption(values.orders).filter((order) => {
            const hertz = order * speed.hertz;
            return values.orders !== undefined || (hertz > spectrum.lowest && hertz < (highest ?? rate / 2));
          }),
        });
  const judgement = judge?.judgement(analysis.levels, band, {
    ...{ digits, colour: io.colour, full },
    failFrom: values["fail-from"],
  });
  const reached = judgement !== undefined && isReached(values["fail-from"], [judgement.judgement]);
  const code = reached ? exitCodes.reached : exitCodes.done;
  const drawn = [Math.max(band[0], spectrum.lowest), Math.min(band[1], rate / 2)] as const;
  await writeChart(values, [...texts, values.scheme, ...values.confirmed], async (theme) =>
    (await import("../../chart/index")).spectrumChart({
      ...{ spectrum, theme, frequency: drawn },
      title: `${file.name}: spectrum from ${band[0]} to ${band[1]} Hz, overall ${levels.map(({ text }) => text).join(", ")}`,
      ...(speed !== undefined && { speed, orders: [1, 2, 3, 4] }),
    }),
  );
  const { name } = file;
  io.err(file.account(values.json));
  if (values.json) {
    const { count, descriptors } = analysis;
    const { text: _, judgement: __, ...judged } = judgement ?? { text: "", judgement: undefined };
    await io.out(
      jsonLine(
        "record",
        {
          levels: levels.map(({ level, written, text }) => ({
            ...level,
            ...(written.level && { level: written.level }),
            text,
            ...explainedSteps(values.explain, ["", written]),
          })),
          descriptors,
          lines,
          ...(speed !== undefined && { orders }),
          ...(judgement !== undefined && {
            judgement: { ...judgement.judgement, ...explainedSteps(values.explain, ["", judgement.judgement]) },
          }),
        },
        {
          ...{
            file: name,
            ...(values.column.length > 1 && { column }),
            ...(how !== undefined && { times: how }),
            count,
            seconds: count / rate,
            rate,
            unit,
            resolution: spectrum.resolution,
          },
          ...judged,
        },
      ),
    );
    return code;
  }
  const page = {
    name,
    how,
    unit,
    analysis,
    levels: levels.map(({ text }) => text),
    lines,
    shaft: speed?.hertz,
    orders,
    digits,
  };
  const explained: Explained[] = [
    ...levels.map(({ written, text }) => [text, written] as const),
    ...(judgement === undefined ? [] : [["judgement", judgement.judgement] as const]),
  ];
  await io.out(
    title +
      overallText(page) +
      (values.plot ? `\n${plotText(spectrumPlot(spectrum, drawn, orders), width)}` : "") +
      (judgement === undefined ? "" : `\n${judgement.text}`) +
      (values.explain ? explainedText(explained) : ""),
  );
  return code;
}
