import { finiteResult, inPlace, largestOf, requireList, VeladisError, withParameters } from "../core/index";
import { type Amplitude, type Assumption, union } from "../reading/index";
import { checkAgainstKnown, type KnownCheck, type KnownCheckResult } from "./check-against-known";
import { requireRest } from "./require-rest";
import { worstVerdict } from "./worst-verdict";

/** One point of a linearity check. */
export interface LinearityPoint extends KnownCheckResult {
  /** Indicated less the best straight line, in the unit of the first point. */
  readonly offLine: number;
}

/** A linearity check over several known levels. */
export interface Linearity {
  readonly as: string;
  /** Of the least-squares line: indicated = offset + slope x known. */
  readonly slope: number;
  /** In `unit`. */
  readonly offset: number;
  readonly points: readonly LinearityPoint[];
  /** The point with the largest error in percent of its known level. */
  readonly worst: LinearityPoint;
  /** The largest distance from the line, in percent of the largest known level. */
  readonly nonLinearity: number;
  /** The worst of the points' verdicts. */
  readonly verdict: KnownCheckResult["verdict"];
  /** What was assumed for any of the points. */
  readonly assumed: readonly Assumption[];
}

/**
 * Several known levels at one frequency: slope, offset, worst point and the verdict on each.
 *
 * @param points - known and indicated; unit and detector of the first known level serve all
 * @param rest - tolerance, uncertainty and rule, as for {@link checkAgainstKnown}
 * @throws {@link VeladisError} `out-of-range` for fewer than two different levels, and as {@link checkAgainstKnown}
 * @example
 * ```ts
 * import { linearity } from "veladis/protection";
 *
 * const { slope, offset, worst, verdict } = linearity(
 *   [
 *     { known: "2 mm/s rms", indicated: "2.1 mm/s rms" },
 *     { known: "5 mm/s rms", indicated: "5.1 mm/s rms" },
 *     { known: "10 mm/s rms", indicated: "10.1 mm/s rms" },
 *   ],
 *   { tolerance: "5 %" },
 * );
 * slope.toFixed(3); // => "1.000"
 * offset.toFixed(3); // => "0.100"
 * worst.known.value; // => 2
 * verdict; // => "pass"
 * ```
 */
export function linearity(
  points: readonly Pick<KnownCheck, "known" | "indicated">[],
  rest: Pick<KnownCheck, "tolerance" | "uncertainty" | "rule">,
): Linearity {
  return withParameters({ rest, points }, () => {
    requireRest(rest);
    // which of a point is missing is missing in the points
    const both = { known: undefined, indicated: undefined };
    const checks = requireList(points, "a list of points, each with known and indicated level", {
      parameter: "points",
    }).map((point, index) =>
      withParameters({ points: { ...both, ...point }, rest }, () =>
        inPlace({ index }, () => checkAgainstKnown({ ...rest, ...point })),
      ),
    );
    const unit = checks[0]?.as ?? "";
    const stray = checks.find((check) => check.as !== unit);
    const levels = new Set(checks.map(({ known }) => known.value));
    if (levels.size < 2 || stray !== undefined) {
      throw new VeladisError(stray === undefined ? "out-of-range" : "wrong-quantity", {
        expected: stray === undefined ? "at least two different known levels" : `known levels all in ${unit}`,
        received: stray === undefined ? `${levels.size}` : stray.as,
      });
    }
    const mean = (of: (check: KnownCheckResult) => number): number =>
      checks.reduce((sum, check) => sum + of(check), 0) / checks.length;
    const value = ({ value }: Amplitude): number => value;
    const x = mean(({ known }) => value(known));
    const y = mean(({ indicated }) => value(indicated));
    const slope = finiteResult(
      mean(({ known, indicated }) => (value(known) - x) * (value(indicated) - y)) /
        mean(({ known }) => (value(known) - x) ** 2),
    );
    const offset = finiteResult(y - slope * x);
    const found = checks.map((check) =>
      Object.freeze({ ...check, offLine: finiteResult(check.indicated.value - offset - slope * check.known.value) }),
    );
    const span = largestOf(levels);
    return Object.freeze({
      as: unit,
      slope,
      offset,
      points: Object.freeze(found),
      worst: found.reduce((a, b) => (Math.abs(b.errorPercent) > Math.abs(a.errorPercent) ? b : a)),
      nonLinearity: finiteResult((100 * largestOf(found.map(({ offLine }) => Math.abs(offLine)))) / span),
      verdict: worstVerdict(found),
      assumed: found.reduce<readonly Assumption[]>((all, point) => union(all, point.assumed), []),
    });
  });
}
