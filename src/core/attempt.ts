import { shown, VeladisError } from "./error";

function noCall(received: string): VeladisError {
  const expected = "a function that answers at once, as () => f(x)";
  return new VeladisError("wrong-type", { expected, received, parameter: "call" });
}

/** What became of a call: its answer, or the refusal. */
export type Attempt<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly error: VeladisError };

/**
 * The answer of a call, or the error that it was refused with, as a value. Any other error is thrown on: it is a fault of
 * a program, not an answer.
 *
 * @param call - what is called, once and at once: a promise is refused, since its refusal comes later
 * @throws {@link VeladisError} `wrong-type` for what is no function, or one that gives a promise: await it first
 * @example
 * ```ts
 * import { attempt, parseAmplitude } from "veladis";
 *
 * const answer = attempt(() => parseAmplitude("7.1 mm/s"));
 * answer.ok ? answer.value.value : answer.error.code; // => "missing-detector"
 * ```
 */
export function attempt<Value>(call: () => Value): Attempt<Value> {
  if (typeof call !== "function") throw noCall(shown(call));
  let value: Value;
  try {
    value = call();
  } catch (error) {
    if (error instanceof VeladisError) return { ok: false, error };
    throw error;
  }
  if (!(value instanceof Promise)) return { ok: true, value };
  // what becomes of it is nobody's answer: it must not end the program besides
  value.catch(() => {});
  throw noCall("one that gives a promise");
}
