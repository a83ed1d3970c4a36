import { requireNonNegative, shown, VeladisError } from "../core/index";

/**
 * Writes every value times the factor into the target, up to the first block of eight that holds a product that is
 * no amplitude; returns how many were written.
 *
 * In blocks, since the engine then leaves out most of what a loop costs; the sum of a block tells an infinity.
 */
function scaledBlocks(source: Float64Array, target: Float64Array, k: number): number {
  const whole = source.length & ~7;
  let i = 0;
  for (; i < whole; i += 8) {
    const a = (source[i] as number) * k;
    const b = (source[i + 1] as number) * k;
    const c = (source[i + 2] as number) * k;
    const d = (source[i + 3] as number) * k;
    const e = (source[i + 4] as number) * k;
    const f = (source[i + 5] as number) * k;
    const g = (source[i + 6] as number) * k;
    const h = (source[i + 7] as number) * k;
    const all = a + b + (c + d) + (e + f + (g + h));
    if (!(a >= 0 && b >= 0 && c >= 0 && d >= 0 && e >= 0 && f >= 0 && g >= 0 && h >= 0 && all <= Number.MAX_VALUE))
      break;
    target[i] = a;
    target[i + 1] = b;
    target[i + 2] = c;
    target[i + 3] = d;
    target[i + 4] = e;
    target[i + 5] = f;
    target[i + 6] = g;
    target[i + 7] = h;
  }
  return i;
}

/** The array itself if it is one. */
function requireFloat64Array(array: Float64Array): Float64Array {
  if (array instanceof Float64Array) return array;
  throw new VeladisError("wrong-type", { expected: "a Float64Array", received: shown(array) });
}

/** The target, or a new one; refused when one is no Float64Array, of other length, or overlaps the source askew. */
export function targetFor(
  source: Float64Array,
  target: Float64Array = new Float64Array(requireFloat64Array(source).length),
): Float64Array {
  requireFloat64Array(source);
  requireFloat64Array(target);
  if (source.length !== target.length) {
    throw new VeladisError("length-mismatch", {
      expected: `a target of ${source.length} elements`,
      received: `one of ${target.length}`,
    });
  }
  const askew = source.buffer === target.buffer && source.byteOffset !== target.byteOffset;
  if (askew && Math.abs(source.byteOffset - target.byteOffset) < source.byteLength) {
    throw new VeladisError("out-of-range", {
      expected: "a target that is the source itself or lies clear of it",
      received: "one that overlaps it in part",
    });
  }
  return target;
}

/**
 * The target, or a new one, filled with every value times the factor.
 *
 * A refusal names the index; the elements before it are written, it and those behind it are as they were.
 */
export function scaleArray(factor: number, source: Float64Array, given?: Float64Array): Float64Array {
  const target = targetFor(source, given);
  for (let i = scaledBlocks(source, target, factor); i < source.length; i++) {
    const value = source[i] as number;
    const result = value * factor;
    if (!(value >= 0 && result <= Number.MAX_VALUE)) {
      requireNonNegative(value, `an amplitude of zero or more at index ${i}`);
      throw new VeladisError("not-finite", {
        expected: `a result that a number can hold at index ${i}`,
        received: shown(result),
      });
    }
    target[i] = result;
  }
  return target;
}
