import { VeladisError } from "../../core/index";
import type { OptionRows } from "./option-row";

/**
 * Refuses options that play no part beside another one, since they would be passed over.
 *
 * @param fit - what plays a part, or all but what plays none
 * @throws {@link VeladisError} `unknown-option` with those that do
 */
export function requireFitting(
  { values, options }: { readonly values: object; readonly options: OptionRows },
  what: string,
  fits: (name: string) => boolean,
): void {
  const given = values as Readonly<Record<string, unknown>>;
  const isGiven = (name: string): boolean => {
    const value = given[name];
    return !(
      value === undefined ||
      value === false ||
      value === options[name]?.default ||
      (Array.isArray(value) && value.length === 0)
    );
  };
  const names = Object.keys(options);
  const odd = names.filter((name) => isGiven(name) && !fits(name));
  if (odd.length === 0) return;
  throw new VeladisError("unknown-option", {
    expected: `options for ${what}`,
    received: odd.map((name) => `--${name}`).join(", "),
    allowed: names.filter(fits).map((name) => `--${name}`),
  });
}
