import { VeladisError } from "../../core/index";
import { type Band, type BreakPoint, pointAlong, profileDensity } from "../../signal/index";
import type { FrequencyRows } from "../input/csv-frequencies";

/** How far a density that is given may lie from where a slope that is given leads, as a share: prints round both. */
const ROUNDED = 0.05;

/** The point that the slope of a row leads to from it, at the frequency of the next one. */
function ahead({ hertz, beside }: FrequencyRows, i: number, density: number): number {
  return pointAlong([hertz[i] as number, density], beside[i] as number, hertz[i + 1] as number)[1];
}

/**
 * The points of a profile, those without a density found by the slopes that lead to them.
 *
 * A slope in dB an octave holds from its row to the next. Where both ends have their density it is checked.
 *
 * @throws {@link VeladisError} `missing-fact` for a point that no slope leads to, `unknown-option` for a slope that leads
 *   elsewhere, `out-of-range` for one behind the last point
 */
export function pointsOf(rows: FrequencyRows): BreakPoint[] {
  const { hertz, beside } = rows;
  const densities = [...rows.values];
  const last = hertz.length - 1;
  if (Number.isFinite(beside[last])) {
    throw new VeladisError("out-of-range", {
      expected: "a slope from a point to the next one",
      received: `${beside[last]} dB an octave behind the last point, ${hertz[last]} Hz`,
    });
  }
  const isKnown = (i: number): boolean => Number.isFinite(densities[i]);
  const hasSlope = (i: number): boolean => Number.isFinite(beside[i]);
  for (let i = 0; i < last; i++) {
    if (isKnown(i) && hasSlope(i) && !isKnown(i + 1)) densities[i + 1] = ahead(rows, i, densities[i] as number);
  }
  for (let i = last - 1; i >= 0; i--) {
    if (isKnown(i) || !hasSlope(i) || !isKnown(i + 1)) continue;
    densities[i] = pointAlong(
      [hertz[i + 1] as number, densities[i + 1] as number],
      beside[i] as number,
      hertz[i] as number,
    )[1];
  }
  for (let i = 0; i <= last; i++) {
    if (!isKnown(i)) {
      throw new VeladisError("missing-fact", {
        expected: `a density at ${hertz[i]} Hz, or a slope that leads there from a point that has one`,
        received: "neither",
      });
    }
    if (i === last || !hasSlope(i)) continue;
    const led = ahead(rows, i, densities[i] as number);
    const told = densities[i + 1] as number;
    if (Math.abs(led / told - 1) <= ROUNDED) continue;
    throw new VeladisError("unknown-option", {
      expected: `densities that lie along their slope within 5 %`,
      received: `${beside[i]} dB an octave from ${hertz[i]} to ${hertz[i + 1]} Hz, which leads to ${Number(led.toPrecision(4))}, and ${told} there`,
    });
  }
  return hertz.map((at, i) => [at, densities[i] as number]);
}

/** The part of a profile within a band. */
export function bandOfProfile(points: readonly BreakPoint[], [low, high]: Band): BreakPoint[] {
  if (!(low < high)) {
    throw new VeladisError("out-of-range", {
      expected: "--band that begins above 0 Hz and ends higher",
      received: `${low} to ${high} Hz`,
    });
  }
  const [first, last] = [(points[0] as BreakPoint)[0], (points[points.length - 1] as BreakPoint)[0]];
  if (low < first || high > last) {
    throw new VeladisError("out-of-range", {
      expected: `--band within the points of the density, ${first} to ${last} Hz: beyond them nothing is known`,
      received: `${low} to ${high} Hz`,
    });
  }
  const within = points.filter(([hertz]) => hertz > low && hertz < high);
  return [[low, profileDensity(points, low)], ...within, [high, profileDensity(points, high)]];
}
