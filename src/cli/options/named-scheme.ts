import { VeladisError } from "../../core/index";
import { type Scheme, schemeById } from "../../severity/index";

/** The built-in scheme with this id, in its confirmed form where there is one. */
export function schemeAmong(id: string, confirmed: readonly Scheme[] | undefined): Scheme {
  const builtIn = schemeById(id);
  return confirmed?.find((one) => one.id === builtIn.id) ?? builtIn;
}

/** The scheme in the file that a name is of; undefined for a name of none. */
export async function ownScheme(name: string): Promise<Scheme | undefined> {
  return name.endsWith(".json") ? (await import("../input/scheme-file")).schemeFromFile(name) : undefined;
}

/** The scheme that is named: a built-in one by its id, or one in a JSON file, in its confirmed form where there is one. */
export async function namedScheme(name: string, confirmed?: readonly Scheme[]): Promise<Scheme> {
  const own = await ownScheme(name);
  if (own === undefined) return schemeAmong(name, confirmed);
  return confirmed?.find(({ id }) => id === own.id) ?? own;
}

/**
 * The scheme that an option names; undefined without one, where the facts of the machine admit the schemes.
 *
 * @throws {@link VeladisError} `missing-option` with neither a scheme nor a machine, and as {@link namedScheme}
 */
export async function statedScheme(
  name: string | undefined,
  machine: string,
  confirmed?: readonly Scheme[],
): Promise<Scheme | undefined> {
  if (name !== undefined) return namedScheme(name, confirmed);
  if (machine.trim() !== "") return undefined;
  throw new VeladisError("missing-option", {
    expected:
      'the machine, as in --machine "pump 90 kW 2980 r/min rigid", or a scheme, as in --scheme iso-10816-3-2009',
    received: "nothing",
  });
}
