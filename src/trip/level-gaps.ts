import { finiteResult, medianOf, requireGiven, requirePositive, withParameters } from "../core/index";
import { TIME_TOLERANCE, type TripSettings } from "../device/index";
import { levelConversion } from "./level-conversion";
import { requireLevels } from "./require-levels";
import { requireTimes } from "./require-times";
import { type RunOptions, requireRunOptions } from "./run-options";
import { TripLogic } from "./trip-logic";

/** A time without a reading that is longer than a stated one. */
export interface LevelGap {
  /** When the level before it was read, and the level behind it, in seconds. */
  readonly start: number;
  readonly end: number;
  /** Seconds. */
  readonly seconds: number;
  /** The level that is taken to stand meanwhile, in the unit of the threshold; null for a sensor fault. */
  readonly level: number | null;
  /** Whether that level is not below the reset level, or a sensor fault: what came after it is not known. */
  readonly high: boolean;
}

/** All gaps of a history. */
export interface LevelGaps {
  /** Seconds between two levels that are taken as no gap. */
  readonly longest: number;
  /** Median of the seconds between two levels, those of no seconds left out; 0 where there are none. */
  readonly median: number;
  readonly gaps: readonly LevelGap[];
}

/** How gaps are told. */
export interface LevelGapsOptions extends Pick<RunOptions, "as" | "at" | "nan"> {
  /** Seconds between two levels that are no gap; five times the median if not given. */
  readonly longest?: number;
}

/** Longest time between two levels that is no gap, in medians of that time. */
const MEDIANS = 5;

const keys: Readonly<Record<keyof LevelGapsOptions, true>> = /* @__PURE__ */ Object.freeze({
  as: true,
  at: true,
  nan: true,
  longest: true,
});

/** Seconds from each level to the next. */
function spansOf(times: ArrayLike<number>): Float64Array {
  const spans = new Float64Array(Math.max(0, times.length - 1));
  for (let i = 0; i < spans.length; i++) spans[i] = finiteResult((times[i + 1] as number) - (times[i] as number));
  return spans;
}

/**
 * The gaps in a history of levels: where two of them lie further apart than a stated time. {@link TripLogic.run} lets each
 * level stand until the next; over a gap nobody knows whether it did.
 *
 * @param settings - as for {@link TripLogic}; the reset level says what is high
 * @param levels - as for {@link TripLogic.run}
 * @param times - in seconds, one a level, never falling
 * @param options - `as`, `at`, `nan` as for {@link TripLogic.run}
 * @throws {@link VeladisError} `length-mismatch`, `not-positive`, `out-of-range`, and as {@link TripLogic} and its `run`
 * @example
 * ```ts
 * import { levelGaps } from "veladis/protection";
 *
 * const settings = {
 *   threshold: "9 mm/s rms",
 *   hysteresis: "8 %",
 *   onDelay: 8,
 *   timerResets: "below threshold",
 *   sensorFault: "alarm",
 *   latching: true,
 *   contact: "normally open",
 *   coil: "normally energised",
 * } as const;
 * const { longest, gaps } = levelGaps(settings, [3, 3, 8.7, 3, 3], [0, 1, 2, 3602, 3603]);
 * longest; // => 5
 * gaps; // => [{ start: 2, end: 3602, seconds: 3600, level: 8.7, high: true }]
 * ```
 */
export function levelGaps(
  settings: TripSettings,
  levels: ArrayLike<number>,
  times: ArrayLike<number>,
  options: LevelGapsOptions = {},
): LevelGaps {
  return withParameters({ levels, times, options, settings }, () => {
    const { rules } = new TripLogic(settings);
    const faults = requireRunOptions(options, keys).nan !== undefined;
    const { factor } = levelConversion(rules, options);
    const checked = requireLevels(levels, faults);
    requireTimes(
      checked,
      requireGiven(times, "a list of the times of the levels, in s", { parameter: "times" }),
      Number.NEGATIVE_INFINITY,
    );
    const spans = spansOf(times);
    const median = medianOf(spans.filter((span) => span > 0));
    const longest =
      options.longest === undefined
        ? finiteResult(MEDIANS * median)
        : requirePositive(options.longest, "a longest time between two levels above zero, in s", { option: "longest" });
    const most = longest * (1 + TIME_TOLERANCE);
    const gaps: LevelGap[] = [];
    for (const [i, seconds] of spans.entries()) {
      if (!(seconds > most)) continue;
      const level = (checked[i] as number) * factor;
      gaps.push(
        Object.freeze({
          start: times[i] as number,
          end: times[i + 1] as number,
          seconds,
          level: Number.isNaN(level) ? null : finiteResult(level),
          high: !(level < rules.resetAt),
        }),
      );
    }
    return Object.freeze({ longest, median, gaps: Object.freeze(gaps) });
  });
}
