import {
  counted,
  requireGiven,
  requireKnownOptions,
  requireNonNegative,
  requirePositive,
  type Source,
  VeladisError,
  withParameters,
} from "../core/index";
import { COMMON_PRACTICE } from "../setpoints/index";
import { daysBetween, monthsAfter, requireDay } from "./calendar";
import { type DueState, dueStates } from "./due-states";
import { type LeftState, leftState } from "./last-check";
import type { CalendarDay, Plant, PlantMachine } from "./plant-machine";
import { requirePlant } from "./require-plant";

/** For which day {@link dueChecks} answers. */
export interface DueOptions {
  /** The day, e.g. `"2026-12-01"`. */
  readonly on: CalendarDay;
  /** Days after it that count too, for a round made in one go; 0 if not given. */
  readonly ahead?: number;
}

/** Whether the device of a machine is to be checked, and why. */
export interface DueCheck {
  readonly tag: string;
  readonly line: number;
  readonly state: DueState;
  /** Whether it is to be checked now. */
  readonly isDue: boolean;
  /** When the check is due by the calendar, of one left out of tolerance the day of that check; null where the list does not say. */
  readonly due: CalendarDay | null;
  /** Days that it is overdue, below zero the days that are left; null where the list does not say. */
  readonly days: number | null;
  /** The day of the last check; null without one. */
  readonly last: CalendarDay | null;
  /** Months from one check to the next; null without. */
  readonly interval: number | null;
  readonly what: string;
  readonly why: string;
  readonly source: Source;
  readonly mend: string;
}

const keys: Readonly<Record<keyof DueOptions, true>> = /* @__PURE__ */ Object.freeze({ on: true, ahead: true });

/** Months of a hundred years. */
const MOST_MONTHS = 1200;

const order = /* @__PURE__ */ (() => Object.keys(dueStates) as readonly DueState[])();

function requireInterval(interval: number, tag: string): number {
  const expected = `interval: months from one check of ${tag} to the next, above zero`;
  if (requirePositive(interval, expected, { option: "interval" }) <= MOST_MONTHS) return interval;
  throw new VeladisError("out-of-range", {
    expected: `${expected}, at most ${MOST_MONTHS}`,
    received: `${interval}`,
    option: "interval",
  });
}

/** What is known of when, and of the state it was left in. */
interface When extends Pick<DueCheck, "due" | "days" | "last" | "interval"> {
  readonly left: LeftState;
}

function stateOf(machine: PlantMachine, when: When, on: CalendarDay, ahead: number): DueState {
  const { check, alarm, trip, sensor, loop } = machine;
  const isDevice = [alarm, trip, sensor, loop, when.interval ?? undefined].some((one) => one !== undefined);
  if (check === undefined) return isDevice ? "never checked" : "nothing to check";
  if (daysBetween(on, check.date) > 0) return "date ahead";
  if (when.left.verdict === "fail" || when.left.verdict === "undecided") return "left out of tolerance";
  if (when.days === null) return "no interval";
  if (when.days > 0) return "overdue";
  if (when.days === 0) return "due";
  return -when.days <= ahead ? "due soon" : "not due";
}

function reasonOf({ due, days, last, interval, left: { why } }: When, state: DueState): string {
  const months = interval === null ? "" : `every ${interval} ${interval === 1 ? "month" : "months"}`;
  if (last === null) {
    return `no check date in the list${interval === null ? " and no interval" : `, to be checked ${months}`}: taken as due at once`;
  }
  if (state === "left out of tolerance") return `last checked ${last}; ${why}; due at once, whatever the interval`;
  if (due === null || days === null) return `last checked ${last}; ${why}; no interval in the list`;
  const part = Number.isInteger(interval) ? "" : ", a part of a month as so much of 28 days";
  const when = days > 0 ? `${counted(days, "day")} ago` : days === 0 ? "today" : `in ${counted(-days, "day")}`;
  return `last checked ${last}, ${months}${part}: due ${due}, ${when}; ${why}`;
}

function dueCheck(machine: PlantMachine, on: CalendarDay, ahead: number): DueCheck {
  const { tag, line, check, interval } = machine;
  const months = interval === undefined ? null : requireInterval(interval, tag);
  const last =
    check === undefined ? null : requireDay(check.date, `date of the last check of ${tag}`, { option: "date" });
  const due = last === null || months === null ? null : monthsAfter(last, months);
  const times = { due, days: due === null ? null : daysBetween(due, on), last, interval: months };
  const byCalendar: When = { ...times, left: leftState(machine) };
  const state = stateOf(machine, byCalendar, on, ahead);
  // one that was left so is due from that day on
  const isLeftOut = state === "left out of tolerance" && last !== null;
  const when: When = isLeftOut ? { ...byCalendar, due: last, days: daysBetween(last, on) } : byCalendar;
  const { due: isDue, what, mend } = dueStates[state];
  return Object.freeze({
    ...{ tag, line, state, isDue, due: when.due, days: when.days, last, interval: months, what },
    why: state === "nothing to check" ? what : reasonOf(when, state),
    source: COMMON_PRACTICE,
    mend,
  });
}

/**
 * Which devices are to be checked on a day: the most urgent first, then the longest overdue, then as in the list.
 *
 * A check is due so many months after the last by the calendar: of the day of the month, or of the last day where the month
 * is shorter. One that was never checked is due at once, and one that was left out of tolerance since the day of that check. Without an
 * interval nothing says when; that is told and not assumed. A row that was refused has no answer.
 *
 * @throws {@link VeladisError} `missing-option`, `syntax` and `out-of-range` for a day that is none, `negative`,
 *   `not-positive` for an interval of zero, `unknown-option`
 * @example
 * ```ts
 * import { dueChecks, parsePlant } from "veladis/plant";
 *
 * const heading = ["tag", "kind", "trip", "check date", "interval months"];
 * const rows = [
 *   ["LU-01", "fan", "9 mm/s rms", "2025-10-31", "12"],
 *   ["SP-A", "pump", "7.6 mm/s rms", "", "12"],
 *   ["UP-3", "gear drive", "5.6 mm/s rms", "2026-08-31", "6"],
 * ];
 * const due = dueChecks(parsePlant({ heading, rows }), { on: "2026-12-01" });
 * due.map(({ tag, state, due: day, days }) => [tag, state, day, days]);
 * // => [["SP-A", "never checked", null, null], ["LU-01", "overdue", "2026-10-31", 31], ["UP-3", "not due", "2027-02-28", -89]]
 * ```
 */
export function dueChecks(plant: Plant, options: DueOptions): readonly DueCheck[] {
  return withParameters({ plant, options }, () => {
    const { on, ahead = 0 } = requireKnownOptions(options, keys, {
      what: "an option of the checks that are due",
      form: 'options such as { on: "2026-12-01" }',
      place: { parameter: "options" },
    });
    requireDay(requireGiven(on, "the day asked for", { option: "on" }), "the day asked for", { option: "on" });
    requireNonNegative(ahead, "days ahead, zero or more", { option: "ahead" });
    const { machines } = requirePlant(plant);
    const rank = (one: DueCheck): number => order.indexOf(one.state);
    // sorting keeps the order of the list among equals
    return Object.freeze(
      machines
        .map((machine) => dueCheck(machine, on, ahead))
        .sort((a, b) => rank(a) - rank(b) || (b.days ?? 0) - (a.days ?? 0)),
    );
  });
}
