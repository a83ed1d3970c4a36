import { VeladisError } from "../../core/index";

/** How samples stand in time, as their own times say. */
export interface EvenTimes {
  readonly count: number;
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

/** A time and its number among all. */
type Place = readonly [index: number, seconds: number];

/** Whether the middle of three places lies on or within the line of the others, on the side of the sign. */
function isWithin([i0, t0]: Place, [i1, t1]: Place, [i2, t2]: Place, sign: 1 | -1): boolean {
  return sign * ((i1 - i0) * (t2 - t0) - (i2 - i0) * (t1 - t0)) >= 0;
}

/**
 * How evenly times are spaced, taken one by one. Which lies farthest from its even place is not known before the last one,
 * but it always is a corner of the hull about all of them, and a hull has few.
 */
export class TimeSpread {
  readonly #above: Place[] = [];
  readonly #below: Place[] = [];
  #count = 0;
  #first = 0;
  #last = 0;
  #shortest = Number.POSITIVE_INFINITY;
  #longest = 0;

  readonly #standing: boolean;

  /** @param standing - whether a time may stand still, as one does that is written to few digits */
  constructor(standing = false) {
    this.#standing = standing;
  }

  /** @throws {@link VeladisError} `out-of-range` for a time that is not behind the one before */
  add(seconds: number): void {
    const index = this.#count++;
    if (index === 0) this.#first = seconds;
    else {
      const step = seconds - this.#last;
      if (!(step > 0 || (step === 0 && this.#standing))) {
        throw new VeladisError("out-of-range", {
          expected: "a later time for each sample, written with digits enough",
          received:
            step === 0 ? `samples ${index} and ${index + 1} at one time` : `sample ${index + 1} before ${index}`,
        });
      }
      this.#shortest = Math.min(this.#shortest, step);
      this.#longest = Math.max(this.#longest, step);
    }
    this.#last = seconds;
    const place: Place = [index, seconds];
    TimeSpread.#extend(this.#above, place, 1);
    TimeSpread.#extend(this.#below, place, -1);
  }

  static #extend(hull: Place[], place: Place, sign: 1 | -1): void {
    while (hull.length > 1 && isWithin(hull.at(-2) as Place, hull.at(-1) as Place, place, sign)) hull.pop();
    hull.push(place);
  }

  /**
   * A time may lie a hundredth of a step from its place, or half the last digit that times are written to, whichever is more.
   *
   * @param digit - the last digit that times are written to, in seconds; 0 where it is not known
   * @throws {@link VeladisError} `missing-fact` for fewer than two times
   */
  read(digit: number): EvenTimes {
    const last = this.#count - 1;
    if (last < 1) {
      throw new VeladisError("missing-fact", {
        expected: "two samples or more with their times",
        received: `${this.#count}`,
      });
    }
    const step = (this.#last - this.#first) / last;
    let farthest = 0;
    let index = 0;
    for (const [i, seconds] of [...this.#above, ...this.#below]) {
      const off = Math.abs(seconds - this.#first - i * step);
      if (off <= farthest) continue;
      farthest = off;
      index = i;
    }
    // both ends are rounded as well, and so is the step that they give
    const room = Math.max(JITTER * step, 1.5 * digit);
    const { count, shortest, longest } = { count: this.#count, shortest: this.#shortest, longest: this.#longest };
    return { count, rate: 1 / step, shortest, longest, farthest, index, room };
  }
}

/** How evenly times are spaced that are held; refuses as {@link TimeSpread} does. */
export function evenTimes(times: Float64Array, digit: number): EvenTimes {
  const spread = new TimeSpread();
  for (const seconds of times) spread.add(seconds);
  return spread.read(digit);
}

/** The last digit that a number is written to: 0.001 of `1.250`, 0 for a number with an exponent. */
export function lastDigit(written: string, decimalComma: boolean): number {
  const text = written.trim();
  if (!/^[+-]?\d*[.,]?\d*$/.test(text)) return 0;
  const at = text.indexOf(decimalComma ? "," : ".");
  return at < 0 ? 1 : 10 ** -(text.length - at - 1);
}
