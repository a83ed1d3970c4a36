/**
 * Overall levels, spectra and densities from sampled vibration.
 *
 * @module veladis/signal
 */

export { rssDifference, sineFrequency, vectorDifference } from "../amplitude/index";
export { VeladisError } from "../core/index";
export { format } from "../reading/index";
export * from "../signal/index";
