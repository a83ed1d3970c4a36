/**
 * The share of a standard normal distribution below a number, to about 1e-15: its series around zero, whose terms are
 * all of one sign.
 */
export function normalBelow(z: number): number {
  // beyond 8.3 what is left is below the last digit of 1
  if (Math.abs(z) > 8.3) return z < 0 ? 0 : 1;
  let term = Math.abs(z);
  let sum = term;
  for (let n = 3; sum + term !== sum; n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  const half = (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
  return z < 0 ? Math.max(0, 0.5 - half) : Math.min(1, 0.5 + half);
}
