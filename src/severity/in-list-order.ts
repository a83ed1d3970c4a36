import type { Scheme } from "./scheme";

/** Schemes as a list shows them: by standard with its part, a part 3 before a part 21, then by edition, then by id. */
export function inListOrder(schemes: readonly Scheme[]): readonly Scheme[] {
  const { compare } = new Intl.Collator("en", { numeric: true });
  return [...schemes].sort(
    (a, b) => compare(a.standard, b.standard) || compare(a.edition, b.edition) || compare(a.id, b.id),
  );
}
