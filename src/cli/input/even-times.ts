import { VeladisError } from "../../core/index";

/** How samples stand in time, as their own times say. */
export interface EvenTimes {
  /** Samples a second, on the whole. */
  readonly rate: number;
  /** The shortest and the longest step in seconds. */
  readonly shortest: number;
  readonly longest: number;
  /** The farthest that a time lies from its place among even ones, in seconds, and where. */
  readonly farthest: number;
  readonly index: number;
  /** How far it may lie. */
  readonly room: number;
}

/** How far a time may lie from its place among even ones, as part of a step. */
const JITTER = 0.01;

/**
 * How evenly times are spaced. A time may lie a hundredth of a step from its place, or half the last digit that times are
 * written to, whichever is more.
 *
 * @param digit - the last digit that times are written to, in seconds; 0 where it is not known
 * @throws {@link VeladisError} `missing-fact` for fewer than two times, `out-of-range` for two that are equal
 */
export function evenTimes(times: Float64Array, digit: number): EvenTimes {
  const last = times.length - 1;
  if (last < 1) {
    throw new VeladisError("missing-fact", {
      expected: "two samples or more with their times",
      received: `${times.length}`,
    });
  }
  const begin = times[0] as number;
  const step = ((times[last] as number) - begin) / last;
  let shortest = Number.POSITIVE_INFINITY;
  let longest = 0;
  let farthest = 0;
  let index = 0;
  for (let i = 1; i <= last; i++) {
    const one = (times[i] as number) - (times[i - 1] as number);
    if (!(one > 0)) {
      throw new VeladisError("out-of-range", {
        expected: "a later time for each sample, written with digits enough",
        received: `samples ${i} and ${i + 1} at one time`,
      });
    }
    shortest = Math.min(shortest, one);
    longest = Math.max(longest, one);
    const off = Math.abs((times[i] as number) - begin - i * step);
    if (off <= farthest) continue;
    farthest = off;
    index = i;
  }
  // both ends are rounded as well, and so is the step that they give
  const room = Math.max(JITTER * step, 1.5 * digit);
  return { rate: 1 / step, shortest, longest, farthest, index, room };
}

/** The last digit that a number is written to: 0.001 of `1.250`, 0 for a number with an exponent. */
export function lastDigit(written: string, decimalComma: boolean): number {
  const text = written.trim();
  if (!/^[+-]?\d*[.,]?\d*$/.test(text)) return 0;
  const at = text.indexOf(decimalComma ? "," : ".");
  return at < 0 ? 1 : 10 ** -(text.length - at - 1);
}
