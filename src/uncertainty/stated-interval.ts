import { parseNumeral, VeladisError } from "../core/index";
import { type Amplitude, type Uncertainty, writtenIn, writtenValue } from "../reading/index";

const NUMBER = "(-?\\d[\\d.]*(?:e[+-]?\\d+)?)";
/** The interval of draws as it is written behind a skewed answer: `, 95 % within 0.248 to 9.56`. */
const INTERVAL = `\\s*,\\s*95\\s*%\\s+within\\s+${NUMBER}(?:\\s+to\\s+|-to-)${NUMBER}`;
const interval = new RegExp(INTERVAL, "i");
const intervalHere = new RegExp(INTERVAL, "iy");

/** The ends of a 95 % interval. */
export type Ends = readonly [low: number, high: number];

/** A text without the 95 % interval that it states, and its ends; undefined where it states none. */
export function withoutInterval(text: string): [rest: string, ends: Ends | undefined] {
  const found = interval.exec(text);
  if (found === null) return [text, undefined];
  const [low, high] = found.slice(1).map((digits) => parseNumeral(digits, "an end of an interval"));
  const rest = text.slice(0, found.index) + text.slice(found.index + found[0].length);
  return [rest, [low as number, high as number]];
}

/** The place behind the 95 % interval that stands at a place; the place itself where none does. */
export function intervalEnd(text: string, at: number): number {
  intervalHere.lastIndex = at;
  return intervalHere.test(text) ? intervalHere.lastIndex : at;
}

/** 95 % of a bound with equal chance within. */
const SHARE = 0.95;
/** 95 % of a bell lie within so many standard deviations. */
const OF_95_PERCENT = 1.96;
/** An end is written in three digits. */
const ROUNDED = 1.005;
const ROOT_THREE = 1.732_050_807_568_877_2;

/**
 * The uncertainty of a reading whose 95 % interval is stated. No more is known of its shape than its wider side, which is
 * taken as that of a bound with equal chance within: of a bell with such a side the standard uncertainty is smaller. Where
 * the bound would reach below zero it is a bell of that standard uncertainty.
 *
 * @throws {@link VeladisError} `out-of-range` for ends that are not about the reading, and for one so wide that nothing
 *   about the reading is
 */
export function byInterval(reading: Amplitude, [low, high]: Ends): Uncertainty {
  const value = writtenValue(reading);
  const bound = Math.max(value - low, high - value) / SHARE;
  const isLevel = reading.level !== undefined;
  const isBell = !isLevel && bound > ROUNDED * value;
  const widest = bound / ROOT_THREE;
  // no reading has a standard uncertainty above itself; a bell is never taken for narrower than it is
  const standard = isLevel ? widest : Math.min(widest, isBell ? value : value / ROOT_THREE);
  const isBellSoWide = isBell && (SHARE * bound) / OF_95_PERCENT > value;
  if (low <= value && value <= high && standard > 0 && !isBellSoWide) {
    const stated = `95 % within ${low} to ${high}`;
    return Object.freeze({ standard, distribution: isBell ? "normal" : "rectangular", stated });
  }
  throw new VeladisError("out-of-range", {
    expected: `an interval about ${value} ${writtenIn(reading)} with no end further away than 1.96 times that; state the reading with its own ±`,
    received: `${low} to ${high}`,
  });
}
