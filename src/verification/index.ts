export { type AsFoundAsLeft, asFoundAsLeft, foundMeanings } from "./as-found";
export { benchPlan, REFERENCE } from "./bench-plan";
export type { BenchSettings } from "./bench-settings";
export type { BenchFact, BenchPlan, BenchSignal, BenchStep, InjectionPlan, InjectionStep } from "./bench-step";
export { checkAgainstKnown, type KnownCheck, type KnownCheckResult } from "./check-against-known";
export { type CheckPoint, type CheckPoints, checkPoints } from "./check-points";
export { combinedUncertainty } from "./combined-uncertainty";
export { type Decision, type DecisionRule, decisionRules } from "./decision";
export { type DelayTest, delayTest } from "./delay-test";
export { type ErrorMark, type ErrorMarks, errorMarks, type NamedCheck } from "./error-marks";
export { expectedReading } from "./expected-reading";
export { type Injection, injectionPlan } from "./injection-plan";
export { type Linearity, type LinearityPoint, linearity } from "./linearity";
export { type Shaker, type ShakerReach, shakerReach } from "./shaker";
export { showsNothing } from "./shows-nothing";
export { expectText, levelTexts } from "./step-texts";
export {
  resetPointTest,
  type SwitchingPoint,
  type SwitchingStep,
  tripPointTest,
} from "./switching-tests";
export type { Margins, ToleranceText } from "./tolerance";
export { badness } from "./worst-verdict";
