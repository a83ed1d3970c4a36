/** The largest of numbers, at least zero: a loop, since a list of many thousands is too long to be arguments. */
export function largestOf(numbers: Iterable<number>): number {
  let most = 0;
  for (const one of numbers) most = Math.max(most, one);
  return most;
}
