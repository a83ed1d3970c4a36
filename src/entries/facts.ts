/**
 * What is known of units, detectors, frequencies and references besides their ratios: names, sources, functions on samples;
 * and what each assumption and each error code means. Apart from `veladis`, so that a program that only converts loads none of it.
 *
 * @example
 * ```ts
 * import { detectorFacts, unitFacts } from "veladis/facts";
 *
 * unitFacts.mil.name; // => "thousandth of an inch"
 * detectorFacts.rms.ofSamples([1, -1, 1, -1]); // => 1
 * ```
 *
 * @module veladis/facts
 */
export {
  type ConfirmedSource,
  errorCodes,
  type Provenance,
  type Source,
  type UnconfirmedSource,
  VeladisError,
} from "../core/index";
export { type DetectorFacts, detectorFacts, type RunningSums } from "../detectors/index";
export { type FrequencyUnitFacts, frequencyUnitFacts } from "../frequency/index";
export { type Assumption, assumptions, levelReferenceSources } from "../reading/index";
export { type UnitFacts, unitFacts } from "../units/index";
