const LONGEST = 32;

/** Edits (insert, delete, change, swap of neighbours) that turn one word into the other. */
function edits(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] as number) + 1, (row[j - 1] as number) + 1, (last[j - 1] as number) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] as number) + 1);
      }
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] as number;
}

/**
 * The words nearest to the given one, best first, at most three; none when nothing is near.
 * Words beyond 32 characters have no neighbours, so junk of any length costs nothing.
 */
export function nearest(word: string, candidates: Iterable<string>): string[] {
  const given = word.trim().toLowerCase();
  if (given === "" || given.length > LONGEST) return [];
  const most = Math.max(1, Math.floor(given.length / 3));
  const found: [string, number][] = [];
  for (const candidate of candidates) {
    const distance = edits(given, candidate.toLowerCase());
    if (distance <= most) found.push([candidate, distance]);
  }
  return found
    .sort((a, b) => a[1] - b[1])
    .slice(0, 3)
    .map(([candidate]) => candidate);
}
