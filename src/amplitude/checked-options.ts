import { nearest, shown, VeladisError } from "../core/index";
import type { ConvertOptions } from "./convert-options";

const NONE: ConvertOptions = {};

// apart from the search, which is on the hot path: an engine takes in what is short
export function refusedOptions(given: unknown, option = ""): VeladisError {
  return new VeladisError(option ? "unknown-option" : "wrong-type", {
    expected: "options, { at, crestFactor }",
    received: shown(given),
    parameter: "options",
    option,
    didYouMean: nearest(option, ["at", "crestFactor"]),
  });
}

/**
 * The options themselves, none if they were left out. Null is refused as anything else that is no object: what was
 * meant by it nobody can tell. A key that no conversion has is refused: it would be left out without a word.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`
 */
export function checkedOptions(options: ConvertOptions = NONE): ConvertOptions {
  if (typeof options !== "object" || options === null) throw refusedOptions(options);
  // faster than a list of the keys
  for (const key in options) {
    if (key !== "at" && key !== "crestFactor" && Object.hasOwn(options, key)) throw refusedOptions(key, key);
  }
  return options;
}
