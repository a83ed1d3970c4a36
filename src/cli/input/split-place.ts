/**
 * The place and the reading of a line `place: reading`; a line without a place gives an empty one.
 *
 * The colon of `dB re: 1 nm/s` ends no place.
 */
export function splitPlace(line: string): [place: string, reading: string] {
  const colon = /(?<!\bref?):/.exec(line)?.index;
  return colon === undefined ? ["", line.trim()] : [line.slice(0, colon).trim(), line.slice(colon + 1).trim()];
}
