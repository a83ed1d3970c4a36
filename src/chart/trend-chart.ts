import { line } from "d3-shape";
import { convertAmplitude } from "../amplitude/index";
import { inPlace, VeladisError, withParameters } from "../core/index";
import { type Amplitude, parsedType, type ReadingTypeText, significant } from "../reading/index";
import { assumedNotes } from "./assumed-notes";
import { footAxis, sideAxis, tickText } from "./axis";
import { BESIDE, besideAxis, besideTicks, drawnBeside } from "./beside-axis";
import { chartDocument, clipped } from "./chart-document";
import { type ChartOptions, requireHeight, requireOptions, requireWidth, textOrDefault } from "./chart-options";
import { clippedMarks, clippedWords, stateBehind } from "./clipped-marks";
import { gappedCurve } from "./gaps";
import { curveBoxes, levelIn, levelLines } from "./levels";
import { dot, loneDots } from "./lone-dots";
import { rounded, stroke, tag } from "./markup";
import { type CurvePoint, reducedCurve } from "./reduced-curve";
import { DAY, dateText, timeAxis } from "./time-axis";
import { type TrendPoint, type TrendReading, trendPoints } from "./trend-points";
import { valueAxis } from "./value-axis";
import { notDrawnNotes } from "./within";
import { boundWords, zoneBands } from "./zone-bands";
import { boundsIn, type ChartSeverity, zonesFor } from "./zones";

/** What {@link trendChart} draws. */
export interface TrendChartOptions extends ChartOptions {
  readonly readings: readonly TrendReading[];
  /** What the trend is shown in, e.g. `"mm/s rms"`. */
  readonly as: ReadingTypeText;
  /** What numbers of time count; `"days"` if not given. Dates are shown in UTC. */
  readonly timeUnit?: string;
  /**
   * Longest time between two readings that is no gap: in `timeUnit`, of dates in days; five times the median if not given. Over a
   * gap the curve is broken.
   */
  readonly longestGap?: number;
  /** A second axis at the right, in another type of the same quantity, e.g. `"in/s pk"`. */
  readonly beside?: ReadingTypeText;
  readonly baseline?: string | Amplitude;
  readonly alarm?: string | Amplitude;
  readonly trip?: string | Amplitude;
  /** A table and a machine whose zones lie behind the trend. */
  readonly severity?: ChartSeverity;
}

const own = /* @__PURE__ */ Object.freeze({
  readings: true,
  as: true,
  timeUnit: true,
  longestGap: true,
  beside: true,
  baseline: true,
  alarm: true,
  trip: true,
  severity: true,
  height: true,
} as const);

const LEFT = 46;
/** Room at the right, with the letters of zones in it. */
const RIGHT = 28;

/**
 * A trend of readings with baseline, alarm, trip and the zones of a severity table.
 *
 * Zones, levels and readings in another unit or detector are converted to `as`; another quantity needs its frequency.
 * Points are drawn one by one up to 120, beyond that the curve alone, thinned so that no peak is lost; a reading that stands
 * alone between two gaps is a dot whatever the count. One out of the range of its loop is a triangle, and is told.
 *
 * @param options - `readings`, `as`, levels in words, `severity`, and {@link ChartOptions}
 * @returns an SVG document as text
 * @throws {@link VeladisError} `missing-option` without readings, `wrong-type` for mixed times, `negative`,
 *   `not-finite`, and as {@link convertAmplitude} and `limitsFor`
 * @example
 * ```ts
 * import { trendChart } from "veladis/chart";
 *
 * const svg = trendChart({
 *   readings: [
 *     { time: new Date("2026-09-01"), reading: 2.1 },
 *     { time: new Date("2026-10-01"), reading: "0.13 in/s pk" },
 *   ],
 *   as: "mm/s rms",
 *   alarm: "3.2 mm/s rms",
 *   trip: "4.5 mm/s rms",
 * });
 * /<desc>(.*?)<\/desc>/.exec(svg)?.[1];
 * // => "2 readings in mm/s rms from 2026-09-01 to 2026-10-01, the last 2.33, the highest 2.33. alarm 3.20. trip 4.50."
 * ```
 */
export function trendChart(options: TrendChartOptions): string {
  return withParameters({ options }, () => {
    const {
      as: written,
      readings,
      severity,
    } = requireOptions(options, own, 'options such as { readings, as: "mm/s rms" }');
    const timeUnit = textOrDefault(options.timeUnit, "days", "a unit of time", "timeUnit");
    const { type: as, unit, quantity } = inPlace({ option: "as" }, () => parsedType(written));
    const points = trendPoints(options.readings, options.as);
    const beside = besideAxis(options.beside, as);
    const right = RIGHT + (beside === undefined ? 0 : BESIDE);
    const width = requireWidth(options) - LEFT - right;
    const height = requireHeight(options, 240);
    const levels = [
      ...levelIn("baseline", options.baseline, as),
      ...levelIn("alarm", options.alarm, as),
      ...levelIn("trip", options.trip, as),
    ];
    const zones = severity === undefined ? undefined : zonesFor(severity);
    const mine = zones?.criteria.find((criterion) => criterion.quantity === quantity);
    if (zones !== undefined && mine === undefined) {
      throw new VeladisError("wrong-quantity", {
        expected: `a table with limits in the quantity of ${unit}`,
        received: `limits in ${zones.criteria.map((one) => one.as).join(", ")}`,
      });
    }
    const others = zones?.criteria.filter((criterion) => criterion.quantity !== quantity) ?? [];
    const bounds = mine === undefined ? [] : boundsIn(mine, as);
    const taken = points.filter((point) => Number.isFinite(point.y));
    const worse = (a: TrendPoint, b: TrendPoint): boolean => b.y > a.y || (b.y === a.y && b.state === "above range");
    const peak = taken.reduce((a, b) => (worse(a, b) ? b : a));
    const highest = Math.max(peak.y, ...levels.map(({ value }) => value), (bounds.at(-1)?.value ?? 0) * 1.1);
    const { y, ticks, most, rounds } = valueAxis(highest, height);
    const [first, last] = [points[0] as CurvePoint, points.at(-1) as CurvePoint];
    const dated = readings[0]?.time instanceof Date;
    const { x, ticks: foot, unit: timeName, between } = timeAxis(points, width, dated ? undefined : timeUnit);
    const text = (time: number): string => (dated ? dateText(time) : `${tickText(time)} ${timeUnit}`);
    const length = (span: number): string =>
      dated
        ? `${tickText(Number((span / DAY).toPrecision(3)))} days`
        : `${tickText(Number(span.toPrecision(3)))} ${timeUnit}`;
    const { longestGap } = options;
    const gapped = gappedCurve(points, dated && longestGap !== undefined ? longestGap * DAY : longestGap, {
      at: text,
      length,
      lacking: "a reading",
      broken: "The curve is broken where no reading was taken.",
    });
    const draw = line<CurvePoint>()
      .defined((point) => Number.isFinite(point.y))
      .x((point) => rounded(x(point.x)))
      .y((point) => rounded(y(point.y)));
    const curve = reducedCurve(gapped.points, x);
    const drawn = curve.map((point): CurvePoint => ({ x: x(point.x), y: y(point.y) }));
    const curves = curveBoxes(drawn, false);
    const marked = levelLines(levels, y, width, [
      ...curves,
      ...bounds.map(({ value }) => ({ left: 0, right: width, top: y(value), bottom: y(value) })),
    ]);
    const limitWords = boundWords(
      bounds.map(({ value }) => value),
      y,
      width,
      [...curves, ...marked.boxes],
    );
    const outside = clippedWords(points);
    const said = (point: TrendPoint): string => `${significant(point.y)}${stateBehind(point)}`;
    return chartDocument(options, {
      title: `Trend in ${as}`,
      description:
        `${taken.length} readings in ${as} from ${text(first.x)} to ${text(last.x)}, the last ${said(taken.at(-1) as TrendPoint)}, the highest ${said(peak)}.${outside.map((one) => ` ${one}`).join("")}${gapped.said}${beside?.said ?? ""}` +
        `${levels.map((level) => ` ${level.text}.`).join("")}${zones === undefined ? "" : ` Zones ${zones.names.join(", ")}.`}`,
      notes: [
        ...outside,
        ...marked.notes,
        ...gapped.notes,
        ...limitWords.notes,
        ...(zones?.notes ?? []),
        ...others.map(({ as }) => `Not shown: the limits in ${as}, by which the zone may be worse.`),
        ...notDrawnNotes(points),
        ...assumedNotes(
          [...points, ...levels, ...bounds, ...(beside === undefined ? [] : [beside])].flatMap(
            (one) => one.assumed ?? [],
          ),
          zones?.assumedFacts,
        ),
      ],
      left: LEFT,
      right,
      top: 28,
      bottom: 38,
      plotHeight: height,
      plot: [
        mine === undefined || zones === undefined
          ? ""
          : zoneBands({ names: zones.names, bounds: bounds.map(({ value }) => value), y, width, height }),
        sideAxis({ ticks, width, height, unit: as }),
        beside === undefined
          ? ""
          : drawnBeside(beside, besideTicks(beside, most, y, rounds), { width, height, from: RIGHT - 6, unitAt: -10 }),
        footAxis({ ticks: foot, width, height, unit: timeName }),
        ...between.map((at) => stroke([at, height], [at, height + 4], "axis")),
        clipped(width, height, tag("path", { kind: "data", d: draw(curve) ?? "" })),
        ...(points.length > 120 ? [loneDots(drawn)] : taken.map((point) => dot({ x: x(point.x), y: y(point.y) }))),
        clippedMarks(points, x, y),
        limitWords.drawn,
        marked.drawn,
      ].join(""),
    });
  });
}
