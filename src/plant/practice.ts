import type { Source } from "../core/index";

/** What stands as the source of a rule of the trade that no publication is named for. */
export const PRACTICE: Source = /* @__PURE__ */ Object.freeze({
  title: "common practice, no source",
  provenance: "practice",
});
