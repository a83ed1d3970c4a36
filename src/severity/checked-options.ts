import { shown, VeladisError } from "../core/index";

/** The options themselves if they are an object. */
export function checkedOptions<T extends object>(options: T): T {
  if (typeof options === "object" && options !== null) return options;
  throw new VeladisError("wrong-type", {
    expected: 'options such as { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }',
    received: shown(options),
  });
}
