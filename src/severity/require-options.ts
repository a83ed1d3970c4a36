import { requireGiven, shown, VeladisError } from "../core/index";

const FORM = 'options such as { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }';

/**
 * The options themselves if they are an object.
 *
 * @throws {@link VeladisError} `missing-fact` where there are none, `wrong-type`
 */
export function requireOptions<T extends object>(options: T): T {
  if (typeof requireGiven(options, FORM) === "object") {
    // null would be left out by one criterion and be refused by another
    if ((options as { crestFactor?: unknown }).crestFactor === null) {
      throw new VeladisError("wrong-type", {
        expected: "a crest factor (peak over RMS) of 1 or more",
        received: "null",
      });
    }
    return options;
  }
  throw new VeladisError("wrong-type", { expected: FORM, received: shown(options) });
}
