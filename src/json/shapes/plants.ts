import { frozen } from "../../core/index";
import type { PlantAnswers } from "../plant-answers";
import type { ShapesOf } from "../shape-of";

/** Shapes of what is told of a plant's list. */
export const plantShapes: ShapesOf<PlantAnswers> = /* @__PURE__ */ frozen({
  "plant audit": {
    keys: {
      on: "text|null",
      machines: "number",
      findings: "plant finding[]",
      notChecked: "rule not checked[]",
      limits: "limits taken[]",
      refused: "refused row[]",
      cautions: "text[]",
    },
  },
  "plant finding": {
    keys: {
      tag: "text",
      line: "number",
      severity: "text",
      code: "text",
      what: "text",
      why: "text",
      mend: "text",
      source: "source",
    },
  },
  "rule not checked": { keys: { tag: "text", line: "number", code: "text", because: "text" } },
  "limits taken": {
    keys: { tag: "text", line: "number", tables: "text[]", by: "text", provenance: "text", verified: "truth" },
  },
  "refused row": { keys: { line: "number", tag: "text", column: "text?", code: "text", message: "text" } },
});
