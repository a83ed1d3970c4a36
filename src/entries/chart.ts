/**
 * Charts as SVG text, without a DOM: nomograph, trip timeline, trend, spectrum, severity bar, setpoints.
 *
 * @module veladis/chart
 */

export * from "../chart/index";
export { VeladisError } from "../core/index";
