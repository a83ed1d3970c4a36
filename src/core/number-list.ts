import { type ErrorPlace, shown, VeladisError } from "./error";
import { requireFinite } from "./guards";

/** More than any history or record in memory; a length beyond it was made up. */
const LONGEST = 0x8000000;

/**
 * The length of a list of numbers.
 *
 * @throws {@link VeladisError} `wrong-type` for what is no list
 */
export function lengthOf(numbers: ArrayLike<unknown>, what: string, place?: ErrorPlace): number {
  const length = typeof numbers === "object" ? numbers?.length : undefined;
  if (Number.isInteger(length) && (length as number) >= 0 && (length as number) <= LONGEST) return length as number;
  throw new VeladisError("wrong-type", { expected: what, received: shown(numbers), ...place });
}

/**
 * Samples as a Float64Array, every one finite.
 *
 * @throws {@link VeladisError} `wrong-type`, `not-a-number` or `not-finite` with the index
 */
export function finiteSamples(samples: ArrayLike<number>): Float64Array {
  const parameter = "samples";
  const length = lengthOf(samples, "a list of samples", { parameter });
  for (let i = 0; i < length; i++) {
    const sample = samples[i] as number;
    if (!Number.isFinite(sample)) requireFinite(sample, `a finite sample at index ${i}`, { parameter, index: i });
  }
  return samples instanceof Float64Array ? samples : Float64Array.from(samples);
}

/**
 * A list as a Float64Array; one as it is, or a copy of another kind.
 *
 * @param parameter - which parameter it is, for the refusal
 * @throws {@link VeladisError} `wrong-type` for what is no list, or with the index of an element that is no number
 */
export function numbersOf(list: ArrayLike<number>, what: string, parameter: string): Float64Array {
  if (list instanceof Float64Array) return list;
  const copy = new Float64Array(lengthOf(list, what, { parameter }));
  for (let i = 0; i < copy.length; i++) {
    const one = list[i];
    if (typeof one !== "number") {
      throw new VeladisError("wrong-type", {
        expected: `a number at index ${i}`,
        received: shown(one),
        parameter,
        index: i,
      });
    }
    copy[i] = one;
  }
  return copy;
}
