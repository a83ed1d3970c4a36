/**
 * Conversions and tables of limits as plain SQL, for data that stays where it lies.
 *
 * @module veladis/sql
 */
export { VeladisError } from "../core/index";
export * from "../sql/index";
