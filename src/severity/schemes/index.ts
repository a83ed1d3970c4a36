import * as tables from "./tables";

export * from "./tables";

/** A built-in scheme, by its own type. */
export type BuiltInScheme = (typeof tables)[keyof typeof tables];

/** Tables by their ids, so that the order in which they are exported says nothing. */
function byId(all: readonly BuiltInScheme[]): readonly BuiltInScheme[] {
  return Object.freeze([...all].sort((a, b) => (a.id < b.id ? -1 : 1)));
}

/** Every built-in scheme, in the order of their ids. To add one, add its file and its line in `tables.ts`. */
export const builtInSchemes = /* @__PURE__ */ byId(/* @__PURE__ */ Object.values(tables));

/** The id of a built-in scheme. */
export type SchemeId = (typeof builtInSchemes)[number]["id"];
