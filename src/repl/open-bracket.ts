/** Whether more brackets open than close in a line; those within quotes are text. */
export function hasOpenBracket(line: string): boolean {
  const bare = line.replace(/"[^"]*"?/g, "");
  const count = (letters: RegExp): number => bare.match(letters)?.length ?? 0;
  return count(/[([]/g) > count(/[)\]]/g);
}
