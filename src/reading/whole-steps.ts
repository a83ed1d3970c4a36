/** To which side a value between two steps goes. */
export type Rounding = "down" | "nearest" | "up";

const sides = { down: Math.floor, nearest: Math.round, up: Math.ceil } as const;

/** A value as a whole number of steps; one that lies beside a step by float noise (1e-9) is taken for that step. */
export function wholeSteps(value: number, step: number, rounds: Rounding): number {
  const steps = value / step;
  const near = Math.round(steps);
  const isNoise = Math.abs(steps - near) <= 1e-9 * Math.max(1, Math.abs(steps));
  const exact = (isNoise ? near : sides[rounds](steps)) * step;
  // 31 times 0.1 is 3.1, not 3.1000000000000001
  const plain = Number(exact.toPrecision(12));
  return Math.abs(plain - exact) <= 1e-15 * Math.abs(exact) ? plain : exact;
}
