import { type ErrorPlace, shown, VeladisError } from "./error";
import { requireGiven } from "./require-given";
import { requireKnownKeys } from "./require-known-keys";

/** How a refusal tells of options. */
interface OptionsTold {
  /** What a key is, e.g. `"an option of slow roll"`. */
  readonly what: string;
  /** What options look like, e.g. `'options such as { limit: "50 um pp" }'`. */
  readonly form: string;
  /** The parameter, where it has another name than `options`. */
  readonly place?: ErrorPlace;
}

/**
 * The options themselves if they are an object with none but known keys.
 *
 * @param known - a table whose keys are those that may stand there
 * @throws {@link VeladisError} `missing-option` for null, `wrong-type` for what is no object, `unknown-option`
 */
export function requireKnownOptions<Options extends object>(
  options: Options,
  known: object,
  { what, form, place = { parameter: "options" } }: OptionsTold,
): Options {
  if (typeof requireGiven(options, form, place) === "object" && !Array.isArray(options)) {
    return requireKnownKeys(options, known, what, place);
  }
  throw new VeladisError("wrong-type", { expected: form, received: shown(options), ...place });
}
