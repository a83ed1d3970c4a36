import type { ErrorPlace } from "./error";
import { unknownOption } from "./require-choice";

/**
 * The settings themselves if none of their keys is a stranger: a mistyped key would leave a setting at its default,
 * and nobody would see it.
 *
 * @param known - a table whose keys are those that may stand there
 * @param what - what a key is, for the message, e.g. `"a setting of a trip"`
 * @param place - whose settings they are, where the caller knows
 * @throws {@link VeladisError} `unknown-option` with the nearest keys
 */
export function requireKnownKeys<Settings extends object>(
  settings: Settings,
  known: object,
  what: string,
  place?: ErrorPlace,
): Settings {
  for (const name of Object.keys(settings)) {
    if (!Object.hasOwn(known, name)) throw unknownOption(name, Object.keys(known), what, { ...place, option: name });
  }
  return settings;
}
