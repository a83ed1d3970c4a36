import { significant } from "../../reading/index";
import type { Change } from "../../severity/index";
import { labelled } from "./labelled";

/** A change since the baseline as a person reads it. */
export function changeText(change: Change, digits: number): string {
  const { significant: is, direction, unit, detector } = change;
  const by = significant(Math.abs(change.change), digits);
  return [
    `\nsince the baseline: a ${direction === "none" ? "change" : direction} of ${by} ${unit} ${detector}, ${is ? "SIGNIFICANT" : "not significant"}`,
    ` (more than ${significant(change.allowed, digits)} ${unit} ${detector} is, a quarter of the limit B/C)\n`,
    labelled("caution", change.cautions, 12),
  ].join("");
}
