/**
 * Judging by a table of your own alone: {@link exactZone} brings none of the built-in tables and no reader of words. The
 * guide "Extend the library" tells when to take it.
 *
 * @module veladis/own
 */
export { VeladisError } from "../core/index";
export { type ExactZone, type ExactZoneOptions, exactZone, type KnownFacts, type PlainType } from "../severity/index";
