import { type ErrorPlace, VeladisError } from "./error";

/**
 * The answer of a part of the work on an argument. A refusal says where the trouble is as the called function names it.
 * Within one argument what is nearest to the trouble counts; a parameter of another function gives way, and so does the
 * option of such a one where this place has its own.
 */
export function inPlace<Value>({ parameter, ...place }: ErrorPlace, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    if (VeladisError.is(error)) {
      const nearer = error.parameter && place.option ? { index: place.index } : error;
      Object.assign(error, { ...place, ...nearer, parameter });
    }
    throw error;
  }
}
