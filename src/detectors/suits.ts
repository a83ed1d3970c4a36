import type { Detector } from "./catalogue";

function isPeak(detector: Detector): boolean {
  return detector !== "rms" && detector !== "avg";
}

/** How well one detector stands for another: 2 the same, 1 of its family (peak values, or means), 0 neither. */
export function suits(one: Detector, other: Detector): number {
  if (one === other) return 2;
  return isPeak(one) === isPeak(other) ? 1 : 0;
}
