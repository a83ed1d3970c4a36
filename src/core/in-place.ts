import { type ErrorPlace, VeladisError } from "./error";

/**
 * The answer of a part of the work on an argument. A refusal says where the trouble is as the called function names it.
 * Within one argument what is nearest to the trouble counts; a parameter of another function gives way, and so does the
 * option of such a one where this place has its own.
 */
export function inPlace<Value>(place: ErrorPlace, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    if (VeladisError.is(error)) {
      const { parameter, option, index } = place;
      Object.assign(error, error.parameter && option ? { option, index } : { ...place, ...error }, { parameter });
    }
    throw error;
  }
}
