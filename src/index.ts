/**
 * Vibration amplitudes: units, detectors, frequencies, decibel levels and sensors on one scale.
 *
 * @module veladis
 */
export * from "./amplitude/index";
export {
  type ErrorDetail,
  errorCodes,
  type Provenance,
  type Ratio,
  type Source,
  VeladisError,
  type VeladisErrorCode,
} from "./core/index";
export {
  type Detector,
  type DetectorEntry,
  type DetectorFacts,
  detectorFacts,
  detectorSymbol,
  detectors,
  type RunningSums,
} from "./detectors/index";
export * from "./frequency/index";
export {
  type Quantity,
  quantities,
  type Unit,
  type UnitFacts,
  type UnitQuantities,
  type UnitSpelling,
  type UnitSymbol,
  unitFacts,
  unitSymbol,
  units,
} from "./units/index";
