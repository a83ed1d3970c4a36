import { type ErrorPlace, VeladisError } from "./error";

/**
 * The refusal itself with its place as the called function names it: what a part of the work called it is not for the
 * caller. Any other error is given back as it is.
 */
export function placed(error: unknown, place: ErrorPlace): unknown {
  if (!VeladisError.is(error)) return error;
  const { parameter: _, option, ...told } = error;
  return new VeladisError(error.code, {
    ...told,
    ...(place.option === undefined && option !== undefined && { option }),
    ...place,
  });
}

/** The answer of a part of the work on an argument; a refusal says where the trouble is. */
export function inPlace<Value>(place: ErrorPlace, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    throw placed(error, place);
  }
}
