import { tag } from "./markup";
import type { CurvePoint } from "./reduced-curve";

/** The radius of a reading that is drawn as a dot, in pixels. */
const DOT = 3.5;

/** The unbroken pieces of a curve. */
function piecesOf(points: readonly CurvePoint[]): CurvePoint[][] {
  const pieces: CurvePoint[][] = [[]];
  for (const point of points) {
    if (Number.isFinite(point.y)) (pieces.at(-1) as CurvePoint[]).push(point);
    else pieces.push([]);
  }
  return pieces.filter(({ length }) => length > 0);
}

function extent(numbers: readonly number[]): number {
  return Math.max(...numbers) - Math.min(...numbers);
}

/** A reading as a dot. */
export function dot({ x, y }: CurvePoint): string {
  return tag("circle", { kind: "point", cx: x, cy: y, r: DOT });
}

/**
 * Dots for the pieces of a curve that are too small to be seen as a line: one reading between two gaps, or several within a dot.
 * Each stands at the highest of its readings.
 *
 * @param curve - the points that are drawn, in pixels, those of a gap not finite
 */
export function loneDots(curve: readonly CurvePoint[]): string {
  const dots = piecesOf(curve)
    // a long piece is a line, and is not spread into arguments
    .filter((piece) => Math.abs((piece.at(-1) as CurvePoint).x - (piece[0] as CurvePoint).x) < DOT)
    .filter((piece) => extent(piece.map(({ y }) => y)) < DOT)
    .map((piece) => dot(piece.reduce((high, point) => (point.y < high.y ? point : high))));
  return [...new Set(dots)].join("");
}
