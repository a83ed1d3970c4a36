import { requireFinite } from "../core/index";
import { type Assumption, union, worstState } from "../reading/index";
import { decibelsText, type LevelDifference } from "./value";

/**
 * What came of numbers of decibels, with all that they had assumed. Steps are of readings: what was done to the number
 * made of them is told in one, with its arithmetic.
 */
function made(of: readonly LevelDifference[], decibels: number, note: string): LevelDifference {
  requireFinite(decibels, "a number of dB");
  const state = worstState(of.map((one) => one.state));
  if (of.every(({ history, assumed }) => history === undefined && assumed === undefined)) {
    return Object.freeze({ decibels, ...(state !== undefined && { state }) });
  }
  const assumed = of.reduce((all, one) => union(all, one.assumed), union<Assumption>());
  const step = {
    does: "condensed",
    value: decibels,
    type: "dB",
    note,
    ...(assumed.length > 0 && { assumed }),
  } as const;
  const history = Object.freeze([Object.freeze(step)]);
  return Object.freeze({ decibels, assumed, history, ...(state !== undefined && { state }) });
}

/** A number of decibels and another, or less another: of ratios the product or the quotient. */
export function togetherDifference(a: LevelDifference, b: LevelDifference, sign: 1 | -1): LevelDifference {
  const note = `${decibelsText(a.decibels)} ${sign < 0 ? "-" : "+"} ${decibelsText(b.decibels)}`;
  return made([a, b], a.decibels + sign * b.decibels, note);
}

/** A number of decibels times a number. */
export function multipliedDifference(a: LevelDifference, by: number): LevelDifference {
  return made([a], a.decibels * by, `${decibelsText(a.decibels)} x ${Number(by.toPrecision(4))}`);
}
