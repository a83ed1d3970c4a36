/**
 * Severity: which table of limits applies to a machine, and which zone a reading is in.
 *
 * @module veladis/severity
 */
export { VeladisError } from "../core/index";
export * from "../severity/index";
