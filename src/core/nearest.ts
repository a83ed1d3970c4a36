const LONGEST = 32;

/** Letters that one word has and the other lacks; swapped letters count nothing, which forgives the usual slip. */
function strangers(a: string, b: string): number {
  const left = [...b];
  for (const letter of a) {
    const at = left.indexOf(letter);
    if (at >= 0) left.splice(at, 1);
  }
  return left.length + Math.max(0, a.length - b.length);
}

/**
 * The words nearest to the given one, best first, at most three; none when nothing is near.
 * Words beyond 32 characters have no neighbours, so junk of any length costs nothing.
 */
export function nearest(word: string, candidates: Iterable<string>): string[] {
  if (word.length > LONGEST) return [];
  const given = word.toLowerCase();
  return [...candidates]
    .map((name) => [name, strangers(given, name.toLowerCase())] as const)
    .filter(([, distance]) => distance <= Math.max(1, given.length / 3))
    .sort((a, b) => a[1] - b[1])
    .slice(0, 3)
    .map(([name]) => name);
}
