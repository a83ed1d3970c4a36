import { type Scheme, schemeById } from "../severity/index";

/**
 * The scheme with this id among some, where there are some, else the built-in one.
 *
 * @throws {@link VeladisError} as {@link schemeById}
 */
export function schemeAmong(id: string, schemes: readonly Scheme[] | undefined): Scheme {
  const builtIn = schemeById(id);
  return schemes?.find((one) => one.id === builtIn.id) ?? builtIn;
}
