import { requireList, requireNonNegative, shown, VeladisError } from "../core/index";

/** A line of a spectrum as a file lists it: frequency in hertz, size. */
export type ListedLine = readonly [hertz: number, size: number];

/** How far a frequency may lie from its place among evenly spaced ones, as part of their spacing: room for rounding. */
const ROUNDED = 0.1;

/**
 * The lines, if they are a list of them: frequencies rising from 0 Hz or above, sizes of zero or more, not all zero.
 *
 * @throws {@link VeladisError} `wrong-type`, `missing-fact` for none, `negative`, `not-a-number`, `not-finite`,
 *   `out-of-range` when frequencies do not rise, `sensor-fault` when all sizes are zero
 */
export function requireListedLines(lines: readonly ListedLine[]): readonly ListedLine[] {
  const place = { parameter: "lines" };
  const what = "a list of lines such as [[24.7, 3.6], [49.3, 0.45]], frequency in Hz and size";
  const given = requireList(lines, what, place);
  if (given.length === 0) throw new VeladisError("missing-fact", { expected: what, received: "no lines", ...place });
  let before = Number.NEGATIVE_INFINITY;
  given.forEach((line, index) => {
    const at = { ...place, index };
    const [hertz, size, ...more] = requireList(line, "a line as [hertz, size]", at);
    if (more.length > 0)
      throw new VeladisError("wrong-type", { expected: "a line as [hertz, size]", received: shown(line), ...at });
    const frequency = requireNonNegative(hertz as number, "a frequency of 0 Hz or above", at);
    requireNonNegative(size as number, `the size of the line at ${frequency} Hz, zero or more`, at);
    if (!(frequency > before)) {
      throw new VeladisError("out-of-range", {
        expected: `a frequency above ${before} Hz, since frequencies rise from line to line`,
        received: `${frequency} Hz`,
        ...at,
      });
    }
    before = frequency;
  });
  if (given.some(([, size]) => size > 0)) return given;
  throw new VeladisError("sensor-fault", {
    expected: "lines of a vibration",
    received: `${given.length} of zero: a dead channel`,
    ...place,
  });
}

/**
 * The spacing of evenly spaced lines in hertz.
 *
 * @throws {@link VeladisError} `out-of-range` with the first that is not where it should be, `missing-fact` for one line
 */
export function requireSpacing(lines: readonly ListedLine[]): number {
  const [first] = lines[0] as ListedLine;
  const [last] = lines[lines.length - 1] as ListedLine;
  const expected =
    "all lines of a spectrum, evenly spaced, as its window needs them; tones listed one by one are told to be tones";
  const place = { parameter: "lines" };
  if (lines.length < 3) {
    throw new VeladisError("missing-fact", { expected, received: `${lines.length} of them`, ...place });
  }
  const spacing = (last - first) / (lines.length - 1);
  const odd = lines.findIndex(([hertz], k) => Math.abs(hertz - first - k * spacing) > ROUNDED * spacing);
  if (odd < 0) return spacing;
  throw new VeladisError("out-of-range", {
    expected,
    received: `${lines[odd]?.[0]} Hz as line ${odd + 1} of ${lines.length} from ${first} to ${last} Hz, where ${Number((first + odd * spacing).toPrecision(6))} Hz was due`,
    ...place,
    index: odd,
  });
}
