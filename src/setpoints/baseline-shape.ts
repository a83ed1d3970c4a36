import { orNothing, type Shape } from "../core/index";
import { assumedShape, historyShape, readingShape } from "./answer-shape";
import type { Baseline } from "./baseline";

/** What a baseline holds, for those who are given one. */
export const baselineShape = {
  as: "text",
  level: readingShape,
  count: "number",
  excluded: "number",
  median: "number",
  mean: "number",
  standardDeviation: "number",
  spread: "number",
  lowest: "number",
  highest: "number",
  percentile: { percent: "number", value: "number" },
  outliers: [{ index: "number", value: "number", score: "number" }],
  withoutOutliers: { count: "number", mean: "number", standardDeviation: "number" },
  modes: /* @__PURE__ */ orNothing([{ mode: "text", count: "number", median: "number", spread: "number" }]),
  modesDiffer: /* @__PURE__ */ orNothing("truth"),
  warnings: ["text"],
  assumed: assumedShape,
  history: historyShape,
} as const satisfies Readonly<Record<keyof Baseline, Shape>>;
