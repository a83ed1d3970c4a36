import { scaleLog } from "d3-scale";
import { type Tick, tickText } from "./axis";
import type { CurvePoint } from "./reduced-curve";
import { valueAxis } from "./value-axis";

/** The powers of ten from one number to another. */
function decadesIn(lowest: number, highest: number): number[] {
  const first = Math.ceil(Math.log10(lowest) - 1e-9);
  const count = Math.floor(Math.log10(highest) + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => Number(`1e${first + i}`));
}

/** An upright axis: linear from zero, or the decades of the lines, at most four. */
export function amplitudeAxis(
  scale: "linear" | "log",
  points: readonly CurvePoint[],
  height: number,
): { y: (value: number) => number; ticks: Tick[]; most: number; rounds: (top: number) => readonly number[] } {
  const most = points.reduce((highest, { y }) => Math.max(highest, y), 0);
  if (scale === "linear" || most <= 0) return valueAxis(most, height);
  const least = points.reduce((lowest, { y }) => (y > 0 ? Math.min(lowest, y) : lowest), most);
  const top = Math.ceil(Math.log10(most * 1.02));
  const decades = Math.min(4, Math.max(1, top - Math.floor(Math.log10(least))));
  const bottom = 10 ** (top - decades);
  const y = scaleLog([bottom, 10 ** top], [height, 0]);
  const ticks = Array.from({ length: decades + 1 }, (_, power) => Number(`1e${top - power}`));
  return {
    y: (value) => y(Math.max(value, bottom)),
    ticks: ticks.map((value) => ({ at: y(value), text: tickText(value) })),
    most: 10 ** top,
    rounds: (highest) => decadesIn(highest / 10 ** decades, highest),
  };
}
