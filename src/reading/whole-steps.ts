/** To which side a value between two steps goes. */
export type Rounding = "down" | "nearest" | "up";

const sides = { down: Math.floor, nearest: Math.round, up: Math.ceil } as const;

/** A value as a whole number of steps; one that lies beside a step by float noise (1e-9) is taken for that step. */
export function wholeSteps(value: number, step: number, rounds: Rounding): number {
  const steps = value / step;
  const near = Math.round(steps);
  const isNoise = Math.abs(steps - near) <= 1e-9 * Math.max(1, Math.abs(steps));
  return Number(((isNoise ? near : sides[rounds](steps)) * step).toPrecision(12));
}
