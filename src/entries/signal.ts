/**
 * Overall levels, spectra and densities from sampled vibration.
 *
 * @module veladis/signal
 */
export * from "../signal/index";
