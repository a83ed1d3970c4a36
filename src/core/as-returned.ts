import { shown, VeladisError } from "./error";

/**
 * What the act gives. It draws or prints what other functions of the library have returned, takes that as it is, and
 * so fails on anything else somewhere within.
 *
 * @param what - what it takes, for the message
 * @throws {@link VeladisError} of the act, or `wrong-type` for what failed within
 */
export function asReturned<Answer>(what: string, act: () => Answer): Answer {
  try {
    return act();
  } catch (error) {
    if (error instanceof VeladisError) throw error;
    const { message } = error as Error;
    throw new VeladisError("wrong-type", {
      expected: what,
      received: `something else (${shown(message).slice(1, -1)})`,
    });
  }
}
