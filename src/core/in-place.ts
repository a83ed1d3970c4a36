import { type ErrorPlace, VeladisError } from "./error";

/**
 * The answer of a part of the work on an argument. A refusal says where the trouble is as the called function names it:
 * what the part called it is not for the caller.
 */
export function inPlace<Value>(place: ErrorPlace, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    throw VeladisError.is(error) ? Object.assign(error, place) : error;
  }
}
