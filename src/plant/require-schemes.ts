import { type ErrorPlace, inPlace, requireList } from "../core/index";
import { type SchemeRef, schemeOf } from "../severity/index";

/**
 * The schemes to choose from, each an id or a scheme; undefined for the built-in ones.
 *
 * @throws {@link VeladisError} `wrong-type`, and as {@link schemeOf}
 */
export function requireSchemes(
  schemes: readonly SchemeRef[] | undefined,
  place: ErrorPlace = { option: "schemes" },
): readonly SchemeRef[] | undefined {
  if (schemes === undefined) return undefined;
  for (const [index, one] of requireList(schemes, "a list of tables", place).entries()) {
    inPlace({ ...place, index }, () => schemeOf(one));
  }
  return schemes;
}
