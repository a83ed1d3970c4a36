import { type ErrorPlace, VeladisError } from "./error";

/**
 * The refusal itself with its place as the called function names it: what a part of the work called it is not for the
 * caller. Any other error is given back as it is.
 */
export function placed(error: unknown, place: ErrorPlace): unknown {
  if (!VeladisError.is(error)) return error;
  const { parameter: _, ...told } = error;
  // a refusal may be kept and thrown again, so that it is not changed; of another copy of the library it stays one
  const Same = error.constructor as typeof VeladisError;
  const copy = new Same(error.code, { ...told, ...place });
  // the trouble was found where it was found
  copy.stack = error.stack as string;
  return copy;
}

/** The answer of a part of the work on an argument; a refusal says where the trouble is. */
export function inPlace<Value>(place: ErrorPlace, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    throw placed(error, place);
  }
}
