/**
 * Writes `exp(-2 pi i k / n)` into `target` at `at` (real part) and `at + 1` (imaginary part).
 *
 * The angle is folded into the first eighth of the circle by whole numbers before anything is rounded, so that both
 * parts are right to the last bit or nearly so, whatever `k`.
 */
export function writeRootOfUnity(target: Float64Array, at: number, k: number, n: number): void {
  // whole eighths of the circle, and what is left in units of 1 / (8 n) of it
  const turned = 8 * (k % n);
  const octant = Math.floor(turned / n);
  const rest = turned - octant * n;
  const within = (octant & 1) === 0 ? rest : n - rest;
  const angle = (Math.PI / 4) * (within / n);
  const near = Math.cos(angle);
  const far = Math.sin(angle);
  const swapped = ((octant + 1) & 2) !== 0;
  const cosine = swapped ? far : near;
  const sine = swapped ? near : far;
  target[at] = octant >= 2 && octant < 6 ? -cosine : cosine;
  target[at + 1] = octant < 4 ? -sine : sine;
}
