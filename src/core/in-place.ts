import { type ErrorPlace, VeladisError } from "./error";

/**
 * The answer of a part of the work on an argument. A refusal says where the trouble is as the called function names it:
 * the parameter by the name that the outermost gave it, option, element and fact by what is nearest to the trouble.
 */
export function inPlace<Value>(place: ErrorPlace, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    if (!VeladisError.is(error)) throw error;
    const { parameter, ...nearer } = error;
    throw Object.assign(error, { parameter, ...place }, nearer);
  }
}
