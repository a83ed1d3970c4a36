import { VeladisError } from "./error";

/**
 * The answer of a public function. A refusal names one of its parameters: the one that a part of the work named, or the
 * last of the list where it named none of them, since what another function calls its own is not for the caller.
 */
export function withParameters<Value>(parameters: readonly string[], work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    if (!VeladisError.is(error) || parameters.includes(error.parameter as string)) throw error;
    throw Object.assign(error, { parameter: parameters.at(-1) });
  }
}
