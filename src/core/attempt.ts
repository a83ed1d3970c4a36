import { VeladisError } from "./error";

/** What became of a call: its answer, or the refusal. */
export type Attempt<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly error: VeladisError };

/**
 * The answer of a call, or the error that it was refused with, as a value. Any other error is thrown on: it is a fault of
 * a program, not an answer.
 *
 * @param call - what is called, once and at once: a promise that it gives is its answer, and is not waited for
 * @example
 * ```ts
 * import { attempt, parseAmplitude } from "veladis";
 *
 * const answer = attempt(() => parseAmplitude("7.1 mm/s"));
 * answer.ok ? answer.value.value : answer.error.code; // => "missing-detector"
 * ```
 */
export function attempt<Value>(call: () => Value): Attempt<Value> {
  try {
    return { ok: true, value: call() };
  } catch (error) {
    if (error instanceof VeladisError) return { ok: false, error };
    throw error;
  }
}
