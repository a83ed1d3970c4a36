/**
 * The calculator: lines with readings, arithmetic, variables and functions, evaluated safely by mathjs.
 *
 * @module veladis/mathjs
 */
export * from "../repl/index";
