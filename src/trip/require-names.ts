import { shown, VeladisError } from "../core/index";

/**
 * Refuses names that are no channel's, and where every channel needs something, the first that has nothing.
 *
 * @param every - what every channel needs, in words; false where it needs nothing
 * @throws {@link VeladisError} `unknown-option` or `missing-option`
 */
export function requireNames(
  names: readonly string[],
  levels: { readonly [name: string]: unknown },
  every: string | false = "a level",
): void {
  const stranger = Object.keys(levels).find((name) => !names.includes(name));
  const missing = names.find((name) => every !== false && levels[name] === undefined);
  if (stranger === undefined && missing === undefined) return;
  throw new VeladisError(stranger === undefined ? "missing-option" : "unknown-option", {
    expected: stranger === undefined ? `${every} for ${shown(missing)}` : "the name of a channel",
    received: shown(stranger),
    option: stranger ?? (missing as string),
    allowed: names,
  });
}
