import { frozen } from "../../core/index";
import type { SchemeKind } from "../kinds";
import type { Scheme } from "../scheme";

// named here too: the declared types of the tables take the name nearest to them, else that of ../index, in a circle
export type { Scheme } from "../scheme";

/**
 * The scheme itself, with its kind and id in its type. The tests hold every built-in one against {@link defineScheme}.
 *
 * @param scheme - its kind alone says what its limits are called
 */
export function builtIn<const Id extends string, K extends SchemeKind>(
  scheme: Scheme<NoInfer<K>, Id> & { readonly kind: K },
): Scheme<K, Id> {
  return frozen(scheme);
}
