import { shown, VeladisError } from "../core/index";
import type { ConvertOptions } from "./convert-options";

/**
 * The options themselves, none if they were left out. Null is refused as anything else that is no object: what was
 * meant by it nobody can tell.
 *
 * @throws {@link VeladisError} `missing-fact` for null, `wrong-type`
 */
export function checkedOptions(options: ConvertOptions = {}): ConvertOptions {
  if (typeof options === "object" && options !== null) return options;
  throw new VeladisError(options === null ? "missing-fact" : "wrong-type", {
    expected: 'options such as { at: "1500 r/min" }',
    received: shown(options),
  });
}
