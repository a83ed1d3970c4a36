const LONGEST = 32;

/** Letters to put in, leave out, change or swap with the next until one word is the other (optimal string alignment). */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row[j] = Math.min(
        (last[j] as number) + 1,
        (row[j - 1] as number) + 1,
        (last[j - 1] as number) + (same ? 0 : 1),
        swapped ? (before[j - 2] as number) + 1 : Number.POSITIVE_INFINITY,
      );
    }
    [before, last] = [last, row];
  }
  return last[b.length] as number;
}

/** What makes one of two words that are as near the less likely: another beginning, other digits, more or fewer letters. */
function unlikeness(a: string, b: string): number {
  const digits = (word: string): string => word.replace(/[^0-9]/g, "");
  const letters = (word: string): number => word.replace(/[^a-z]/g, "").length;
  return (a[0] === b[0] ? 0 : 0.5) + (digits(a) === digits(b) ? 0 : 0.5) + (letters(a) === letters(b) ? 0 : 0.25);
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
    .map((name) => {
      const other = name.toLowerCase();
      const distance = editDistance(given, other);
      return { name, distance, rank: distance + unlikeness(given, other) };
    })
    .filter(({ distance }) => distance <= Math.max(1, given.length / 3))
    .sort((a, b) => a.rank - b.rank)
    .slice(0, 3)
    .map(({ name }) => name);
}
