import { frozen } from "../../core/index";
import type { UncertaintyAnswers } from "../answers";
import type { ShapesOf } from "../shape-of";

/** Shapes of uncertainties, of zones within them, and of vectors. */
export const uncertaintyShapes: ShapesOf<UncertaintyAnswers> = /* @__PURE__ */ frozen({
  uncertainty: {
    keys: {
      value: "number",
      type: "text",
      standard: "number",
      relative: "number|null",
      expanded: "number",
      k: "number",
      interval: "number[]",
      method: "text",
      draws: "number?",
      seed: "number?",
      mean: "number?",
      parts: "uncertainty part[]",
      assumed: "text[]",
      history: "history",
    },
  },
  "uncertainty part": { keys: { name: "text", stated: "text", standard: "number", share: "number" } },
  ratio: { keys: { value: "number", assumed: "text[]", history: "history" } },
  "zones within": {
    keys: {
      kind: "text",
      rule: "text",
      zone: "text",
      headline: "text",
      word: "text",
      zones: "text[]",
      worst: "text",
      bestValue: "best value",
      uncertainty: "uncertainty",
      interval: "interval within",
      criteria: "criterion within[]",
      probabilities: "number{}|null",
      why: "text|null",
      assumed: "text[]",
      assumedFacts: "text[]",
      cautions: "text[]",
      history: "history",
    },
  },
  "criterion within": {
    keys: {
      scheme: "text",
      quantity: "text",
      bound: "text",
      uncertainty: "uncertainty",
      interval: "interval within",
      zones: "text[]",
    },
  },
  "interval within": { keys: { value: "number", type: "text", expanded: "number", low: "number", high: "number" } },
  "best value": { keys: { zone: "text", headline: "text" } },
  vector: {
    keys: {
      amplitude: "amplitude",
      phase: "number",
      order: "number",
      speed: "number",
      probe: "text?",
      direction: "text?",
      slowRollSpeed: "number?",
      assumedFacts: "text[]?",
      cautions: "text[]?",
    },
  },
  "uncertainty of phase": {
    keys: {
      value: "number",
      standard: "number",
      expanded: "number",
      k: "number",
      interval: "number[]",
      method: "text",
      draws: "number?",
      seed: "number?",
      parts: "uncertainty part[]",
    },
  },
  "uncertainty of vector": {
    keys: { amplitude: "uncertainty", phase: "uncertainty of phase|null", assumed: "text[]" },
  },
});
