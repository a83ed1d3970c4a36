import { frozen } from "../../core/index";
import type { SetpointAnswers } from "../answers";
import type { ShapesOf } from "../shape-of";

/** Shapes of setpoints, shocks and unbalance. */
export const setpointShapes: ShapesOf<SetpointAnswers> = /* @__PURE__ */ frozen({
  baseline: {
    keys: {
      as: "text",
      level: "amplitude",
      count: "number",
      excluded: "number",
      median: "number",
      mean: "number",
      standardDeviation: "number",
      spread: "number",
      lowest: "number",
      highest: "number",
      percentile: "percentile",
      outliers: "outlier[]",
      withoutOutliers: "without outliers",
      warnings: "text[]",
      assumed: "text[]",
      history: "history",
    },
  },
  percentile: { keys: { percent: "number", value: "number" } },
  outlier: { keys: { index: "number", value: "number", score: "number" } },
  "without outliers": { keys: { count: "number", mean: "number", standardDeviation: "number" } },
  proposal: {
    keys: {
      as: "text",
      baseline: "number|null",
      alarm: "proposed setpoint|null",
      trip: "proposed setpoint|null",
      statistical: "statistical alarm|null",
      delay: "delay advice",
      hysteresis: "hysteresis advice",
      warnings: "setpoint warning[]",
      schemes: "proposal scheme[]",
      assumedFacts: "text[]",
      setAside: "text[]",
      assumed: "text[]",
      provenance: "text",
      verified: "truth",
      confirmed: "text[]",
      cautions: "text[]",
    },
  },
  "proposed setpoint": {
    like: "stored setpoint",
    keys: { reset: "amplitude", range: "number[]", atOnce: "truth", reasons: "reason[]" },
  },
  "stored setpoint": {
    keys: {
      asked: "amplitude",
      stored: "amplitude",
      difference: "number",
      percent: "number",
      acts: "text",
      effect: "text",
      assumed: "text[]",
      history: "history",
    },
  },
  "proposal scheme": {
    keys: {
      scheme: "text",
      standard: "text",
      edition: "text",
      machineClass: "text",
      lower: "number",
      upper: "number|null",
    },
  },
  "statistical alarm": { keys: { k: "number", value: "number", withoutOutliers: "number", reasons: "reason[]" } },
  "delay advice": { keys: { alarm: "number", trip: "number", longest: "number", reasons: "reason[]" } },
  "hysteresis advice": { keys: { percent: "number", reasons: "reason[]" } },
  reason: { keys: { text: "text", source: "source" } },
  "setpoint warning": { keys: { code: "text", text: "text" } },
  immunity: {
    keys: { shocks: "shock limit[]", bursts: "burst limit[]", assumed: "text[]", assumedFacts: "text[]" },
  },
  "shock limit": { keys: { milliseconds: "number", largest: "amplitude|null", withoutDelay: "amplitude|null" } },
  "burst limit": {
    keys: { level: "amplitude", timesThreshold: "number", longest: "number", withoutDelay: "number" },
  },
  "switch reach": {
    keys: {
      setting: "amplitude",
      rows: "switch row[]",
      blindBelow: "blind below|null",
      assumed: "text[]",
      assumedFacts: "text[]",
    },
  },
  "switch row": {
    keys: {
      hertz: "number",
      speed: "number",
      velocity: "amplitude",
      displacement: "amplitude",
      timesLimit: "number|null",
      protects: "truth|null",
      assumed: "text[]",
      history: "history",
    },
  },
  "blind below": { keys: { hertz: "number", speed: "number" } },
  "permissible unbalance": {
    keys: {
      grade: "number",
      inSeries: "truth",
      eccentricity: "number",
      unbalance: "number",
      planes: "unbalance by plane",
      force: "number",
      source: "source",
      note: "text",
    },
  },
  "unbalance by plane": { keys: { left: "number", right: "number" } },
});
