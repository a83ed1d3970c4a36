/** A point of a curve; a value that is not finite is a gap. */
export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

/**
 * A curve with no more points than can be seen: of those that fall on one pixel column the first, the lowest, the
 * highest and the last, in order. No peak is lost.
 */
export function reducedCurve(points: readonly CurvePoint[], column: (x: number) => number): CurvePoint[] {
  const kept: CurvePoint[] = [];
  let group: CurvePoint[] = [];
  const flush = (): void => {
    if (group.length <= 4) kept.push(...group);
    else {
      const by = (better: (a: number, b: number) => boolean): number =>
        group.reduce((best, { y }, i) => (better(y, (group[best] as CurvePoint).y) ? i : best), 0);
      const wanted = new Set([0, by((a, b) => a < b), by((a, b) => a > b), group.length - 1]);
      kept.push(...[...wanted].sort((a, b) => a - b).map((i) => group[i] as CurvePoint));
    }
    group = [];
  };
  let at = Number.NaN;
  for (const point of points) {
    const next = Math.floor(column(point.x));
    const gap = !Number.isFinite(point.y);
    if (next !== at || gap) flush();
    at = gap ? Number.NaN : next;
    if (gap) kept.push(point);
    else group.push(point);
  }
  flush();
  return kept;
}
