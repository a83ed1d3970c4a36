import { shown, unknownOption, VeladisError } from "../core/index";
import type { ConvertOptions } from "./convert-options";

const NONE: ConvertOptions = {};

/**
 * The options themselves, none if they were left out. Null is refused as anything else that is no object: what was
 * meant by it nobody can tell. A key that no conversion has is refused: it would be left out without a word.
 *
 * @throws {@link VeladisError} `missing-option` for null, `wrong-type`, `unknown-option`
 */
export function checkedOptions(options: ConvertOptions = NONE): ConvertOptions {
  if (typeof options !== "object" || options === null) {
    throw new VeladisError(options === null ? "missing-option" : "wrong-type", {
      expected: 'options such as { at: "1500 r/min" }',
      received: shown(options),
      parameter: "options",
    });
  }
  // on the hot path: faster than a list of the keys
  for (const key in options) {
    if (key !== "at" && key !== "crestFactor" && Object.hasOwn(options, key)) {
      throw unknownOption(key, ["at", "crestFactor"], "an option of a conversion", {
        parameter: "options",
        option: key,
      });
    }
  }
  return options;
}
