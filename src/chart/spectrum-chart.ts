import { scaleLinear, scaleLog } from "d3-scale";
import { line } from "d3-shape";
import { significant } from "../amplitude/index";
import { finite, positive, shown, VeladisError } from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import type { Spectrum } from "../signal/index";
import { footAxis, sideAxis, type Tick, tickText } from "./axis";
import { type ChartOptions, given, heightFor, widthFor } from "./chart-options";
import { clipped, framed } from "./frame";
import { label, rounded, stroke, tag } from "./markup";
import { widthOf } from "./text-width";
import { type CurvePoint, thinned } from "./thinned";
import { valueAxis } from "./value-axis";

/** What {@link spectrumChart} draws. */
export interface SpectrumChartOptions extends ChartOptions {
  /** What `spectrum` returned, or lines of one's own: line k stands at `k * resolution` hertz. */
  readonly spectrum: Pick<Spectrum, "unit" | "detector" | "resolution"> & { readonly values: ArrayLike<number> };
  /** Shaft speed; its orders are marked 1x, 2x, ... */
  readonly speed?: Frequency;
  /** Orders of the speed that are marked; 1 and 2 if not given. */
  readonly orders?: readonly number[];
  /** Frequencies shown, in hertz; all if not given. */
  readonly frequency?: readonly [low: number, high: number];
  /** Linear if not given; `"log"` shows four decades below the highest line. */
  readonly scale?: "linear" | "log";
}

const LEFT = 56;
const RIGHT = 16;

function linesOf({ spectrum, frequency }: SpectrumChartOptions): { points: CurvePoint[]; low: number; high: number } {
  const { values, resolution } = given(spectrum, "what spectrum(samples, ...) returns");
  positive(resolution, "a spacing of the lines above zero, in Hz");
  const all = Array.from(
    values,
    (value, k): CurvePoint => ({ x: k * resolution, y: finite(value, `a finite line at index ${k}`) }),
  );
  const [low, high] = frequency ?? [0, (all.length - 1) * resolution];
  if (!(Number.isFinite(low) && Number.isFinite(high) && low >= 0 && high > low)) {
    throw new VeladisError("out-of-range", {
      expected: "frequencies in Hz from low to high",
      received: shown(`${low} to ${high}`),
    });
  }
  const points = all.filter(({ x }) => x >= low && x <= high);
  if (points.length >= 2) return { points, low, high };
  throw new VeladisError("missing-fact", {
    expected: "at least two lines of the spectrum within the frame",
    received: shown(points.length),
  });
}

/** An upright axis: linear from zero, or four decades below the highest line. */
function amplitudeAxis(
  scale: "linear" | "log",
  most: number,
  height: number,
): { y: (value: number) => number; ticks: Tick[] } {
  if (scale === "linear" || most <= 0) return valueAxis(most, height);
  const top = 10 ** Math.ceil(Math.log10(most * 1.02));
  const y = scaleLog([top / 1e4, top], [height, 0]);
  const ticks = [0, 1, 2, 3, 4].map((power) => Number((top / 10 ** power).toPrecision(6)));
  return {
    y: (value) => y(Math.max(value, top / 1e4)),
    ticks: ticks.map((value) => ({ at: y(value), text: tickText(value) })),
  };
}

/**
 * A spectrum with marks at the orders of the shaft speed.
 *
 * Where lines are closer than pixels the lowest and highest of each pixel column are kept, so that no line is lost.
 *
 * @param options - `spectrum`, `speed`, `orders`, `frequency`, `scale`, and {@link ChartOptions}
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
  const { spectrum, speed, orders = [1, 2], scale = "linear" } = given(options, "{ spectrum }");
  if (scale !== "linear" && scale !== "log") {
    throw new VeladisError("unknown-option", {
      expected: "a scale",
      received: shown(scale),
      allowed: ["linear", "log"],
    });
  }
  const { points, low, high } = linesOf(options);
  const width = widthFor(options) - LEFT - RIGHT;
  const height = heightFor(options, 240);
  const type = `${spectrum.unit} ${spectrum.detector}`;
  const x = scaleLinear([low, high], [0, width]);
  const highest = points.reduce((a, b) => (b.y > a.y ? b : a));
  const { y, ticks } = amplitudeAxis(scale, highest.y, height);
  const draw = line<CurvePoint>()
    .x((point) => rounded(x(point.x)))
    .y((point) => rounded(y(point.y)));
  const foot = x.ticks(Math.max(3, Math.round(width / 70))).map((f) => ({ at: x(f), text: tickText(f) }));
  const shaft = speed === undefined ? undefined : hertzOf(speed);
  let taken = Number.NEGATIVE_INFINITY;
  const marks = orders.flatMap((order) => {
    const f = positive(order, "an order above zero") * (shaft ?? Number.NaN);
    if (!(f >= low && f <= high)) return [];
    const at = x(f);
    const text = `${tickText(order)}x`;
    const room = at - widthOf(text) / 2 > taken + 4;
    if (room) taken = at + widthOf(text) / 2;
    return [stroke(at, 0, at, height, "mark") + (room ? label(at, -5, text, { "text-anchor": "middle" }) : "")];
  });
  const turning =
    shaft === undefined
      ? ""
      : ` Marks at ${orders.map((order) => `${tickText(order)}x`).join(", ")} of ${tickText(Number((shaft * 60).toPrecision(5)))} r/min.`;
  return framed(options, {
    title: `Spectrum in ${type}`,
    description:
      `Spectrum in ${type} from ${tickText(low)} to ${tickText(high)} Hz, lines ${tickText(Number(spectrum.resolution.toPrecision(4)))} Hz apart, ` +
      `the highest ${significant(highest.y)} at ${significant(highest.x, 4)} Hz.${turning}`,
    notes:
      shaft === undefined ? [] : [`1x is the shaft speed, ${tickText(Number((shaft * 60).toPrecision(5)))} r/min.`],
    left: LEFT,
    right: RIGHT,
    top: 40,
    bottom: 38,
    plotHeight: height,
    plot: [
      sideAxis(ticks, width, height, type, -22),
      footAxis(foot, width, height, "Hz"),
      ...marks,
      clipped(width, height, tag("path", { class: "data", d: draw(thinned(points, x)) ?? "" })),
    ].join(""),
  });
}
