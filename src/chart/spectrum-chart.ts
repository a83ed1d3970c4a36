import { scaleLinear, scaleLog } from "d3-scale";
import { line } from "d3-shape";
import {
  finiteResult,
  requireChoice,
  requireFinite,
  requireGiven,
  requireList,
  requirePositive,
  requireText,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { type Assumption, type ReadingTypeText, significant } from "../reading/index";
import type { Density, Spectrum } from "../signal/index";
import { amplitudeAxis } from "./amplitude-axis";
import { assumedNotes } from "./assumed-notes";
import { footAxis, logTicks, roundTicks, sideAxis, spacedTicks, type Tick, tickText } from "./axis";
import { BESIDE, type BesideAxis, besideAxis, besideTicks, drawnBeside } from "./beside-axis";
import { chartDocument, clipped } from "./chart-document";
import { type ChartOptions, requireHeight, requireOptions, requireWidth } from "./chart-options";
import { label, rounded, stroke, tag } from "./markup";
import { type CurvePoint, reducedCurve } from "./reduced-curve";
import { requirePair } from "./require-pair";
import { widthOf } from "./text-width";

/** What {@link spectrumChart} draws. */
export interface SpectrumChartOptions extends ChartOptions {
  /** What `spectrum` or `density` returned, or lines of one's own: line k stands at `k * resolution` hertz. */
  readonly spectrum: (
    | Pick<Spectrum, "unit" | "detector" | "resolution">
    | (Pick<Density, "unit" | "resolution"> & { readonly detector?: undefined })
  ) & {
    readonly values: ArrayLike<number>;
    /** What was assumed on the way to the lines, if they were converted. */
    readonly assumed?: readonly Assumption[];
  };
  /** A second axis at the right, in another type of the same quantity, e.g. `"in/s pk"`; not for a density. */
  readonly beside?: ReadingTypeText;
  /** Shaft speed; its orders are marked 1x, 2x, ... */
  readonly speed?: Frequency;
  /** Orders of the speed that are marked; 1 and 2 if not given. */
  readonly orders?: readonly number[];
  /** Frequencies shown, in hertz; all if not given. */
  readonly frequency?: readonly [low: number, high: number];
  /** Linear if not given; `"log"` shows at most four decades below the highest line. */
  readonly scale?: "linear" | "log";
  /** The scale of the frequencies: linear if not given; a logarithmic one begins at the first line above 0 Hz. */
  readonly frequencyScale?: "linear" | "log";
}

const own = /* @__PURE__ */ Object.freeze({
  spectrum: true,
  beside: true,
  speed: true,
  orders: true,
  frequency: true,
  scale: true,
  frequencyScale: true,
  height: true,
} as const);

const LEFT = 56;
const RIGHT = 16;
const FRAME = "frequencies of the frame, in Hz";

function linesOf({ spectrum, frequency, frequencyScale }: SpectrumChartOptions): {
  points: CurvePoint[];
  low: number;
  high: number;
} {
  const { values, resolution, unit, detector } = requireGiven(
    spectrum,
    "a spectrum, as spectrum(samples, ...) returns",
    { option: "spectrum" },
  );
  requireText(unit, "the unit of a spectrum", { option: "unit" });
  if (detector !== undefined) requireText(detector, "the detector of a spectrum", { option: "detector" });
  if (!(Array.isArray(values) || ArrayBuffer.isView(values))) {
    throw new VeladisError("wrong-type", {
      expected: "the lines of a spectrum",
      received: shown(values),
      option: "values",
    });
  }
  requirePositive(resolution, "a spacing of the lines above zero, in Hz", { option: "resolution" });
  const all = Array.from(
    values,
    (value, k): CurvePoint => ({
      x: k * resolution,
      y: requireFinite(value, `a finite line at index ${k}`, { option: "spectrum", index: k }),
    }),
  );
  const isLog = frequencyScale === "log";
  const [low, high] =
    frequency === undefined
      ? ([isLog ? resolution : 0, (all.length - 1) * resolution] as const)
      : requirePair(frequency, "frequencies in Hz");
  if (!(requireFinite(low, FRAME) >= 0 && requireFinite(high, FRAME) > low) || (isLog && low === 0)) {
    throw new VeladisError("out-of-range", {
      expected: `frequencies in Hz from low to high${isLog ? ", above zero" : ""}`,
      received: `${low} to ${high}`,
    });
  }
  const points = all.filter(({ x }) => x >= low && x <= high);
  if (points.length >= 2) return { points, low, high };
  throw new VeladisError("missing-fact", {
    expected: "at least two lines of the spectrum within the frame",
    received: shown(points.length),
  });
}

/** The second axis, for lines that have a detector. */
function besideOf({ beside, spectrum }: SpectrumChartOptions): BesideAxis | undefined {
  if (beside === undefined || spectrum.detector !== undefined)
    return besideAxis(beside, `${spectrum.unit} ${spectrum.detector}`);
  throw new VeladisError("wrong-quantity", {
    expected: "a spectrum of lines with a detector for a second axis: those of a density have another unit",
    received: shown(beside),
    option: "beside",
  });
}

/** Places along the foot of the chart, and its ticks. */
function frequencyAxis(
  scale: "linear" | "log",
  [low, high]: readonly [number, number],
  width: number,
): { x: (hertz: number) => number; foot: Tick[] } {
  if (scale === "log") {
    const x = scaleLog([low, high], [0, width]);
    return { x, foot: spacedTicks(logTicks(low, high, x, 40), (text) => widthOf(text) + 6) };
  }
  const x = scaleLinear([low, high], [0, width]);
  return { x, foot: roundTicks(x, Math.max(3, Math.round(width / 70))) };
}

/** One of the two scales there are. */
function scaleOf(given: "linear" | "log", what: string): "linear" | "log" {
  return requireChoice(given, ["linear", "log"], what);
}

/**
 * A spectrum or a density, with marks at the orders of the shaft speed.
 *
 * Where lines are closer than pixels the lowest and highest of each pixel column are kept, so that no line is lost.
 *
 * @param options - `spectrum`, `speed`, `orders`, `frequency`, `scale`, `frequencyScale`, and {@link ChartOptions}
 * @returns an SVG document as text
 * @throws {@link VeladisError} `missing-fact` for fewer than two lines, `not-finite`, `out-of-range`, and as
 *   {@link hertz} for the speed
 * @example
 * ```ts
 * import { spectrumChart } from "veladis/chart";
 *
 * const values = Float64Array.from({ length: 101 }, (_, k) => (k === 25 ? 2.5 : k === 50 ? 0.8 : 0.05));
 * const svg = spectrumChart({
 *   spectrum: { unit: "mm/s", detector: "rms", resolution: 1, values },
 *   speed: "1500 r/min",
 * });
 * svg.includes(">1x<"); // => true
 * ```
 */
export function spectrumChart(options: SpectrumChartOptions): string {
  return withParameters({ options }, () => {
    const { spectrum, speed, orders = [1, 2] } = requireOptions(options, own, "options such as { spectrum }");
    const scale = scaleOf(options.scale ?? "linear", "a scale");
    const frequencyScale = scaleOf(options.frequencyScale ?? "linear", "a scale of the frequencies");
    const { points, low, high } = linesOf(options);
    const beside = besideOf(options);
    const right = RIGHT + (beside === undefined ? 0 : BESIDE);
    const width = requireWidth(options) - LEFT - right;
    const height = requireHeight(options, 240);
    const type = spectrum.detector === undefined ? spectrum.unit : `${spectrum.unit} ${spectrum.detector}`;
    const kind = spectrum.detector === undefined ? "Density" : "Spectrum";
    const { x, foot } = frequencyAxis(frequencyScale, [low, high], width);
    const highest = points.reduce((a, b) => (b.y > a.y ? b : a));
    const { y, ticks, most, rounds } = amplitudeAxis(scale, points, height);
    const draw = line<CurvePoint>()
      .x((point) => rounded(x(point.x)))
      .y((point) => rounded(y(point.y)));
    const shaft = speed === undefined ? undefined : hertzOf(speed);
    // in r/min it has to be a number too
    if (shaft !== undefined) finiteResult(shaft * 60);
    let taken = Number.NEGATIVE_INFINITY;
    const marks = requireList(orders, "a list of orders of the shaft speed", { option: "orders" }).flatMap((order) => {
      const f = requirePositive(order, "an order of the shaft speed above zero") * (shaft ?? Number.NaN);
      if (!(f >= low && f <= high)) return [];
      const at = x(f);
      const text = `${tickText(order)}x`;
      const room = at - widthOf(text) / 2 > taken + 4;
      if (room) taken = at + widthOf(text) / 2;
      return [stroke([at, 0], [at, height], "mark") + (room ? label(at, -5, text, { "text-anchor": "middle" }) : "")];
    });
    const turning =
      shaft === undefined
        ? ""
        : ` Marks at ${orders.map((order) => `${tickText(order)}x`).join(", ")} of ${tickText(Number((shaft * 60).toPrecision(5)))} r/min.`;
    return chartDocument(options, {
      title: `${kind} in ${type}`,
      description:
        `${kind} in ${type} from ${tickText(low)} to ${tickText(high)} Hz, lines ${tickText(Number(spectrum.resolution.toPrecision(4)))} Hz apart, ` +
        `the highest ${significant(highest.y)} at ${significant(highest.x, 4)} Hz.${turning}${beside?.said ?? ""}`,
      notes: [
        ...(shaft === undefined
          ? []
          : [`1x is the shaft speed, ${tickText(Number((shaft * 60).toPrecision(5)))} r/min.`]),
        ...assumedNotes([...requireList(spectrum.assumed ?? [], "what was assumed"), ...(beside?.assumed ?? [])]),
      ],
      left: LEFT,
      right,
      top: 40,
      bottom: 38,
      plotHeight: height,
      plot: [
        sideAxis({ ticks, width, height, unit: type }, -22),
        footAxis({ ticks: foot, width, height, unit: "Hz" }),
        ...marks,
        beside === undefined
          ? ""
          : drawnBeside(beside, besideTicks(beside, most, y, rounds), { width, height, from: 0, unitAt: -22 }),
        clipped(width, height, tag("path", { kind: "data", d: draw(reducedCurve(points, x)) ?? "" })),
      ].join(""),
    });
  });
}
