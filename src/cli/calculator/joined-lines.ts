/**
 * Puts a line that was typed in two pieces in the place of the pieces, so that it is brought back whole.
 *
 * @param lines - the lines that the terminal brings back, latest first; changed in place
 * @param before - what was typed before, as the list has it
 * @param piece - the piece typed last
 */
export function joinPieces(lines: string[], before: string, piece: string, whole: string): void {
  const latest = lines.indexOf(piece);
  if (latest >= 0) lines.splice(latest, 1);
  const place = Math.max(0, latest);
  const first = lines.indexOf(before, place);
  if (first >= 0) lines.splice(first, 1);
  lines.splice(place, 0, whole);
}
