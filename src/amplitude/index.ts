export { amountAmplitude, amountOf } from "./amount";
export type { ArrayConversion, Batch, BatchOptions, SameKind } from "./batch";
export { checkedOptions } from "./checked-options";
export type { ExplainedStep, Operation } from "./conversion-steps";
export { convert, converted } from "./convert";
export {
  assumedBetween,
  type ConvertedAmplitude,
  carriedBy,
  conversionAssumes,
  convertAmplitude,
  convertChecked,
  wayBetween,
} from "./convert-amplitude";
export type { ConvertArguments, ConvertOptions } from "./convert-options";
export { convertedAt } from "./converted-at";
export {
  type Converter,
  type ConverterOf,
  converter,
  type LevelConverter,
} from "./converter";
export {
  type CurrentLoop,
  currentLoop,
  type LoopCurrent,
  type LoopLimits,
  type LoopReading,
  loopLimits,
} from "./current-loop";
export {
  derivedAmplitude,
  leastAmplitude,
  linearAmplitude,
  linearTypeOf,
  multipliedAmplitude,
  notedAmplitude,
} from "./derived-amplitude";
export { rssDifference, vectorDifference } from "./differences";
export { type EquivalentsRow, equivalents } from "./equivalents";
export { type ExplainedResult, type Explanation, explain } from "./explain";
export { factorOf } from "./factor";
export { type Pair, pair, pairOf } from "./pair";
export { type ProbeDirection, type ProbeGap, type ProbeGapOptions, probeGap } from "./probe-gap";
export { type ProbeLength, probeLengthText, probeSensitivityText, voltsText } from "./probe-length";
export { type Sensor, sensor } from "./sensor";
export { isSignal, JOINED_RANGE, type SignalSource, signalReading, wayOfSignal } from "./signal-reading";
export {
  formatVoltage,
  type Voltage,
  type VoltageReading,
  type VoltageType,
} from "./signal-voltage";
export { sineFrequency } from "./sine-frequency";
export { tryConvert } from "./try-convert";
export { vectorDistance } from "./vector-distance";
