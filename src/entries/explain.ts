/**
 * The arithmetic of an answer, step by step; worked examples stand in the guide "What an answer keeps".
 *
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 * import { explain } from "veladis/explain";
 *
 * const { text } = explain(convertAmplitude("0.25 in/s pk", "mm/s pk"));
 * text.split("\n").at(-1); // => "0.25 in/s pk x 25.4 = 6.35 mm/s pk"
 * ```
 *
 * @module veladis/explain
 */
export {
  type ExplainedResult,
  type ExplainedStep,
  type Explanation,
  explain,
  type Operation,
} from "../amplitude/index";
export { VeladisError } from "../core/index";
