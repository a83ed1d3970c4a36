import { frozen } from "../../core/index";
import type { ReadingAnswers } from "../answers";
import type { ShapesOf } from "../shape-of";

/** Shapes of readings, sensors and loops. */
export const readingShapes: ShapesOf<ReadingAnswers> = /* @__PURE__ */ frozen({
  amplitude: {
    keys: {
      value: "number",
      unit: "text",
      detector: "text",
      quantity: "text",
      hertz: "number?",
      level: "level?",
      crestFactor: "number?",
      state: "text?",
      assumed: "text[]?",
      history: "history?",
    },
  },
  level: { keys: { decibels: "number", re: "text" } },
  step: {
    keys: {
      does: "text",
      of: "number[]?",
      value: "number",
      type: "text",
      hertz: "number?",
      by: "number?",
      over: "number?",
      plus: "number?",
      rounds: "text?",
      crestFactor: "number?",
      uncertainty: "uncertainty of step?",
      hertzUncertainty: "uncertainty of step?",
      phase: "number?",
      phaseUncertainty: "uncertainty of step?",
      assumed: "text[]?",
      note: "text?",
    },
  },
  "uncertainty of step": {
    keys: { standard: "number", in: "text?", distribution: "text", stated: "text", name: "text?" },
  },
  equivalents: { keys: { unit: "text", rms: "amplitude", pk: "amplitude", pp: "amplitude" } },
  "explained step": {
    keys: {
      operation: "text",
      of: "number[]",
      by: "number?",
      value: "number",
      type: "text",
      because: "text?",
      assumed: "text[]?",
    },
  },
  "explained result": { keys: { place: "text", step: "number" } },
  explanation: { keys: { steps: "explained step[]", results: "explained result[]", text: "text" } },
  "loop reading": { like: "amplitude", keys: {} },
  "loop current": { keys: { milliamperes: "number", state: "text", assumed: "text[]", history: "history" } },
  "probe gap": {
    keys: {
      volts: "number",
      sensitivity: "number",
      range: "number[]",
      percent: "number",
      room: "probe room",
      movement: "probe movement|null",
      swing: "probe swing|null",
      reached: "truth|null",
      warnings: "text[]",
      assumed: "text[]",
      assumedFacts: "text[]",
    },
  },
  "probe length": { keys: { um: "number", mil: "number" } },
  "probe room": { keys: { towards: "probe length", away: "probe length" } },
  "probe movement": { like: "probe length", keys: { cold: "number", direction: "text" } },
  "probe swing": { keys: { volts: "number[]", inRange: "truth" } },
  "voltage reading": {
    keys: {
      value: "number",
      unit: "text",
      detector: "text",
      state: "text?",
      assumed: "text[]?",
      history: "history?",
    },
  },
});
