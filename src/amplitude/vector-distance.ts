/** Length of the difference of two vectors, from their lengths and the angle between them. */
export function vectorDistance(one: number, other: number, degrees: number): number {
  // by half the angle, so that nothing is lost between two that are nearly alike
  const half = Math.sin((degrees * Math.PI) / 360);
  return Math.hypot(one - other, 2 * Math.sqrt(one * other) * half);
}
