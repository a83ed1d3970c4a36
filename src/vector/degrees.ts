/** A quarter of a turn, whose sines are whole numbers and not nearly so. */
const quarters: readonly number[] = [0, 1, 0, -1];

/** Sine of an angle in degrees, exact at whole quarters of a turn. */
export function sine(degrees: number): number {
  const within = degrees % 360;
  const quarter = within / 90;
  if (Number.isInteger(quarter)) return quarters[(quarter + 4) % 4] as number;
  return Math.sin((within * Math.PI) / 180);
}

/** An angle brought into 0 to below 360 degrees, without the noise of its last digits. */
export function withinTurn(degrees: number): number {
  const within = ((degrees % 360) + 360) % 360;
  return Number(within.toFixed(12)) % 360;
}
