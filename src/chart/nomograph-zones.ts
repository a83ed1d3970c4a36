import { line } from "d3-shape";
import { conversionAssumes, convertAmplitude } from "../amplitude/index";
import { type Assumption, amplitudeIn } from "../reading/index";
import type { LogFrame, Obstacle } from "./diagonals";
import { type Attributes, label, rounded, tag } from "./markup";
import { zoneStrength } from "./palette";
import { widthOf } from "./text-width";
import type { ChartZones } from "./zones";

/** Frequencies in hertz at which the lowest of several straight lines may bend, ends included. */
function bends(levels: readonly ((hertz: number) => number)[], [f0, f1]: readonly [number, number]): number[] {
  const slopes = levels.map((level) => Math.log(level(f1) / level(f0)) / Math.log(f1 / f0));
  const found = [f0, f1];
  levels.forEach((a, i) => {
    levels.slice(i + 1).forEach((b, j) => {
      const steeper = (slopes[i] as number) - (slopes[i + 1 + j] as number);
      if (Math.abs(steeper) < 1e-6) return;
      const f = f0 * Math.exp(Math.log(b(f0) / a(f0)) / steeper);
      if (f > f0 && f < f1) found.push(f);
    });
  });
  return found.sort((a, b) => a - b);
}

type Span = readonly [low: number, high: number];

/** The frequencies of a frame that the scheme judges; nothing where it judges none of them. */
function judgedSpan({ band }: ChartZones, [low, high]: Span): Span | undefined {
  const [from, to] = [Math.max(low, band?.[0] ?? low), Math.min(high, band?.[1] ?? high)];
  return from < to ? [from, to] : undefined;
}

/** For each limit its velocity across frequency: the lowest of what the quantities allow, since the worst governs. */
function zoneCurves(zones: ChartZones, frame: LogFrame, band: Span): { name: string; points: [number, number][] }[] {
  const names = zones.criteria.flatMap(({ limits }) => Object.keys(limits));
  return [...new Set(names)].map((name) => {
    const levels = zones.criteria.flatMap(({ as, limits }) => {
      const limit = limits[name];
      if (limit === undefined) return [];
      const printed = amplitudeIn(as, limit.value);
      return [(hertz: number) => convertAmplitude(printed, frame.as, { at: { hertz } }).value];
    });
    const points = bends(levels, band).map((f): [number, number] => [f, Math.min(...levels.map((level) => level(f)))]);
    return { name, points };
  });
}

/** Areas and limits of zones, and their letters at the right edge with the places these take. */
export interface NomographZones {
  readonly areas: string;
  readonly letters: string;
  readonly taken: readonly Obstacle[];
  /** What was assumed in drawing limits as velocities. */
  readonly assumed: readonly Assumption[];
}

/** A zone lower than its letter, and how far that letter steps aside. */
const THIN = 18;
const ASIDE = 20;

/** Zones as areas between their limits, as far along as the scheme judges. */
export function nomographZones(zones: ChartZones, frame: LogFrame, height: number): NomographZones {
  const span = judgedSpan(zones, frame.frequency);
  if (span === undefined) return { areas: "", letters: "", taken: [], assumed: [] };
  const [left, right] = [frame.x(span[0]), frame.x(span[1])] as [number, number];
  const draw = line<[number, number]>()
    .x(([f]) => rounded(frame.x(f)))
    .y(([, v]) => rounded(frame.y(v)));
  const curves = zoneCurves(zones, frame, span);
  const edges = curves.map(({ points }) => draw(points) as string);
  const ends = curves.map(({ points }) =>
    Math.min(Math.max(frame.y((points.at(-1) as [number, number])[1]), 0), height),
  );
  const areas = zones.names.map((_, i) => {
    const lower =
      i === 0 ? `M${rounded(left)},${rounded(height)}L${rounded(right)},${rounded(height)}` : (edges[i - 1] as string);
    const upper = edges[i] ?? `M${rounded(left)},0L${rounded(right)},0`;
    const back = upper.slice(1).split("L").reverse().join("L");
    const strength = rounded(zoneStrength(i, zones.names.length));
    return tag("path", { kind: "zone", "fill-opacity": strength, d: `${lower}L${back}Z` });
  });
  let column = 0;
  const placed = zones.names.flatMap((name, i) => {
    const [below, above] = [ends[i - 1] ?? height, ends[i] ?? 0];
    if (below - above < 1) return [];
    const isThin = below - above < THIN;
    // the letter of a thin zone steps aside, out of the column of its neighbours
    column = isThin ? column + 1 : 0;
    const x = right - 8 - column * ASIDE;
    const isOuter = !isThin && (i === 0 || i === zones.names.length - 1);
    const middle = isOuter ? (i === 0 ? above + 13 : below - 13) : (below + above) / 2;
    return [{ name, middle, x }];
  });
  const style: Attributes = { kind: ["letter", "halo"], "text-anchor": "end" };
  return {
    assumed: zones.criteria.flatMap(({ as }) => conversionAssumes(as, frame.as)),
    areas: [...areas, ...edges.map((d) => tag("path", { kind: "bound", d }))].join(""),
    letters: placed.map(({ name, middle, x }) => label(x, middle + 5, name, style)).join(""),
    taken: placed.flatMap(({ name, middle, x }) =>
      Array.from({ length: Math.ceil(widthOf(name, 14) / 9) + 1 }, (_, i) => [x - i * 9, middle] as const),
    ),
  };
}
