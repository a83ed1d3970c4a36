import { VeladisError } from "./error";

/** Whether something given has a key of its own. */
function has(given: unknown, key: string | undefined): boolean {
  return typeof given === "object" && given !== null && key !== undefined && Object.hasOwn(given, key);
}

/**
 * The answer of a public function. A refusal names one of its parameters: the one that a part of the work named, or the
 * one that has the option or the fact, or the last of those given here. What another function calls its own parameter is
 * an option of the caller's, or nothing to the caller.
 */
export function withParameters<Value>(given: Readonly<Record<string, unknown>>, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    if (!VeladisError.is(error) || has(given, error.parameter)) throw error;
    const names = Object.keys(given);
    const key = error.option ?? error.fact ?? error.parameter;
    const found = names.find((name) => has(given[name], key));
    throw Object.assign(
      error,
      { parameter: found ?? names.at(-1) },
      found && key === error.parameter && { option: key },
    );
  }
}
