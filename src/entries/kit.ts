/**
 * Units and detectors of your own: {@link toolkit} makes conversions that know them, typed by their symbols. The guide
 * "Extend the library" tells more.
 *
 * @module veladis/kit
 */
export { VeladisError } from "../core/index";
export * from "../kit/index";
