import { finiteResult, largestOf } from "../core/index";
import type { KnownCheckResult } from "./check-against-known";

/** A check that is drawn: its name, which may be empty, and its outcome. */
export interface NamedCheck {
  readonly name: string;
  readonly check: KnownCheckResult;
}

/** An error against its tolerance, all in percent of the known level. */
export interface ErrorMark {
  readonly name: string;
  /** Where it stands: the known level, its frequency in hertz, or its number from 1. */
  readonly at: number;
  readonly percent: number;
  /** The ends of the tolerance: the lower below zero. */
  readonly tolerance: readonly [low: number, high: number];
  /** The expanded uncertainty (k = 2); null without one. */
  readonly uncertainty: number | null;
  readonly verdict: KnownCheckResult["verdict"];
}

/** Marks over what tells the checks apart. */
export interface ErrorMarks {
  readonly over: "level" | "frequency" | "check";
  /** Unit of what they stand over; empty for numbers. */
  readonly unit: string;
  /** In rising order of where they stand. */
  readonly marks: readonly ErrorMark[];
  /** The furthest from zero that any of them goes, in percent. */
  readonly furthest: number;
}

/** How many different values there are. */
function different(values: readonly unknown[]): number {
  return new Set(values).size;
}

/** A tolerance below the known level where only that above is told: the smaller one, as of decibels. */
function leastBelow({ known, tolerance }: KnownCheckResult): number {
  return (known.value * tolerance) / (known.value + tolerance);
}

/** The furthest from zero that a mark goes. */
function reachOf({ percent, tolerance, uncertainty }: ErrorMark): number {
  return Math.max(Math.abs(percent) + (uncertainty ?? 0), -tolerance[0], tolerance[1]);
}

/**
 * Errors against their tolerances as they are drawn: over the level where all are in one unit and at one frequency, over
 * the frequency where each has another and they have one level or several, else one beside the other.
 */
export function errorMarks(checks: readonly NamedCheck[]): ErrorMarks {
  const hertz = checks.map(({ check }) => check.known.hertz);
  const levels = checks.map(({ check }) => check.known.value);
  const isOneUnit = different(checks.map(({ check }) => check.as)) === 1;
  const over =
    different(hertz) === checks.length && checks.length > 1 && !hertz.includes(undefined)
      ? "frequency"
      : isOneUnit && different(hertz) === 1 && different(levels) > 1
        ? "level"
        : "check";
  const place = (i: number): number =>
    over === "check" ? i + 1 : ((over === "level" ? levels[i] : hertz[i]) as number);
  const marks = checks.map(({ name, check }, i): ErrorMark => {
    const share = (amount: number): number => finiteResult((100 * amount) / check.known.value);
    return {
      name,
      at: place(i),
      percent: check.errorPercent,
      tolerance: [-share(check.toleranceBelow ?? leastBelow(check)), share(check.tolerance)],
      uncertainty: check.uncertainty === null ? null : share(check.uncertainty),
      verdict: check.verdict,
    };
  });
  return {
    over,
    unit: over === "level" ? (checks[0]?.check.as ?? "") : over === "frequency" ? "Hz" : "",
    marks: marks.sort((a, b) => a.at - b.at),
    furthest: largestOf(marks.map(reachOf)),
  };
}
