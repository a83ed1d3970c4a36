import { scaleLinear } from "d3-scale";
import { curveStepAfter, line } from "d3-shape";
import { cautions, requireGiven, requirePositive, shown, VeladisError, withParameters } from "../core/index";
import type { TripSettings } from "../device/index";
import { significant } from "../reading/index";
import type { RunOptions, TripEvent } from "../trip/index";
import { assumedNotes } from "./assumed-notes";
import { footAxis, roundTicks, sideAxis, tickText } from "./axis";
import { chartDocument, clipped } from "./chart-document";
import { type ChartOptions, requireHeight, requireOptions, requireWidth } from "./chart-options";
import { gappedCurve } from "./gaps";
import { curveBoxes, type DrawnLevel, levelLines } from "./levels";
import { loneDots } from "./lone-dots";
import { label, rounded, stroke, tag } from "./markup";
import { type CurvePoint, reducedCurve } from "./reduced-curve";
import { widthOf } from "./text-width";
import { LANES, tripLanes } from "./trip-lanes";
import { type TripPlayback, tripPlayback } from "./trip-playback";
import { valueAxis } from "./value-axis";

/** What {@link tripTimeline} draws. */
export interface TripTimelineOptions extends ChartOptions, Omit<RunOptions, "excursions"> {
  readonly settings: TripSettings;
  /** Levels one after the other, in unit and detector of the threshold or in `as`. */
  readonly levels: ArrayLike<number>;
  /** Seconds that each level stands; or the times of the levels in s, never falling, where each stands until the next. */
  readonly dt: number | ArrayLike<number>;
  /** Longest time in s between two levels that is no gap; five times the median if not given. Over a gap the curve is broken. */
  readonly longestGap?: number;
}

const own = /* @__PURE__ */ Object.freeze({
  settings: true,
  levels: true,
  dt: true,
  longestGap: true,
  as: true,
  at: true,
  commands: true,
  nan: true,
  height: true,
} as const);

const LEFT = 46;
const RIGHT = 16;

/** What happened, in words for those who do not see it. */
function descriptionOf({ events, logic }: TripPlayback): string {
  const { threshold, reset, onDelay, type } = logic.rules;
  const said = events.slice(0, 40).map(({ time, event }) => `${tickText(time)} s ${event}`);
  return (
    `Level against time with threshold ${significant(threshold.value)} ${type}, reset level ` +
    `${significant(reset.value)} and on-delay ${onDelay} s. ${said.length > 0 ? `Events: ${said.join(", ")}.` : "Nothing happened."}`
  );
}

/** What happened, above the plot at its time; where words would stand on one another the first is kept. */
function eventWords(events: readonly TripEvent[], x: (time: number) => number, width: number): string {
  let until = Number.NEGATIVE_INFINITY;
  return events
    .map(({ time, event }) => {
      const half = widthOf(event) / 2;
      const at = Math.min(Math.max(x(time), half), width - half);
      if (at - half < until + 5) return "";
      until = at + half;
      return label(at, -4, event, { "text-anchor": "middle" });
    })
    .join("");
}

/**
 * The history of a trip channel: the level with threshold and reset level, the on-delay as it runs, the state, and the
 * contact of the relay. The logic is played as {@link TripLogic} plays it.
 *
 * @param options - `settings`, `levels`, `dt` (a step or times); `as`, `at`, `commands`, `nan` as for {@link TripLogic.run}; and
 *   {@link ChartOptions}
 * @returns an SVG document as text; levels in unit and detector of the threshold, time in seconds
 * @throws {@link VeladisError} as {@link TripLogic} and its `run`; `out-of-range` for fewer than one level or more than
 *   200 000
 * @example
 * ```ts
 * import { tripTimeline } from "veladis/chart";
 *
 * const svg = tripTimeline({
 *   settings: {
 *     threshold: "7.1 mm/s rms",
 *     hysteresis: "5 %",
 *     onDelay: 3,
 *     timerResets: "below threshold",
 *     sensorFault: "alarm",
 *     latching: true,
 *     contact: "normally open",
 *     coil: "normally energised",
 *   },
 *   levels: [4, 4, 9, 9, 4, 8, 8, 8, 8, 4],
 *   dt: 1,
 * });
 * /Events: (.*?)\./.exec(svg)?.[1];
 * // => "2 s timing, 4 s rode out, 5 s timing, 8 s trip"
 * ```
 */
export function tripTimeline(options: TripTimelineOptions): string {
  return withParameters({ options }, () => {
    const { settings, levels, dt, as, at, commands, nan } = requireOptions(
      options,
      own,
      "options such as { settings, levels, dt }",
    );
    requireGiven(settings, "settings with threshold, hysteresis, delays and output", { option: "settings" });
    requireGiven(dt, "a time between levels, or a list of their times, in s", { option: "dt" });
    if (typeof dt !== "object") requirePositive(dt, "a time between levels above zero, in s", { option: "dt" });
    if (!(levels?.length >= 1 && levels.length <= 200_000)) {
      throw new VeladisError(levels?.length === undefined ? "wrong-type" : "out-of-range", {
        expected: "1 to 200 000 levels",
        received: shown(levels?.length),
        option: "levels",
      });
    }
    const run = {
      ...(as && { as }),
      ...(at !== undefined && { at }),
      ...(commands && { commands }),
      ...(nan && { nan }),
    };
    const playback = tripPlayback(settings, levels, dt, run);
    const { threshold, reset, type } = playback.logic.rules;
    const width = requireWidth(options) - LEFT - RIGHT;
    const height = requireHeight(options, 200);
    const [start, last] = [playback.times[0] as number, playback.times.at(-1) as number];
    const end = last > start ? last : start + 1;
    const x = scaleLinear([start, end], [0, width]);
    const finiteLevels = playback.levels.filter((level) => Number.isFinite(level));
    const highest = finiteLevels.reduce((most, level) => Math.max(most, level), threshold.value * 1.15);
    const { y, ticks } = valueAxis(highest, height);
    const points = playback.levels.map((level, i): CurvePoint => ({ x: playback.times[i] as number, y: level }));
    const draw = line<CurvePoint>()
      .defined((point) => Number.isFinite(point.y))
      .x((point) => rounded(x(point.x)))
      .y((point) => rounded(y(point.y)))
      .curve(curveStepAfter);
    // a level stands until the signal fails
    const standing = points.flatMap((point, i) => {
      const before = points[i - 1];
      const fails = before !== undefined && Number.isFinite(before.y) && !Number.isFinite(point.y);
      return fails ? [{ x: point.x, y: before.y }, point] : [point];
    });
    const gapped = gappedCurve(standing, options.longestGap, {
      at: (time) => `${tickText(time)} s`,
      length: (span) => `${tickText(Number(span.toPrecision(3)))} s`,
      lacking: "a good signal",
      broken: "The level is broken where there is no good signal.",
      meaning: "The logic takes the level before a gap to stand until the next.",
    });
    const curve = reducedCurve([...gapped.points, { x: end, y: playback.levels.at(-1) as number }], x);
    const drawn = curve.map((point): CurvePoint => ({ x: x(point.x), y: y(point.y) }));
    const lines: DrawnLevel[] = [
      { kind: "trip", text: `threshold ${significant(threshold.value)}`, value: threshold.value },
      { kind: "reset", text: `reset level ${significant(reset.value)}`, value: reset.value },
    ];
    const isTrip = (event: string): boolean => event === "trip" || event === "power lost";
    const trips = playback.events.filter(({ event }) => isTrip(event) || event === "clear" || event === "reset");
    const marks = [...new Set(trips.map(({ time }) => Math.round(x(time))))];
    const upright = marks.map((at) => ({ left: at, right: at, top: 0, bottom: height }));
    const lanesTop = height + 56;
    const marked = levelLines(lines, y, width, [...curveBoxes(drawn, true), ...upright]);
    const lanes = tripLanes(playback, x, lanesTop, width);
    const foot = roundTicks(x, Math.max(3, Math.round(width / 80)));
    return chartDocument(options, {
      title: `Trip channel at ${significant(threshold.value)} ${type}`,
      description: `${descriptionOf(playback)}${gapped.said}`,
      notes: [
        ...marked.notes,
        ...gapped.notes,
        ...lanes.notes,
        ...assumedNotes(playback.assumed),
        `Caution: ${cautions[1]}`,
      ],
      left: LEFT,
      right: RIGHT,
      top: 28,
      bottom: 4,
      plotHeight: lanesTop + LANES - 22,
      plot: [
        sideAxis({ ticks, width, height, unit: type }),
        footAxis({ ticks: foot, width, height, unit: "s" }),
        ...marks.map((at) => stroke([at, 0], [at, lanesTop + LANES - 22], "mark")),
        clipped(width, height, tag("path", { kind: "data", d: draw(curve) ?? "" })),
        loneDots(drawn),
        marked.drawn,
        eventWords(trips, x, width),
        lanes.drawn,
      ].join(""),
    });
  });
}
