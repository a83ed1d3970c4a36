export { amountOf } from "./amount";
export { type Amplitude, amplitudeOf, type Level, parseAmplitude } from "./amplitude";
export { type Assumption, assumedText, assumptions } from "./assumptions";
export { convert } from "./convert";
export { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";
export {
  type Converter,
  type ConverterOf,
  converter,
  type LevelConverter,
} from "./converter";
export {
  type CurrentLoop,
  currentLoop,
  type LoopLimits,
  type LoopReading,
  type LoopState,
  loopLimits,
} from "./current-loop";
export { type EquivalentsRow, equivalents } from "./equivalents";
export { type FormatOptions, format } from "./format";
export { readingType } from "./reading-type";
export {
  type LevelReference,
  type LevelReferenceName,
  levelReferenceSources,
  levelReferences,
} from "./references";
export { type Sensor, sensor } from "./sensor";
export {
  formatVoltage,
  type Voltage,
  type VoltageReading,
  type VoltageType,
} from "./signal-voltage";
export { significant } from "./significant";
export { sineFrequency } from "./sine-frequency";
export type {
  AmplitudeType,
  ConvertArguments,
  ConvertOptions,
  LevelType,
  QuantityOf,
  ReadingType,
} from "./types";
export { writtenValue } from "./written-value";
