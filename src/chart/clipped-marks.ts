import { counted } from "../core/index";
import { isClipped, type LoopState } from "../reading/index";
import { tag } from "./markup";
import type { CurvePoint } from "./reduced-curve";

/** A point of a curve that may have come by a loop out of its range. */
export interface StatedPoint extends CurvePoint {
  readonly state: LoopState | undefined;
}

const meanings = {
  "above range": "the vibration may be larger than is drawn",
  "below range": "drawn is the start of the range; see that the sensor still measures",
} as const;

/** The state of a reading that is out of the range of its loop, behind its value. */
export function stateBehind({ state }: StatedPoint): string {
  return isClipped(state) ? ` (${state})` : "";
}

/** What is said of readings out of the range of their loop, for each side; nothing where all are within. */
export function clippedWords(points: readonly StatedPoint[]): string[] {
  return (["above range", "below range"] as const).flatMap((side) => {
    const count = points.filter(({ state }) => state === side).length;
    return count === 0 ? [] : [`${counted(count, "reading")} ${side} of the loop (triangles): ${meanings[side]}.`];
  });
}

/** Triangles at readings out of the range of their loop: up where the vibration may be larger, down below the range. */
export function clippedMarks(
  points: readonly StatedPoint[],
  x: (x: number) => number,
  y: (y: number) => number,
): string {
  const marks = points.flatMap((point) => {
    if (!isClipped(point.state)) return [];
    const [left, top] = [Math.round(x(point.x)) - 7, Math.round(y(point.y))];
    const d = point.state === "above range" ? `M${left},${top}h14l-7,-13z` : `M${left},${top - 13}h14l-7,13z`;
    return [tag("path", { kind: "point", d })];
  });
  return [...new Set(marks)].join("");
}
