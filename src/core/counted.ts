/** How many of a thing, in words: `1 row`, `2 rows`; a word whose plural is another is not asked for. */
export function counted(count: number, one: string, written = String(count)): string {
  return `${written} ${one}${count === 1 ? "" : "s"}`;
}
