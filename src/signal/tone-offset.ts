import { windowKernel } from "./window-kernel";
import type { WindowName } from "./windows";

/** Where the parabola through the logarithms of three neighbouring lines has its top, in bins from the middle one. */
function parabolaTop(before: number, middle: number, after: number): number {
  const [a, b, c] = [before, middle, after].map((size) => Math.log(Math.max(size, middle * 1e-12))) as [
    number,
    number,
    number,
  ];
  const bend = a - 2 * b + c;
  return bend < 0 ? (a - c) / (2 * bend) : 0;
}

/** Where the parabola through a tone's lines would have its top, for a tone `off` bins from the middle line. */
function topFor(window: WindowName, off: number): number {
  const line = (k: number): number => Math.abs(windowKernel(window, k - off));
  return parabolaTop(line(-1), line(0), line(1));
}

/** Beyond any distance of a tone from its highest line. */
const FARTHEST = 0.55;

/**
 * How far a tone lies from its highest line, in bins, -0.5 to 0.5.
 *
 * The parabola through the three lines is near the truth for a Hann window (1.6 % of a bin) and far from it for
 * others; since its error follows from the window, it is taken out, which leaves a single tone's place exact. For a
 * rectangular window, whose lines have no parabola's shape, the two highest lines give the place directly.
 */
export function toneOffset(window: WindowName, before: number, middle: number, after: number): number {
  if (window === "rectangular") return after > before ? after / (after + middle) : -before / (before + middle);
  const seen = parabolaTop(before, middle, after);
  let low = -FARTHEST;
  let high = FARTHEST;
  for (let i = 0; i < 50; i++) {
    const off = (low + high) / 2;
    if (topFor(window, off) < seen) low = off;
    else high = off;
  }
  return (low + high) / 2;
}
