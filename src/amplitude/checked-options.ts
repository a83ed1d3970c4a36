import { shown, unknownName, VeladisError } from "../core/index";
import type { ConvertOptions } from "./convert-options";

const NONE: ConvertOptions = {};

const KNOWN = { at: "at", crestFactor: "crestFactor" };

const FORM = 'options such as { at: "1500 r/min" }';

// both apart from the search, which is on the hot path: an engine takes in what is short
function noOptions(options: unknown): VeladisError {
  const code = options === null ? "missing-option" : "wrong-type";
  return new VeladisError(code, { expected: FORM, received: shown(options) });
}

function otherOption(option: string): VeladisError {
  const place = { parameter: "options", option };
  const names = { symbols: new Map(Object.entries(KNOWN)), allowed: KNOWN, place };
  return unknownName("unknown-option", FORM, option, names);
}

/**
 * The options themselves, none if they were left out. Null is refused as anything else that is no object: what was
 * meant by it nobody can tell. A key that no conversion has is refused: it would be left out without a word.
 *
 * @throws {@link VeladisError} `missing-option` for null, `wrong-type`, `unknown-option`
 */
export function checkedOptions(options?: ConvertOptions): ConvertOptions {
  if (options === undefined) return NONE;
  if (typeof options !== "object" || options === null) throw noOptions(options);
  // faster than a list of the keys
  for (const key in options) {
    if (key !== "at" && key !== "crestFactor" && Object.hasOwn(options, key)) throw otherOption(key);
  }
  return options;
}
