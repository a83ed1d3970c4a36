import { iso10816Part3Of2009 } from "./iso-10816-3-2009";

export { iso10816Part3Of2009 };

/** Every built-in scheme. To add one, add its file and its lines here. */
export const builtInSchemes = /* @__PURE__ */ Object.freeze([iso10816Part3Of2009] as const);

/** The id of a built-in scheme. */
export type SchemeId = (typeof builtInSchemes)[number]["id"];
