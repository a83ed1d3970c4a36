/**
 * Overall levels, spectra and densities from sampled vibration.
 *
 * @module veladis/signal
 */
export { format } from "../amplitude/index";
export { VeladisError } from "../core/index";
export * from "../signal/index";
