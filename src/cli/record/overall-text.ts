import { convertAmplitude } from "../../amplitude/index";
import { visibleText } from "../../core/index";
import { format, significant } from "../../reading/index";
import type { OrderLine, SpectrumLine } from "../../signal/index";
import { textTable } from "../print/text-table";
import { wrapped } from "../print/wrapped";
import { offMultiple, offNote } from "./off-multiple";
import type { Analysis } from "./record-analysis";

/** What is printed of a record. */
export interface OverallPage {
  readonly name: string;
  /** What became of the times of the file, where it has them. */
  readonly how: string | undefined;
  readonly unit: string;
  readonly analysis: Analysis;
  /** The levels, written out. */
  readonly levels: readonly string[];
  readonly lines: readonly SpectrumLine[];
  /** Speed of the shaft in hertz, and the lines at its multiples. */
  readonly shaft: number | undefined;
  readonly orders: readonly OrderLine[];
  readonly digits: number;
}

function howText({ levels: [level] }: Analysis): string {
  if (level === undefined) return "";
  const [low, high] = level.band;
  const edges = level.edges === "ideal" ? "edges included" : `-3 dB at the edges, order ${level.order}`;
  const how =
    level.method === "spectrum"
      ? `spectrum of the whole record, ${level.window} window, ${level.detrend === "none" ? "nothing" : level.detrend === "mean" ? "mean" : "straight line"} taken off`
      : `causal filter, the first ${level.settlingTime.toFixed(2)} s not counted`;
  return `overall from ${low} to ${high} Hz, ${edges}; ${how}`;
}

/** Neighbours at one extreme that a whole wave does not have. */
const CLIPPED = 4;

function clippedText(flatCrest: number): string {
  if (flatCrest < CLIPPED) return "";
  return `caution: ${flatCrest} samples in a row stand at the highest or lowest value; a clipped signal reads wrong\n`;
}

function sampledText({ descriptors }: Analysis, digits: number): string {
  if (descriptors === undefined) return "";
  const { unit, mean, rms, peak, crestFactor, kurtosis } = descriptors;
  const figures = [
    `mean ${significant(mean, digits)} ${unit}`,
    `about it ${format(rms, { digits })}`,
    format(peak, { digits }),
    `crest factor ${significant(crestFactor, digits)}`,
    `kurtosis ${significant(kurtosis, digits)}`,
  ];
  return `as sampled: ${figures.join(", ")}\n${clippedText(descriptors.flatCrest)}`;
}

function linesTable({ lines, shaft, digits }: OverallPage): string {
  const [first] = lines;
  if (first === undefined) return "no line stands out within the band\n";
  const right = { align: "right" as const };
  return textTable(
    [
      { title: "Hz", ...right },
      { title: "r/min", ...right },
      ...(shaft === undefined ? [] : [{ title: "x speed", ...right }]),
      { title: `${first.unit} ${first.detector}`, ...right },
      { title: "g pk", ...right },
    ],
    lines.map((line) => [
      line.hertz.toFixed(2),
      (60 * line.hertz).toFixed(0),
      ...(shaft === undefined ? [] : [(line.hertz / shaft).toFixed(2)]),
      significant(line.value, digits),
      significant(convertAmplitude(line, "g pk").value, digits),
    ]),
  );
}

function ordersText({ orders, digits }: OverallPage): string {
  if (orders.length === 0) return "";
  const rows = orders.map(({ order, expected, line }) => [
    `${order}x`,
    expected.toFixed(2),
    line === undefined ? "nothing" : line.hertz.toFixed(2),
    offMultiple(line?.hertz, expected),
    line === undefined ? "" : significant(line.value, digits),
  ]);
  const type = orders.find(({ line }) => line !== undefined)?.line;
  const right = { align: "right" as const };
  return `\n${textTable(
    [
      { title: "", ...right },
      { title: "at Hz", ...right },
      { title: "found", ...right },
      { title: "off %", ...right },
      { title: type === undefined ? "" : `${type.unit} ${type.detector}`, ...right },
    ],
    rows,
  )}${offNote(rows)}`;
}

/** A record as a person reads it: the levels first, then how they were made, then the lines. */
export function overallText(page: OverallPage): string {
  const { name, how, unit, analysis, levels, digits } = page;
  const { count, spectrum } = analysis;
  const seconds = count / spectrum.rate;
  const averaged = spectrum.averages === 1 ? "one segment" : `${spectrum.averages} segments averaged`;
  return [
    ...levels.map((level) => `${level}\n`),
    `\n${visibleText(name)}: ${count} samples, ${significant(seconds, 4)} s at ${Number(spectrum.rate.toPrecision(9))} a second, in ${unit}\n`,
    how === undefined ? "" : wrapped(how),
    `${howText(analysis)}\n`,
    sampledText(analysis, digits),
    `\nhighest lines (${significant(spectrum.resolution, 3)} Hz apart, ${averaged})\n\n`,
    linesTable(page),
    ordersText(page),
  ].join("");
}
