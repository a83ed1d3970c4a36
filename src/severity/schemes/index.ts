import * as tables from "./tables";

export * from "./tables";

type Table = (typeof tables)[keyof typeof tables];

/** Tables by their ids, so that the order in which they are exported says nothing. */
function byId(all: readonly Table[]): readonly Table[] {
  return Object.freeze([...all].sort((a, b) => (a.id < b.id ? -1 : 1)));
}

/** Every built-in scheme, in the order of their ids. To add one, add its file and its line in `tables.ts`. */
export const builtInSchemes = /* @__PURE__ */ byId(/* @__PURE__ */ Object.values(tables));

/** The id of a built-in scheme. */
export type SchemeId = Table["id"];
