import { frozen } from "../../core/index";
import type { CommandAnswers } from "../answers";
import type { ShapesOf } from "../shape-of";

/** Shapes of answers that the command alone gives. */
export const commandShapes: ShapesOf<CommandAnswers> = /* @__PURE__ */ frozen({
  conversion: { like: "amplitude", keys: { from: "amplitude" } },
  record: {
    keys: {
      levels: "overall[]",
      descriptors: "descriptors?",
      lines: "spectrum line[]",
      orders: "order line[]?",
      judgement: "verdict?",
    },
  },
  "record of lines": { keys: { levels: "lines overall[]", lines: "amplitude[]", judgement: "verdict?" } },
  simulation: {
    keys: {
      threshold: "amplitude",
      reset: "amplitude",
      events: "trip event[]",
      unmasked: "unmasked trips",
      gaps: "level gaps?",
      assumed: "text[]",
    },
  },
  "grade of unbalance": { keys: { grade: "number", force: "number", note: "text" } },
  "scheme summary": {
    keys: {
      id: "text",
      kind: "text",
      standard: "text",
      edition: "text",
      title: "text",
      status: "text",
      replacedBy: "text?",
      place: "text",
      scope: "text",
      limits: "number",
      memory: "number",
      practice: "number",
      reported: "number",
      quoted: "number",
      printed: "number",
      confirmed: "number",
    },
  },
  sql: { keys: { sql: "text" } },
  "limit row": {
    keys: {
      machine: "text",
      readings: "text",
      scheme: "text|null",
      standard: "text|null",
      edition: "text|null",
      row: "text|null",
      as: "text|null",
      name: "text|null",
      printed: "number|null",
      step: "number|null",
      zone: "text|null",
      beyond: "text|null",
      last: "text|null",
      limit: "number|null",
      decides: "text|null",
      open: "number|null",
      criterion: "number|null",
      rows: "number",
      deciding: "number",
      grade: "text|null",
      source: "text|null",
      assumed: "text|null",
      refused: "text|null",
    },
  },
});
