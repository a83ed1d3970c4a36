import { amountOf, convertedAt } from "../amplitude/index";
import { attempt, same } from "../core/index";
import { type Amplitude, type Assumption, significant } from "../reading/index";
import type { Proposal, ProposedSetpoint, Reason } from "../setpoints/index";
import type { PlantMachine } from "./plant-machine";

/** A setting that a schedule proposes. */
export type ScheduledSetting = "trip" | "alarm" | "trip delay" | "alarm delay" | "hysteresis";

/** What would change against what is set, were a proposal taken; nothing does by itself. */
export interface SetpointChange {
  readonly setting: ScheduledSetting;
  /** What the numbers are in: the type of the setpoints, `"s"`, or `"%"` of the threshold. */
  readonly unit: string;
  /** What is set; null where the list does not say. */
  readonly set: number | null;
  readonly proposed: number;
  /** Proposed less set. */
  readonly difference: number | null;
  /** What the proposal would do with what is set; `"set"` where the list says nothing of it. */
  readonly does: "raise" | "lower" | "keep" | "set";
  /** The lowest and highest that the rules allow; null where they say neither. */
  readonly allowed: readonly [lowest: number, highest: number] | null;
  /** Whether what is set lies within that; null where one of the two is not known. */
  readonly isAllowed: boolean | null;
  /** What would change, in words. */
  readonly text: string;
  /** Why the proposal is what it is. */
  readonly why: readonly Reason[];
  /** What was assumed in writing what is set in the unit of the proposal. */
  readonly assumed: readonly Assumption[];
}

/** What is set, in the unit of a proposal: a number, why it cannot be told in it, or nothing where the list is empty. */
interface SetNow {
  readonly value: number | null;
  readonly because?: string;
  readonly assumed?: readonly Assumption[];
}

type Proposed = Pick<SetpointChange, "setting" | "unit" | "proposed" | "allowed" | "why">;

function textOf(change: Omit<SetpointChange, "text">, because: string | undefined): string {
  const { unit, set, proposed, difference, does, allowed, isAllowed } = change;
  const level = (value: number): string => `${significant(value, 4)} ${unit}`;
  const aside = because === undefined ? "" : `; ${because}`;
  if (set === null || difference === null) return `set ${level(proposed)}: the list says nothing of it${aside}`;
  const now =
    allowed === null || isAllowed === null
      ? ""
      : isAllowed
        ? "; what is set is within what the rules allow"
        : set > allowed[1]
          ? `; WHAT IS SET IS ABOVE ALL THAT THE RULES ALLOW, ${level(allowed[1])}`
          : `; what is set is below the range of the rules, which begins at ${level(allowed[0])}`;
  if (does === "keep") return `keep ${level(set)}${now}`;
  return `${does} by ${level(Math.abs(difference))}, from ${level(set)} to ${level(proposed)}${now}`;
}

function changeOf(proposed: Proposed, { value: set, because, assumed = [] }: SetNow): SetpointChange {
  const difference = set === null ? null : same(proposed.proposed, set) ? 0 : proposed.proposed - set;
  const { allowed } = proposed;
  const isAllowed =
    set === null || allowed === null
      ? null
      : (set >= allowed[0] || same(allowed[0], set)) && (set <= allowed[1] || same(allowed[1], set));
  const does = difference === null ? "set" : difference === 0 ? "keep" : difference > 0 ? "raise" : "lower";
  const change = { ...proposed, set, difference, does, isAllowed, assumed } as const;
  const text =
    set === null && because !== undefined
      ? `set ${significant(proposed.proposed, 4)} ${proposed.unit}: ${because}`
      : textOf(change, because);
  return Object.freeze({ ...change, text });
}

/** A level that is set, in the type of the setpoints. */
function levelIn(level: Amplitude | undefined, as: string, hertz: number | undefined): SetNow {
  if (level === undefined) return { value: null };
  const found = attempt(() => convertedAt(level, as, hertz));
  if (!found.ok) return { value: null, because: `what is set cannot be told in it: ${found.error.message}` };
  return { value: found.value.value, assumed: found.value.assumed };
}

/** The hysteresis that is set, in percent of the trip. */
function hysteresisIn({ settings: { hysteresis }, trip }: PlantMachine): SetNow {
  if (hysteresis === undefined) return { value: null };
  if (trip === undefined) {
    const [, percent] = /^\s*(\d+(?:\.\d+)?)\s*%\s*$/.exec(hysteresis) ?? [];
    if (percent !== undefined) return { value: Number(percent) };
    return { value: null, because: "what is set is an amount, and the list says no trip that it is a share of" };
  }
  const found = attempt(() => (100 * amountOf(hysteresis, trip)) / trip.value);
  return found.ok
    ? { value: Number(found.value.toPrecision(12)) }
    : { value: null, because: `what is set cannot be told in it: ${found.error.message}` };
}

/** What would change of the settings of a machine, by a proposal. */
export function setpointChanges(
  machine: PlantMachine,
  { as, alarm, trip, delay, hysteresis }: Proposal,
  hertz: number | undefined,
): readonly SetpointChange[] {
  const level = (setting: "trip" | "alarm", one: ProposedSetpoint | null): SetpointChange[] =>
    one === null
      ? []
      : [
          changeOf(
            { setting, unit: as, proposed: one.stored.value, allowed: one.range, why: one.reasons },
            levelIn(machine[setting], as, hertz),
          ),
        ];
  const seconds = (setting: "trip delay" | "alarm delay", proposed: number, set: number | undefined): SetpointChange =>
    changeOf(
      {
        setting,
        unit: "s",
        proposed,
        allowed: setting === "trip delay" ? [0, delay.longest] : null,
        why: delay.reasons,
      },
      { value: set ?? null },
    );
  return Object.freeze([
    ...level("trip", trip),
    ...level("alarm", alarm),
    // without a trip there is nothing to delay
    ...(trip === null ? [] : [seconds("trip delay", delay.trip, machine.tripDelay)]),
    ...(alarm === null ? [] : [seconds("alarm delay", delay.alarm, machine.alarmDelay)]),
    ...(trip === null
      ? []
      : [
          changeOf(
            { setting: "hysteresis", unit: "%", proposed: hysteresis.percent, allowed: null, why: hysteresis.reasons },
            hysteresisIn(machine),
          ),
        ]),
  ]);
}
