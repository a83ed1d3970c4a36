import { inPlace, requireList, requireText, VeladisError, withParameters } from "../core/index";
import { type Assumption, union } from "../reading/index";
import { checkAgainstKnown, type KnownCheck, type KnownCheckResult } from "./check-against-known";
import { requireRest } from "./require-rest";
import { worstVerdict } from "./worst-verdict";

/** One of several checks, each with unit and frequency of its own. */
export interface CheckPoint extends KnownCheckResult {
  /** What it is called; its number from 1 where it has no name. */
  readonly point: string;
}

/** Several checks of one device, in whatever units and at whatever frequencies. */
export interface CheckPoints {
  readonly points: readonly CheckPoint[];
  /** The one whose error is the largest share of its tolerance. */
  readonly worst: CheckPoint;
  /** The worst of the verdicts. */
  readonly verdict: KnownCheckResult["verdict"];
  /** What was assumed for any of them. */
  readonly assumed: readonly Assumption[];
}

/** An error as a share of the tolerance on its side; of none, of any error is beyond all. */
function shareOfTolerance({ error, tolerance }: KnownCheckResult): number {
  return error === 0 ? 0 : Math.abs(error) / tolerance;
}

/**
 * Several checks of one device, each by itself: known levels in mixed units, at a frequency each.
 *
 * For one unit and one frequency {@link linearity} tells slope and offset too.
 *
 * @param points - known and indicated level of each, and what it is called
 * @param rest - tolerance, uncertainty and rule of all, as for {@link checkAgainstKnown}
 * @throws {@link VeladisError} `missing-option` for no points, and as {@link checkAgainstKnown}
 * @example
 * ```ts
 * import { checkPoints } from "veladis/protection";
 *
 * const { points, worst, verdict } = checkPoints(
 *   [
 *     { point: "low", known: "4 mm/s rms at 40 Hz", indicated: "3.9 mm/s rms" },
 *     { point: "high", known: "1 g pk at 159.2 Hz", indicated: "0.37 in/s pk" },
 *   ],
 *   { tolerance: "5 %" },
 * );
 * points.map(({ expected }) => expected?.value.toFixed(3)); // => ["4.000", "0.386"]
 * [worst.point, verdict]; // => ["high", "pass"]
 * ```
 */
export function checkPoints(
  points: readonly (Pick<KnownCheck, "known" | "indicated"> & { readonly point?: string })[],
  rest: Pick<KnownCheck, "tolerance" | "uncertainty" | "rule">,
): CheckPoints {
  return withParameters({ rest, points }, () => {
    requireRest(rest);
    const list = requireList(points, "a list of points, each with known and indicated level", { parameter: "points" });
    // which of a point is missing is missing in the points
    const both = { known: undefined, indicated: undefined };
    const found = list.map(
      ({ point = "", ...levels }, index): CheckPoint =>
        withParameters({ points: { ...both, point, ...levels }, rest }, () =>
          inPlace({ index }, () => {
            const name =
              point === "" ? `${index + 1}` : requireText(point, "what a point is called", { option: "point" });
            return Object.freeze({ point: name, ...checkAgainstKnown({ ...rest, ...levels }) });
          }),
        ),
    );
    const [first] = found;
    if (first === undefined) {
      throw new VeladisError("missing-option", {
        expected: "at least one point with known and indicated level",
        received: "an empty list",
        parameter: "points",
      });
    }
    return Object.freeze({
      points: Object.freeze(found),
      worst: found.reduce((a, b) => (shareOfTolerance(b) > shareOfTolerance(a) ? b : a), first),
      verdict: worstVerdict(found),
      assumed: found.reduce<readonly Assumption[]>((all, point) => union(all, point.assumed), []),
    });
  });
}
