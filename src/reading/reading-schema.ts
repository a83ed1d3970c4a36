import { attempt } from "../core/index";
import type { Amplitude } from "./amplitude";
import { parseAmplitude } from "./parse-amplitude";

/** What {@link readingSchema} says of a value: the reading, or why there is none. */
export type ReadingSchemaResult =
  | { readonly value: Amplitude; readonly issues?: undefined }
  | { readonly issues: readonly { readonly message: string }[] };

/** A schema by the open interface Standard Schema, version 1, that forms and servers take. */
export interface ReadingSchema {
  readonly "~standard": {
    readonly version: 1;
    readonly vendor: "veladis";
    /** A value read, or what is wrong with it. */
    readonly validate: (value: unknown) => ReadingSchemaResult;
    /** Types alone; holds nothing when it is run. */
    readonly types?: { readonly input: string; readonly output: Amplitude } | undefined;
  };
}

/**
 * A schema for a reading in a form or a message: it takes the text that {@link parseAmplitude} takes and gives its amplitude.
 * Of the open interface Standard Schema (standardschema.dev), so any library that takes such schemas takes it.
 *
 * @example
 * ```ts
 * import { readingSchema } from "veladis";
 *
 * const answer = readingSchema["~standard"].validate("7.1 mm/s");
 * answer.issues?.[0]?.message; // => 'expected a detector after the unit, as in "mm/s rms", received "mm/s"; allowed: pk, pp, rms, avg, true pk'
 * ```
 */
export const readingSchema: ReadingSchema = /* @__PURE__ */ Object.freeze({
  "~standard": /* @__PURE__ */ Object.freeze({
    version: 1,
    vendor: "veladis",
    validate: (value: unknown): ReadingSchemaResult => {
      const answer = attempt(() => parseAmplitude(value as string));
      return answer.ok ? { value: answer.value } : { issues: [{ message: answer.error.message }] };
    },
  } as const),
});
