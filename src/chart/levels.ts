import { convertAmplitude } from "../amplitude/index";
import { type Amplitude, type Assumption, exactAmplitude, significant } from "../reading/index";
import { label, stroke } from "./markup";
import type { CurvePoint } from "./reduced-curve";
import { widthOf } from "./text-width";

/** A level drawn across a plot, told from others by its dashes and its words. */
export interface DrawnLevel {
  readonly kind: "trip" | "alarm" | "reset" | "baseline";
  readonly text: string;
  readonly value: number;
  /** What was assumed in writing it in the type of the chart. */
  readonly assumed?: readonly Assumption[];
}

/** A level that was given in words, in the type of the chart. */
export function levelIn(kind: DrawnLevel["kind"], given: string | Amplitude | undefined, as: string): DrawnLevel[] {
  if (given === undefined) return [];
  const amplitude = exactAmplitude(given);
  const { value, assumed } = convertAmplitude(amplitude, as);
  return [{ kind, value, assumed, text: `${kind} ${significant(value)}` }];
}

/** A part of a plot that something takes, in pixels. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The boxes around the pieces of a curve in pixels: steps, or straight lines from point to point. */
export function curveBoxes(points: readonly CurvePoint[], isStepped: boolean): Box[] {
  return points.slice(1).flatMap((to, i): Box[] => {
    const from = points[i] as CurvePoint;
    if (!Number.isFinite(from.y + to.y)) return [];
    const [top, bottom] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
    if (!isStepped) return [{ left: from.x, right: to.x, top, bottom }];
    return [
      { left: from.x, right: to.x, top: from.y, bottom: from.y },
      { left: to.x, right: to.x, top, bottom },
    ];
  });
}

/** Whether two parts of a plot share a place. */
export const meet = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** The place of words about a line where they meet the least of what is drawn; the first of equals. */
function freePlace(
  words: number,
  rows: readonly number[],
  { width, drawn, taken }: { readonly width: number; readonly drawn: readonly Box[]; readonly taken: readonly Box[] },
) {
  let best = { x: 8, at: rows[0] as number, cost: Number.POSITIVE_INFINITY, box: undefined as Box | undefined };
  for (const at of rows) {
    for (let x = 8; x === 8 || x + words <= width - 4; x += 8) {
      const box = { left: x - 3, right: x + words + 3, top: at - 12, bottom: at + 4 };
      const cost = drawn.filter((one) => meet(one, box)).length + 1000 * taken.filter((one) => meet(one, box)).length;
      if (cost < best.cost) best = { x, at, cost, box };
      if (cost === 0) return best;
    }
  }
  return best;
}

/** How the lines of levels are drawn, in words. */
const looks = { trip: "Solid", alarm: "Dashed", reset: "Dash-dotted", baseline: "Dotted" } as const;

/**
 * The lines of the levels, and their words: above the line, or below it where another is close above, as far left as
 * they stand on no other words and on nothing of the curve. What finds no such place is told in a note, by the look of
 * its line.
 *
 * @param curve - the boxes of the curve, which words leave free where they can
 */
export function levelLines(
  levels: readonly DrawnLevel[],
  y: (value: number) => number,
  width: number,
  curve: readonly Box[],
): { drawn: string; notes: string[]; boxes: readonly Box[] } {
  const sorted = [...levels].sort((a, b) => b.value - a.value);
  const lines = sorted.map(({ value }): Box => ({ left: 0, right: width, top: y(value), bottom: y(value) }));
  const taken: Box[] = [];
  const words = sorted.map((level, i) => {
    const { kind, text, value } = level;
    const above = sorted[i - 1];
    const close = kind === "baseline" || (above !== undefined && y(value) - y(above.value) < 20);
    const rows = [y(value) - 5, y(value) + 15].filter((at) => at > 10);
    const others = lines.filter((_, j) => j !== i);
    const { x, at, box, cost } = freePlace(widthOf(text), close ? rows.reverse() : rows, {
      ...{ width, drawn: curve },
      taken: [...taken, ...others],
    });
    if (box !== undefined) taken.push(box);
    return { level, cost, drawn: label(x, at, text, { kind: "halo" }) };
  });
  const lineText = ({ kind, text }: DrawnLevel): string => `${looks[kind]} line: ${text}.`;
  const notes = words.filter(({ cost }) => cost > 0).map(({ level }) => lineText(level));
  const drawn = [
    ...sorted.map(({ kind, value }) => stroke([0, y(value)], [width, y(value)], kind)),
    ...words.filter(({ cost }) => cost === 0).map(({ drawn }) => drawn),
  ];
  return { drawn: drawn.join(""), notes, boxes: [...taken, ...lines] };
}
