const LONGEST = 32;

/** Letters to put in, leave out, change or swap with the next until one word is the other (optimal string alignment). */
function editDistance(a: string, b: string): number {
  const width = b.length + 1;
  /** Of the first letters of both, row by row: the next letter of the one, then of the other. */
  const all: number[] = [];
  const at = (k: number): number => all[k] as number;
  for (let k = 0; k < width * (a.length + 1); k++) {
    const j = k % width;
    const i = (k - j) / width;
    const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
    all[k] =
      i * j === 0
        ? i + j
        : Math.min(
            at(k - width) + 1,
            at(k - 1) + 1,
            at(k - width - 1) + +(a[i - 1] !== b[j - 1]),
            swapped ? at(k - 2 * width - 2) + 1 : i + j,
          );
  }
  return at(all.length - 1);
}

/** What makes one of two words that are as near the less likely: another beginning, other digits, more or fewer letters. */
function unlikeness(a: string, b: string): number {
  const digits = (word: string): string => word.replace(/\D/g, "");
  const letters = (word: string): number => word.replace(/[^a-z]/g, "").length;
  return (+(a[0] !== b[0]) + +(digits(a) !== digits(b)) + +(letters(a) !== letters(b)) / 2) / 2;
}

/**
 * The words nearest to the given one, best first, at most three; none when nothing is near.
 *
 * Of two that are as near, the one that begins as the given word does comes first, since a unit with another prefix is
 * another unit; then the one with the same digits, then the one with as many letters. Words beyond 32 characters have no neighbours, so junk of
 * any length costs nothing.
 */
export function nearest(word: string, candidates: Iterable<string>): string[] {
  if (word.length > LONGEST) return [];
  const given = word.toLowerCase();
  return [...candidates]
    .flatMap((name): [name: string, rank: number][] => {
      const other = name.toLowerCase();
      const distance = editDistance(given, other);
      return distance > Math.max(1, given.length / 3) ? [] : [[name, distance + unlikeness(given, other)]];
    })
    .sort(([, a], [, b]) => a - b)
    .slice(0, 3)
    .map(([name]) => name);
}
