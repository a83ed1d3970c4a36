export { agreedHertz } from "./agreed-hertz";
export { type Amplitude, amplitudeIn, isClipped, type Level, type LoopState, loopStates } from "./amplitude";
export { type AmplitudeData, amplitude } from "./amplitude-from";
export { BOUND_NOTE } from "./assumed-by-step";
export { type Assuming, type Assumption, assumedText, assumptionNames, assumptions } from "./assumptions";
export { behindReading, endBehind, stateBehind } from "./behind-reading";
export { checkedSteps } from "./checked-steps";
export { exactAmplitude } from "./exact-amplitude";
export { factorAway, perDecibel } from "./factor-away";
export { format } from "./format";
export type { FormatOptions } from "./format-options";
export { historyOf, historyTo, type Made, madeOf, union, worstState, writtenIn } from "./history";
export { isLevelType } from "./is-level-type";
export { isReading } from "./is-reading";
export { limitsListed } from "./limits-listed";
export { linearType } from "./linear-type";
export { madeOfOne, type Unfinished, withStep } from "./made-of-one";
export { ownHistory } from "./own-history";
export { amplitudeOf, parseAmplitude } from "./parse-amplitude";
export { type ParsedType, parsedType, typeOf } from "./parsed-type";
export { hasPlusMinus, PLUS_MINUS, requireNoPlusMinus } from "./plus-minus";
export { type ReadingSchema, type ReadingSchemaResult, readingSchema } from "./reading-schema";
export { bestValueText, plainNumber, readingText } from "./reading-text";
export { isReadingType, quantityOf, readingType } from "./reading-type";
export {
  type LevelReference,
  type LevelReferenceName,
  levelReferenceSources,
  levelReferences,
} from "./references";
export { requireFollowing } from "./require-following";
export { decibelsOf, type Factor, linearOf, scaled, scaledWithCare } from "./scaled";
export { significant } from "./significant";
export { type Step, type StepName, stepWords } from "./step";
export type {
  AmplitudeType,
  LevelType,
  QuantityOf,
  ReadingType,
  ReadingTypeText,
} from "./types";
export { type Distribution, isUncertain, requireTolerance, type Uncertainty } from "./uncertainty";
export { type Rounding, wholeSteps } from "./whole-steps";
export { writtenValue } from "./written-value";
