import { type ErrorPlace, shown, VeladisError } from "./error";
import { requireGiven } from "./require-given";
import { requireKnownKeys } from "./require-known-keys";

/**
 * The options themselves if they are an object with none but known keys.
 *
 * @param known - a table whose keys are those that may stand there
 * @param what - what a key is, for the message, e.g. `"an option of slow roll"`
 * @param form - what options look like, for the message, e.g. `'options such as { limit: "50 um pp" }'`
 * @param place - the parameter, where it has another name than `options`
 * @throws {@link VeladisError} `missing-option` for null, `wrong-type` for what is no object, `unknown-option`
 */
export function requireKnownOptions<Options extends object>(
  options: Options,
  known: object,
  what: string,
  form: string,
  place: ErrorPlace = { parameter: "options" },
): Options {
  if (typeof requireGiven(options, form, place) === "object" && !Array.isArray(options)) {
    return requireKnownKeys(options, known, what, place);
  }
  throw new VeladisError("wrong-type", { expected: form, received: shown(options), ...place });
}
