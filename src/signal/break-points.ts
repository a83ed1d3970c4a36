import { dataText, requireList, requirePositive, shown, VeladisError, withParameters } from "../core/index";
import { decibelsPerOctave, slopeExponent } from "./slope";

/** A break point of a profile: frequency in hertz, density. */
export type BreakPoint = readonly [hertz: number, density: number];

/**
 * The break points, if they are a profile: two or more, frequencies and densities above zero, frequencies rising.
 *
 * @throws {@link VeladisError} `wrong-type`, `missing-fact`, `not-positive`, `not-a-number`, `not-finite`, or
 *   `out-of-range` when frequencies do not rise
 */
export function requireBreakPoints(points: readonly BreakPoint[]): readonly BreakPoint[] {
  const odd = Array.isArray(points)
    ? Array.from(points).findIndex((one) => !Array.isArray(one) || one.length !== 2)
    : 0;
  if (!Array.isArray(points) || odd >= 0) {
    throw new VeladisError("wrong-type", {
      expected: "a list of break points such as [[10, 0.01], [100, 0.1]], frequency in Hz and density",
      received: Array.isArray(points) ? dataText(points) : shown(points),
      parameter: "points",
      ...(Array.isArray(points) && { index: odd }),
    });
  }
  if (points.length < 2) {
    throw new VeladisError("missing-fact", {
      expected: "two break points or more",
      received: `${points.length}`,
      parameter: "points",
    });
  }
  points.forEach(([hertz, density], i) => {
    const place = { parameter: "points", index: i };
    requirePositive(hertz, `a frequency above zero at break point ${i}, in Hz`, place);
    requirePositive(density, `a density above zero at break point ${i}`, place);
    const before = points[i - 1]?.[0];
    if (before !== undefined && !(hertz > before)) {
      throw new VeladisError("out-of-range", {
        expected: `a frequency above ${before} Hz at break point ${i}, since frequencies rise`,
        received: `${hertz} Hz`,
        ...place,
      });
    }
  });
  return points;
}

/** Exponent of the straight line on double logarithmic paper between two break points. */
function exponentBetween([f1, s1]: BreakPoint, [f2, s2]: BreakPoint): number {
  return (Math.log(s2) - Math.log(s1)) / Math.log(f2 / f1);
}

/**
 * Slopes of a profile in decibels an octave, one for each segment.
 *
 * @throws {@link VeladisError} as {@link profileOverall}
 * @example
 * ```ts
 * import { profileSlopes } from "veladis/signal";
 *
 * profileSlopes([[20, 0.01], [80, 0.04], [350, 0.04]]).map((slope) => slope.toFixed(2)); // => ["3.01", "0.00"]
 * ```
 */
export function profileSlopes(points: readonly BreakPoint[]): number[] {
  return withParameters({ points }, () => {
    return requireBreakPoints(points)
      .slice(1)
      .map((point, i) => decibelsPerOctave(exponentBetween(points[i] as BreakPoint, point)));
  });
}

/**
 * The density at a frequency of a profile, by the straight line on double logarithmic paper.
 *
 * @throws {@link VeladisError} `out-of-range` outside the profile, and as {@link profileOverall}
 * @example
 * ```ts
 * import { profileDensity } from "veladis/signal";
 *
 * profileDensity([[20, 0.01], [80, 0.04]], 40).toFixed(6); // => "0.020000"
 * ```
 */
export function profileDensity(points: readonly BreakPoint[], hertz: number): number {
  return withParameters({ points, hertz }, () => {
    const checked = requireBreakPoints(points);
    const at = requirePositive(hertz, "a frequency above zero, in Hz", { parameter: "hertz" });
    const i = checked.findIndex(([f], k) => k > 0 && at <= f);
    const [from, to] = [checked[i - 1], checked[i]];
    if (from === undefined || to === undefined || at < from[0]) {
      const [low, high] = [checked[0] as BreakPoint, checked[checked.length - 1] as BreakPoint];
      throw new VeladisError("out-of-range", {
        expected: `a frequency from ${low[0]} to ${high[0]} Hz`,
        received: `${at} Hz`,
      });
    }
    const part = Math.log(at / from[0]) / Math.log(to[0] / from[0]);
    return Math.exp(Math.log(from[1]) + part * (Math.log(to[1]) - Math.log(from[1])));
  });
}

/**
 * The break point that a slope leads to from another one.
 *
 * @param decibels - slope in dB an octave
 * @throws {@link VeladisError} `not-positive`, `not-finite`
 * @example
 * ```ts
 * import { pointAlong } from "veladis/signal";
 *
 * pointAlong([80, 0.04], -3, 20).map((value) => value.toFixed(4)); // => ["20.0000", "0.1592"]
 * ```
 */
export function pointAlong(point: BreakPoint, decibels: number, hertz: number): BreakPoint {
  return withParameters({ point, decibels, hertz }, () => {
    const [f, s] = requireList(point, "a break point as [hertz, density]", { parameter: "point" });
    const ratio =
      requirePositive(hertz, "a frequency above zero, in Hz", { parameter: "hertz" }) /
      requirePositive(f as number, "a frequency above zero, in Hz", { parameter: "point", index: 0 });
    return [
      hertz,
      requirePositive(
        requirePositive(s as number, "a density above zero", { parameter: "point", index: 1 }) *
          ratio ** slopeExponent(decibels),
        "a density above zero",
      ),
    ];
  });
}
