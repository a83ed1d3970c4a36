/** A stretch of evenly spaced levels, and how they are to be read. */
export interface Stretch {
  readonly levels: Float64Array;
  readonly from: number;
  readonly to: number;
  /** Seconds that each level lasts. */
  readonly dt: number;
  /** Whether the start and the end of every on-delay is reported. */
  readonly excursions: boolean;
  /** Whether there may be NaN among the levels. */
  readonly faults: boolean;
}

/** Index of the first level at or above a limit, or `to`. */
export function firstAtOrAbove({ levels, to }: Stretch, from: number, limit: number): number {
  let i = from;
  for (; i + 8 <= to; i += 8) {
    if (
      !(
        (levels[i] as number) < limit &&
        (levels[i + 1] as number) < limit &&
        (levels[i + 2] as number) < limit &&
        (levels[i + 3] as number) < limit &&
        (levels[i + 4] as number) < limit &&
        (levels[i + 5] as number) < limit &&
        (levels[i + 6] as number) < limit &&
        (levels[i + 7] as number) < limit
      )
    )
      break;
  }
  while (i < to && (levels[i] as number) < limit) i++;
  return i;
}

/**
 * Index at which the first unbroken run of `length` levels at or above a limit begins, or a shorter one that reaches
 * `to`; `to` when there is none.
 *
 * Looks from the far end of each candidate, so that most levels need no look.
 */
export function firstRun({ levels, to }: Stretch, from: number, limit: number, length: number): number {
  let start = from;
  while (start < to) {
    let i = Math.min(start + length, to) - 1;
    while (i >= start && (levels[i] as number) >= limit) i--;
    if (i < start) return start;
    start = i + 1;
  }
  return to;
}

/** Index of the first level below a limit or without a value, or `to`. */
export function firstBelow({ levels, to }: Stretch, from: number, limit: number): number {
  let i = from;
  while (i < to && (levels[i] as number) >= limit) i++;
  return i;
}

/** Index of the first level without a value, or `to`. */
export function firstFault({ levels, to }: Stretch, from: number): number {
  let i = from;
  while (i < to && !Number.isNaN(levels[i] as number)) i++;
  return i;
}
