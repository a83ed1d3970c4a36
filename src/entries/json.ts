/**
 * Answers as JSON, and back; the rule of its version stands in the guide "Answers as JSON".
 *
 * @example
 * ```ts
 * import { fromJson, toJson } from "veladis/json";
 * import { spectrum } from "veladis/signal";
 *
 * const text = toJson("spectrum", spectrum([0, 1, 0, -1, 0, 1, 0, -1], { rate: 8, unit: "mm/s" }));
 * fromJson("spectrum", text).values.length; // => 5
 * ```
 *
 * @module veladis/json
 */
export { VeladisError } from "../core/index";
export {
  type AnswerKind,
  type AnswerOf,
  type Answers,
  answerKinds,
  type CommandAnswers,
  fromJson,
  jsonVersion,
  type ReadingAnswers,
  type SetpointAnswers,
  type SeverityAnswers,
  type SignalAnswers,
  type TripAnswers,
  toJson,
  type UncertaintyAnswers,
  type VerificationAnswers,
  type WithinAndChange,
} from "../json/index";
