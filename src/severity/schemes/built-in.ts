import { frozen, lazily } from "../../core/index";
import type { SchemeKind } from "../kinds";
import type { MachineClass, Scheme } from "../scheme";

// named here too: the declared types of the tables take the name nearest to them, else that of ../index, in a circle
export type { Scheme } from "../scheme";

/**
 * The scheme, with its kind and id in its type. The tests hold every built-in one against {@link defineScheme}. Its classes
 * are made when they are first read: to make those of every scheme took most of an import.
 */
export function builtIn<const Id extends string, K extends SchemeKind>({
  classes,
  ...said
}: Omit<Scheme<K, Id>, "classes"> & {
  // the kind alone says what the scheme is; a flat table takes it from here
  readonly classes: () => readonly MachineClass<NoInfer<K>>[];
}): Scheme<K, Id> {
  const made = lazily(() => frozen(classes()));
  frozen(Object.values(said));
  return Object.freeze({
    ...said,
    get classes() {
      return made();
    },
  }) as Scheme<K, Id>;
}
