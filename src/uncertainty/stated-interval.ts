import { parseNumeral, VeladisError } from "../core/index";
import { type Amplitude, type Uncertainty, writtenValue } from "../reading/index";

/** The interval of draws as it is written behind a skewed answer: `, 95 % within 0.248 to 9.56`. */
const interval = /,\s*(95\s*% within (-?\d[\d.e+-]*)(?: to |-to-)(-?\d[\d.e+-]*))/i;

/** The 95 % interval that a text states: what is to be cut out of it, the words, and their numbers. Nothing where it states none. */
export function statedInterval(text: string): RegExpExecArray | null {
  return interval.exec(text);
}

/** The place behind the 95 % interval that stands at a place; the place itself where none does. */
export function intervalEnd(text: string, at: number): number {
  const here = new RegExp(interval.source, "iy");
  here.lastIndex = at;
  return here.test(text) ? here.lastIndex : at;
}

/**
 * The uncertainty of a reading whose 95 % interval is stated. No more is known of its shape than its wider side, which is
 * taken as 0.95 of a bound with equal chance within: of a bell with such a side the standard uncertainty is smaller. Where
 * the bound would reach below zero it is a bell, of at most the reading itself and no narrower than one of that side.
 *
 * @throws {@link VeladisError} `out-of-range` for ends that are not about the reading, and for one so wide that nothing
 *   about the reading is; `not-a-number`
 */
export function byInterval(reading: Amplitude, [, words, ...digits]: RegExpExecArray): Uncertainty {
  const value = writtenValue(reading);
  const [low = value, high = value] = digits.map((one) => parseNumeral(one, "an end of an interval"));
  const side = Math.max(value - low, high - value);
  const bound = side / 0.95;
  const isLevel = reading.level !== undefined;
  // an end is written in three digits
  const isBell = !isLevel && bound > 1.005 * value;
  const most = isLevel ? bound : Math.min(bound, isBell ? Math.sqrt(3) * value : value);
  if (low <= value && value <= high && side > 0 && !(isBell && side > 1.96 * value)) {
    const distribution = isBell ? "normal" : "rectangular";
    return Object.freeze({ standard: most / Math.sqrt(3), distribution, stated: words as string });
  }
  throw new VeladisError("out-of-range", {
    expected: `an interval about ${value}, its ends no further away than 1.96 times that`,
    received: words as string,
  });
}
