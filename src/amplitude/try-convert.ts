import { type Attempt, attempt } from "../core/index";
import type { Frequency } from "../frequency/index";
import type { ReadingType, ReadingTypeText } from "../reading/index";
import { convert } from "./convert";
import type { ConvertOptions } from "./convert-options";

/**
 * As {@link convert}, of texts that only run time knows, with the refusal as a value: for a form or a file, where a
 * refusal is an everyday answer.
 *
 * @returns `{ ok: true, value }`, or `{ ok: false, error }` with the {@link VeladisError} that {@link convert} throws
 * @example
 * ```ts
 * import { tryConvert } from "veladis";
 *
 * tryConvert(25.4, "mm/s pk", "in/s pk"); // => { ok: true, value: 1 }
 * const answer = tryConvert(0.25, "in/s pk", "mil pp");
 * answer.ok ? answer.value : answer.error.code; // => "missing-frequency"
 * ```
 */
export function tryConvert(
  value: number,
  from: ReadingTypeText,
  to: ReadingTypeText,
  options?: ConvertOptions,
): Attempt<number> {
  return attempt(() => convert(value, from as ReadingType, to as ReadingType, options as { readonly at: Frequency }));
}
