import { scaleLinear } from "d3-scale";
import { roundTicks, type Tick } from "./axis";

/** An upright axis from zero to above the highest of what it shows, with about one tick every 45 pixels. */
export function valueAxis(
  highest: number,
  height: number,
): { y: (value: number) => number; ticks: Tick[]; most: number; rounds: (top: number) => number[] } {
  const count = Math.max(2, Math.round(height / 45));
  const scale = scaleLinear([0, highest > 0 ? highest * 1.08 : 1], [height, 0]);
  // round numbers of another axis that ends there
  const rounds = (top: number): number[] => scaleLinear([0, top], [height, 0]).ticks(count);
  return { y: (value) => scale(value), ticks: roundTicks(scale, count), most: scale.domain()[1] as number, rounds };
}
