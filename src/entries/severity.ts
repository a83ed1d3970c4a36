/**
 * Severity: which table of limits applies to a machine, and which zone a reading is in.
 *
 * @module veladis/severity
 */
export * from "../severity/index";
