import { requireNonNegative, shown, VeladisError } from "../core/index";
import { type Batch, type BatchOptions, batch, isInPlace } from "./batch";

/** How values are scaled: by what, up to which result, whether NaN is kept, and whether results are written. */
interface Scaling {
  readonly k: number;
  readonly most: number;
  readonly keepsNaN: boolean;
  readonly writes: boolean;
}

/** Elements from one on, up to one before another. */
interface Range {
  readonly start: number;
  readonly end: number;
}

/**
 * Looks at every value times the factor, from a start to an end, up to the first block of eight that holds a product that is
 * no amplitude, and writes them into the target if told so; returns where it stopped.
 *
 * In blocks, since the engine then leaves out most of what a loop costs; the sum of a block tells an infinity.
 */
function blocks64(source: Batch, target: Batch, { k, most, writes }: Scaling, { start, end }: Range): number {
  let i = start;
  for (; i + 8 <= end; i += 8) {
    const a = (source[i] as number) * k;
    const b = (source[i + 1] as number) * k;
    const c = (source[i + 2] as number) * k;
    const d = (source[i + 3] as number) * k;
    const e = (source[i + 4] as number) * k;
    const f = (source[i + 5] as number) * k;
    const g = (source[i + 6] as number) * k;
    const h = (source[i + 7] as number) * k;
    const all = a + b + (c + d) + (e + f + (g + h));
    if (!(a >= 0 && b >= 0 && c >= 0 && d >= 0 && e >= 0 && f >= 0 && g >= 0 && h >= 0 && all <= most)) break;
    if (writes) {
      target[i] = a;
      target[i + 1] = b;
      target[i + 2] = c;
      target[i + 3] = d;
      target[i + 4] = e;
      target[i + 5] = f;
      target[i + 6] = g;
      target[i + 7] = h;
    }
  }
  return i;
}

/** The same once more, for Float32Arrays: the engine makes a function fast for one kind of array. */
function blocks32(source: Batch, target: Batch, { k, most, writes }: Scaling, { start, end }: Range): number {
  let i = start;
  for (; i + 8 <= end; i += 8) {
    const a = (source[i] as number) * k;
    const b = (source[i + 1] as number) * k;
    const c = (source[i + 2] as number) * k;
    const d = (source[i + 3] as number) * k;
    const e = (source[i + 4] as number) * k;
    const f = (source[i + 5] as number) * k;
    const g = (source[i + 6] as number) * k;
    const h = (source[i + 7] as number) * k;
    const all = a + b + (c + d) + (e + f + (g + h));
    if (!(a >= 0 && b >= 0 && c >= 0 && d >= 0 && e >= 0 && f >= 0 && g >= 0 && h >= 0 && all <= most)) break;
    if (writes) {
      target[i] = a;
      target[i + 1] = b;
      target[i + 2] = c;
      target[i + 3] = d;
      target[i + 4] = e;
      target[i + 5] = f;
      target[i + 6] = g;
      target[i + 7] = h;
    }
  }
  return i;
}

/** Beyond this many bytes an array lies in the main memory, and reading ahead pays; below it costs. */
const FAR = 0x800000;
/** Elements of a stretch, and of a line of the processor's cache. */
const STRETCH = 512;
const LINE = 8;

/** Reads one element of each cache line of the next stretch, so that all lines are on their way at once. */
function readAhead(source: Batch, start: number): number {
  let sum = 0;
  for (let i = start, end = Math.min(start + STRETCH, source.length); i < end; i += LINE) sum += source[i] as number;
  return sum;
}

/** Every value times the factor; written into the target, or only looked at. A refusal names the index. */
function pass(source: Batch, target: Batch, scaling: Scaling): void {
  const { k, most, keepsNaN, writes } = scaling;
  const blocks = source instanceof Float32Array ? blocks32 : blocks64;
  const { length } = source;
  const stretch = source.byteLength > FAR && isInPlace(source, target) ? STRETCH : length;
  for (let i = 0; i < length; ) {
    const stop = Math.min(i + stretch, length);
    // `most` is above zero, which an engine does not know: what nobody asks for it would leave out
    if (stop < length && readAhead(source, stop) === most && most < 0) return;
    while (i < stop) {
      i = blocks(source, target, scaling, { start: i, end: stop });
      for (const end = Math.min(i + 8, stop); i < end; i++) {
        const value = source[i] as number;
        const result = value * k;
        if (!(value >= 0 && result <= most) && !(keepsNaN && Number.isNaN(value))) {
          const place = { parameter: "source", index: i };
          requireNonNegative(value, `an amplitude of zero or more at index ${i}`, place);
          throw new VeladisError("not-finite", {
            expected: `a result that a number can hold at index ${i}`,
            received: shown(result),
            ...place,
          });
        }
        if (writes) target[i] = result;
      }
    }
  }
}

/**
 * The target, or a new array of the kind of the source, filled with every value times the factor.
 *
 * A refusal names the index. In place nothing is written then, unless `whole` is false; another target holds what came
 * before.
 */
export function scaleArray(
  factor: number,
  source: ArrayLike<number>,
  given?: Batch | number[],
  options?: BatchOptions,
): Batch | number[] {
  return batch(source, given, options, (from, into, { nan, whole }, most) => {
    const scaling: Scaling = { k: factor, most, keepsNaN: nan === "keep", writes: true };
    if (whole !== false && isInPlace(from, into)) pass(from, into, { ...scaling, writes: false });
    pass(from, into, scaling);
  });
}
