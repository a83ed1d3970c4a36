import { convertAmplitude } from "../amplitude/index";
import { requireFinite, requireList, requireNonNegative, VeladisError } from "../core/index";
import { type Amplitude, type Assumption, amplitudeOf, type ReadingTypeText, type Step } from "../reading/index";
import type { StatedPoint } from "./clipped-marks";

/** One reading of a trend. */
export interface TrendReading {
  /** A date, or a number of whatever `timeUnit` says. */
  readonly time: Date | number;
  /** A number in `as`, or a reading with its unit; left out where none was taken, which breaks the curve. */
  readonly reading?: number | string | Amplitude;
}

/** A reading of a trend as a point, with what was assumed in writing it in the type of the chart. */
export interface TrendPoint extends StatedPoint {
  readonly assumed: readonly Assumption[];
  readonly history?: readonly Step[] | undefined;
}

/** What a point has of its reading: a value that is NaN where none was taken. */
function levelOf(
  reading: TrendReading["reading"],
  as: ReadingTypeText,
  index: number,
): Pick<Amplitude, "value" | "history" | "state"> & { readonly assumed?: readonly Assumption[] } {
  if (reading === undefined) return { value: Number.NaN };
  if (typeof reading !== "number") return convertAmplitude(amplitudeOf(reading), as);
  const place = { option: "readings", index };
  return { value: requireNonNegative(reading, `a reading of zero or more at index ${index}`, place) };
}

/**
 * The readings as points in a type, by rising time.
 *
 * @throws {@link VeladisError} `missing-option` without readings, `wrong-type` for mixed times, `negative`, `not-finite`
 */
export function trendPoints(readings: readonly TrendReading[], as: ReadingTypeText): TrendPoint[] {
  if (requireList(readings, "a list of readings with their times", { option: "readings" }).length === 0) {
    throw new VeladisError("missing-option", { expected: "at least one reading with its time", received: "nothing" });
  }
  const dated = readings.filter(({ time }) => time instanceof Date).length;
  if (dated !== 0 && dated !== readings.length) {
    throw new VeladisError("wrong-type", {
      expected: "times that are all dates or all numbers",
      received: "some of each",
    });
  }
  const points = readings
    .map(({ time, reading }, i): TrendPoint => {
      const { value, assumed = [], history, state } = levelOf(reading, as, i);
      return {
        x: requireFinite(time instanceof Date ? time.getTime() : time, `a time at index ${i}`, {
          option: "readings",
          index: i,
        }),
        y: value,
        assumed,
        history,
        state,
      };
    })
    .sort((a, b) => a.x - b.x);
  if (points.some(({ y }) => Number.isFinite(y))) return points;
  throw new VeladisError("missing-option", { expected: "at least one reading with its time", received: "times alone" });
}
