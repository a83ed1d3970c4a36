/**
 * How far a line lies from its multiple of the running speed, in per cent of it. Lines of one shaft are all off by one
 * share, so a line that is off by another share is not of it.
 */
export function offMultiple(found: number | undefined, expected: number): string {
  if (found === undefined) return "";
  const percent = (100 * (found - expected)) / expected;
  const text = Math.abs(percent).toFixed(1);
  return text === "0.0" ? "0" : `${percent < 0 ? "-" : "+"}${text}`;
}

/** What is said below lines that are off their multiples. */
export function offNote(rows: readonly (readonly string[])[]): string {
  const isOff = rows.some((cells) => /^[+-]/.test(cells[3] ?? ""));
  return isOff
    ? "found: the highest line within 2 % of the multiple, or 1.5 lines; lines of one shaft are all off by one share\n"
    : "";
}
