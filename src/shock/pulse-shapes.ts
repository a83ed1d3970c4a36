import { halfSine } from "./half-sine";

/**
 * Shapes of shocks of acceleration: the three of IEC 60068-2-27 (from memory), as the value of one of peak 1 at a share
 * of its length from 0 to 1.
 */
export const pulseShapes = /* @__PURE__ */ Object.freeze({
  /** Half of a sine. */
  "half-sine": (share: number) => halfSine(share, 1),
  /** Rises over all of its length and falls at once. */
  "final-peak saw-tooth": (share: number) => share,
  /** A tenth of the length to rise, and a tenth to fall. */
  trapezoidal: (share: number) => Math.min(1, 10 * share, 10 * (1 - share)),
} as const);

/** The shape of a shock: a key of {@link pulseShapes}. */
export type PulseShape = keyof typeof pulseShapes;

/** Value of a shock of peak 1 at a time. */
export function pulseAt(shape: PulseShape, time: number, seconds: number): number {
  return time > 0 && time < seconds ? pulseShapes[shape](time / seconds) : 0;
}
