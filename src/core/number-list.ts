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
