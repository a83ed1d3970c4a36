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
    if (!VeladisError.is(error)) throw error;
    const { parameter, option, index } = error;
    // what goes on from here names the same things once more
    const of = error as { -readonly [Key in keyof ErrorPlace]: ErrorPlace[Key] };
    delete of.parameter;
    if (parameter !== undefined && place.option !== undefined) {
      delete of.option;
      delete of.index;
    }
    const nearer = { ...(of.option !== undefined && { option }), ...(of.index !== undefined && { index }) };
    throw Object.assign(error, place, nearer);
  }
}
