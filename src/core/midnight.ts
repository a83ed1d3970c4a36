/** Milliseconds since 1970 at the midnight (UTC) that a day begins with; NaN for a day that no calendar has. */
export function midnight(year: number, month: number, day: number): number {
  const date = new Date(Date.UTC(year, month - 1, day));
  const isReal = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return isReal ? date.getTime() : Number.NaN;
}
