import { numbersOf, requireBoolean, requireChoice, requireKnownOptions, shown, VeladisError } from "../core/index";

/** Typed arrays that hold a batch of readings. */
export type Batch = Float64Array | Float32Array;

/** What a conversion of many values may be told. */
export interface BatchOptions {
  /** Whether NaN, as of a gap in a record, is refused or stays NaN; refused if not given. */
  readonly nan?: "refuse" | "keep";
  /**
   * Whether, in place, all values are looked at before the first is written, so that a refusal leaves the array as it was;
   * true if not given. Without that look it is faster.
   */
  readonly whole?: boolean;
}

/** The kind of a new array for the values of another. */
export type SameKind<Source> = Source extends Float32Array
  ? Float32Array
  : Source extends readonly number[]
    ? number[]
    : Float64Array;

/** Converts all values of an array. */
export interface ArrayConversion {
  /** Into a new array of the same kind: Float32Array, list, otherwise Float64Array. */
  <Source extends ArrayLike<number>>(source: Source, target?: undefined, options?: BatchOptions): SameKind<Source>;
  /** Into `target`, which may be the source itself. */
  <Target extends Batch | number[]>(source: ArrayLike<number>, target: Target, options?: BatchOptions): Target;
}

const KNOWN = /* @__PURE__ */ Object.freeze({ nan: true, whole: true });
const NONE: BatchOptions = /* @__PURE__ */ Object.freeze({});

const isTyped = (array: unknown): array is Batch => array instanceof Float64Array || array instanceof Float32Array;

/** The largest number that an array holds. */
function mostIn(array: Batch | number[]): number {
  return array instanceof Float32Array ? 3.4028234663852886e38 : Number.MAX_VALUE;
}

/** Whether two arrays are one piece of memory. */
export function isInPlace(source: Batch, target: Batch): boolean {
  return source.buffer === target.buffer && source.byteOffset === target.byteOffset;
}

function requireTarget(source: ArrayLike<number>, target: Batch | number[]): void {
  const parameter = "target";
  if (!(isTyped(target) || Array.isArray(target))) {
    throw new VeladisError("wrong-type", {
      expected: "a target that is a Float64Array, a Float32Array or a list",
      received: shown(target),
      parameter,
    });
  }
  if (Object.isFrozen(target)) {
    throw new VeladisError("wrong-type", { expected: "a target to write into", received: "a frozen list", parameter });
  }
  if (source.length !== target.length) {
    throw new VeladisError("length-mismatch", {
      expected: `a target of ${source.length} elements`,
      received: `one of ${target.length}`,
      parameter,
    });
  }
}

/** Whether two arrays share memory without being the same. */
function isAskew(source: Batch, target: Batch): boolean {
  if (source.buffer !== target.buffer || source.byteOffset === target.byteOffset) return false;
  const [first, second] = source.byteOffset < target.byteOffset ? [source, target] : [target, source];
  return first.byteOffset + first.byteLength > second.byteOffset;
}

function emptyLike(source: ArrayLike<number>, length: number): Batch | number[] {
  if (source instanceof Float32Array) return new Float32Array(length);
  return Array.isArray(source) ? new Array<number>(length) : new Float64Array(length);
}

/**
 * The target, or a new array of the kind of the source, once `fill` has written it; arrays of two kinds and lists go
 * through a copy, so that `fill` has two of one kind before it, and the most that the target can hold.
 *
 * @throws {@link VeladisError} `wrong-type`, `length-mismatch`, `unknown-option`, `out-of-range` for a target that overlaps the source in part
 */
export function batch(
  source: ArrayLike<number>,
  given: Batch | number[] | undefined,
  options: BatchOptions = NONE,
  fill: (source: Batch, target: Batch, options: BatchOptions, most: number) => void,
): Batch | number[] {
  requireKnownOptions(options, KNOWN, { what: "an option of a batch", form: 'options such as { nan: "keep" }' });
  if (options.nan !== undefined) {
    requireChoice(options.nan, ["refuse", "keep"], "what becomes of NaN", { parameter: "options", option: "nan" });
  }
  const { whole } = options;
  if (whole !== undefined)
    requireBoolean(whole, "whether all values are looked at first", { parameter: "options", option: "whole" });
  const from = isTyped(source) ? source : numbersOf(source, "a list of readings", "source");
  const target = given === undefined ? emptyLike(source, from.length) : given;
  requireTarget(from, target);
  if (isTyped(target) && target instanceof Float32Array === from instanceof Float32Array) {
    if (isAskew(from, target)) {
      throw new VeladisError("out-of-range", {
        expected: "a target that is the source itself or lies clear of it",
        received: "one that overlaps it in part",
        parameter: "target",
      });
    }
    fill(from, target, options, mostIn(target));
    return target;
  }
  // nothing is written into the target before all of it is known
  const work = Float64Array.from(from);
  fill(work, work, { ...options, whole: false }, mostIn(target));
  for (let i = 0; i < work.length; i++) target[i] = work[i] as number;
  return target;
}
