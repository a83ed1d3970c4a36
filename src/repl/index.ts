export { bounds } from "./bounds";
export { completions } from "./complete";
export { type Answer, evaluateLine } from "./evaluate-line";
export { type CalculatorFunction, functions, numberFunctions } from "./functions";
export { helpText } from "./help";
export { type AmplitudeMath, registerAmplitudes } from "./register";
export { isExit, isUnfinished, respond } from "./respond";
export { newSession, type Session } from "./session";
export type { LevelDifference, Report, Value } from "./value";
