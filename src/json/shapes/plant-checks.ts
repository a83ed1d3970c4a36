import { frozen } from "../../core/index";
import type { PlantCheckAnswers } from "../plant-check-answers";
import type { ShapesOf } from "../shape-of";

/** Shapes of checks of the devices of a plant, and of its record of changes. */
export const plantCheckShapes: ShapesOf<PlantCheckAnswers> = /* @__PURE__ */ frozen({
  "due check": {
    keys: {
      tag: "text",
      line: "number",
      state: "text",
      isDue: "truth",
      due: "text|null",
      days: "number|null",
      last: "text|null",
      interval: "number|null",
      what: "text",
      why: "text",
      source: "source",
      mend: "text",
    },
  },
  "bench setting": {
    keys: {
      hertz: "number",
      level: "amplitude",
      displacement: "amplitude",
      acceleration: "amplitude",
      devices: "bench device[]",
    },
  },
  "bench device": { keys: { number: "text", tag: "text", line: "number", known: "amplitude", isBandKnown: "truth" } },
  "device left out": { keys: { tag: "text", line: "number", why: "text", mend: "text" } },
  "check result": {
    keys: {
      line: "number",
      number: "text",
      tag: "text",
      machineLine: "number",
      date: "text",
      before: "text|null",
      by: "text",
      asFound: "known check",
      asLeft: "known check|null",
      meaning: "text",
      remarks: "text[]",
      cells: "text{}",
    },
  },
  "open result": { keys: { line: "number", number: "text", tag: "text" } },
  "doubtful period": {
    keys: {
      tag: "text",
      line: "number",
      from: "text|null",
      to: "text|null",
      reads: "text",
      verdict: "text",
      errorPercent: "number",
      tripsAt: "amplitude|null",
      what: "text",
      why: "text",
      source: "source",
      mend: "text",
    },
  },
  "plant change": {
    keys: {
      line: "number",
      date: "text",
      tag: "text",
      setting: "text",
      old: "text",
      new: "text",
      reason: "text",
      who: "text",
      approvedBy: "text?",
      until: "text?",
      putBack: "text?",
    },
  },
  "change finding": {
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
});
