import { lengthOf, shown, VeladisError } from "../core/index";

/** Anything but zero when a level is negative, infinite or no number. */
function faultOf(levels: Float64Array): number {
  let odd = 0;
  let even = 0;
  const whole = levels.length & ~7;
  let i = 0;
  for (; i < whole; i += 8) {
    const a = levels[i] as number;
    const b = levels[i + 1] as number;
    const c = levels[i + 2] as number;
    const d = levels[i + 3] as number;
    const e = levels[i + 4] as number;
    const f = levels[i + 5] as number;
    const g = levels[i + 6] as number;
    const h = levels[i + 7] as number;
    // |x| - x is 0 for an amplitude, above 0 for a negative number, NaN for NaN and Infinity
    even += Math.abs(a) - a + (Math.abs(b) - b) + (Math.abs(c) - c) + (Math.abs(d) - d);
    odd += Math.abs(e) - e + (Math.abs(f) - f) + (Math.abs(g) - g) + (Math.abs(h) - h);
  }
  for (; i < levels.length; i++) odd += Math.abs(levels[i] as number) - (levels[i] as number);
  return odd + even;
}

/** Refuses the level at an index. */
function refuse(level: number, index: number): never {
  throw new VeladisError(Number.isNaN(level) ? "not-a-number" : level < 0 ? "negative" : "not-finite", {
    expected: `a level of zero or more at index ${index}; a failed sensor may be written NaN with { nan: "sensor fault" }`,
    received: shown(level),
    parameter: "levels",
    index,
  });
}

/** A copy of what is no Float64Array, refused where it holds anything but numbers. */
function copied(levels: ArrayLike<number>): Float64Array {
  const copy = new Float64Array(lengthOf(levels, "a list of levels", { parameter: "levels" }));
  for (let i = 0; i < copy.length; i++) {
    const level = levels[i];
    if (typeof level !== "number") {
      throw new VeladisError("wrong-type", {
        expected: `a level of zero or more at index ${i}`,
        received: shown(level),
        parameter: "levels",
        index: i,
      });
    }
    copy[i] = level;
  }
  return copy;
}

/**
 * The levels as a Float64Array, every one checked before any is used.
 *
 * @param faults - whether NaN stands for a sensor fault
 * @throws {@link VeladisError} `wrong-type`, `negative`, `not-a-number`, `not-finite`, with the index
 */
export function requireLevels(levels: ArrayLike<number>, faults: boolean): Float64Array {
  const checked = levels instanceof Float64Array ? levels : copied(levels);
  if (faultOf(checked) === 0) return checked;
  for (let i = 0; i < checked.length; i++) {
    const level = checked[i] as number;
    if (!(level >= 0 && level <= Number.MAX_VALUE) && !(faults && Number.isNaN(level))) refuse(level, i);
  }
  return checked;
}
