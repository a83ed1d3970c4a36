import { significant } from "../reading/index";
import { quantile } from "./statistics";

/** A gap of at least such a share of what most numbers span parts two modes; common practice, no source. */
const WIDE = 0.3333333333333333;
/** Fewest numbers among which such a gap is more than chance; common practice, no source. */
const FEWEST_PARTED = 12;
const BANDS = 3;

/** Rising numbers, parted at wide gaps, until none is left; a few numbers far off take no part in what is wide. */
function parted(sorted: readonly number[]): (readonly number[])[] {
  const [low, high] = [sorted[0] as number, sorted[sorted.length - 1] as number];
  const numbers = Float64Array.from(sorted);
  const most = quantile(numbers, 0.9) - quantile(numbers, 0.1);
  const wide = WIDE * (most > 0 ? most : high - low);
  const starts = sorted.flatMap((one, i) => (i > 0 && one - (sorted[i - 1] as number) >= wide ? [i] : []));
  if (low === high || starts.length === 0) return [sorted];
  const ends = [...starts, sorted.length];
  return ends.flatMap((end, i) => {
    const part = sorted.slice(i === 0 ? 0 : ends[i - 1], end);
    return part.length < FEWEST_PARTED ? [part] : parted(part);
  });
}

/** Rising numbers in three bands of about as many each; equal ones stay together. */
function thirds(sorted: readonly number[]): (readonly number[])[] {
  const bandOf = new Map<number, number>();
  for (const [i, one] of sorted.entries())
    if (!bandOf.has(one)) bandOf.set(one, Math.floor((BANDS * i) / sorted.length));
  return [0, 1, 2].map((band) => sorted.filter((one) => bandOf.get(one) === band)).filter(({ length }) => length > 0);
}

/**
 * The name of the band of each number: bands end at wide gaps, and one that holds more than half of all is cut into thirds
 * by rank, so that a few numbers far off cannot put all others into one.
 */
export function bandNames(numbers: readonly number[]): ReadonlyMap<number, string> {
  const sorted = [...numbers].sort((a, b) => a - b);
  const bands = parted(sorted).flatMap((part) => (part.length > sorted.length / 2 ? thirds(part) : [part]));
  const named = (digits: number): string[] =>
    bands.map((band) => {
      const ends = [band[0] as number, band[band.length - 1] as number].map((end) => significant(end, digits));
      return [...new Set(ends)].join(" to ");
    });
  const names = [4, 6, 9].map(named).find((all) => new Set(all).size === all.length) ?? named(15);
  return new Map(bands.flatMap((band, i) => band.map((one) => [one, names[i] as string] as const)));
}
