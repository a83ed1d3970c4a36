import { frozen } from "../../core/index";
import type { SchemeKind } from "../kinds";
import type { MachineClass, Scheme } from "../scheme";

// named here too: the declared types of the tables take the name nearest to them, else that of ../index, in a circle
export type { Scheme } from "../scheme";

/** The scheme itself, with its kind and id in its type. The tests hold every built-in one against {@link defineScheme}. */
export function builtIn<const Id extends string, K extends SchemeKind>(
  // the kind alone says what the scheme is; a flat table takes it from here
  scheme: Omit<Scheme<K, Id>, "classes"> & { readonly classes: readonly MachineClass<NoInfer<K>>[] },
): Scheme<K, Id> {
  return frozen(scheme);
}
