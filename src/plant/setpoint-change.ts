import { amountOf, convertedAt } from "../amplitude/index";
import { attempt, same } from "../core/index";
import { type Amplitude, type Assumption, significant } from "../reading/index";
import type { ProposedSetpoint, Reason } from "../setpoints/index";
import type { FittedProposal } from "./fitted-proposal";
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
  /** Null where none is proposed; `text` says why. */
  readonly proposed: number | null;
  /** Proposed less set. */
  readonly difference: number | null;
  /** What the proposal would do with what is set; `"set"` where the list says nothing of it, `"none"` where none is proposed. */
  readonly does: "raise" | "lower" | "keep" | "set" | "none";
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

interface Proposed extends Pick<SetpointChange, "setting" | "unit" | "proposed" | "allowed" | "why"> {
  /** Why none is proposed. */
  readonly unproposed?: string;
  /** What what is set has to lie below, where its highest is not allowed itself. */
  readonly below?: string;
}

/** How what is set stands to what the rules allow, in words. */
function standingText(
  { unit, set, allowed, isAllowed }: Omit<SetpointChange, "text">,
  below: string | undefined,
): string {
  if (set === null || allowed === null || isAllowed === null) return "";
  const level = (value: number): string => `${significant(value, 4)} ${unit}`;
  if (isAllowed) return "; what is set is within what the rules allow";
  if (set < allowed[0]) return `; what is set is below the range of the rules, which begins at ${level(allowed[0])}`;
  return below === undefined
    ? `; WHAT IS SET IS ABOVE ALL THAT THE RULES ALLOW, ${level(allowed[1])}`
    : `; WHAT IS SET IS NOT BELOW ${below.toUpperCase()}, ${level(allowed[1])}`;
}

function textOf(
  change: Omit<SetpointChange, "text">,
  because: string | undefined,
  { unproposed, below }: Proposed,
): string {
  const { unit, set, proposed, difference, does } = change;
  const level = (value: number): string => `${significant(value, 4)} ${unit}`;
  const now = standingText(change, below);
  if (proposed === null) {
    const stands = set === null ? (because ?? "the list says nothing of it") : `set is ${level(set)}`;
    return `none is proposed: ${unproposed}; ${stands}${now}`;
  }
  if (set === null || difference === null) return `set ${level(proposed)}: ${because ?? "the list says nothing of it"}`;
  if (does === "keep") return `keep ${level(set)}${now}`;
  return `${does} by ${level(Math.abs(difference))}, from ${level(set)} to ${level(proposed)}${now}`;
}

function changeOf(asked: Proposed, { value: set, because, assumed = [] }: SetNow): SetpointChange {
  const { unproposed: _, below, ...told } = asked;
  const { proposed, allowed } = told;
  const difference =
    set === null || proposed === null ? null : same(proposed, set) ? 0 : Number((proposed - set).toPrecision(12));
  const isAllowed =
    set === null || allowed === null
      ? null
      : (set >= allowed[0] || same(allowed[0], set)) &&
        (below === undefined ? set <= allowed[1] || same(allowed[1], set) : set < allowed[1]);
  const does =
    proposed === null
      ? "none"
      : difference === null
        ? "set"
        : difference === 0
          ? "keep"
          : difference > 0
            ? "raise"
            : "lower";
  const change = { ...told, set, difference, does, isAllowed, assumed } as const;
  return Object.freeze({ ...change, text: textOf(change, because, asked) });
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
  { proposal: { as, alarm, trip, delay, hysteresis }, unproposed }: FittedProposal,
  hertz: number | undefined,
): readonly SetpointChange[] {
  const level = (setting: "trip" | "alarm", one: ProposedSetpoint | null): SetpointChange[] => {
    const set = levelIn(machine[setting], as, hertz);
    if (one !== null)
      return [changeOf({ setting, unit: as, proposed: one.stored.value, allowed: one.range, why: one.reasons }, set)];
    const none = unproposed[setting];
    if (none === undefined && machine[setting] === undefined) return [];
    const { why: because = "the rules give none for this machine", range = null, reasons = [] } = none ?? {};
    return [changeOf({ setting, unit: as, proposed: null, allowed: range, why: reasons, unproposed: because }, set)];
  };
  const { coastDown } = machine;
  const isBelow = coastDown !== undefined && coastDown <= delay.longest;
  const seconds = (setting: "trip delay" | "alarm delay", proposed: number, set: number | undefined): SetpointChange =>
    changeOf(
      {
        ...{ setting, unit: "s", proposed, why: delay.reasons },
        allowed: setting === "trip delay" ? [0, delay.longest] : null,
        ...(setting === "trip delay" && isBelow && { below: "the coast-down" }),
      },
      { value: set ?? null },
    );
  const [hasTrip, hasAlarm] = [trip ?? machine.trip, alarm ?? machine.alarm].map(
    (one) => one !== undefined && one !== null,
  );
  return Object.freeze([
    ...level("trip", trip),
    ...level("alarm", alarm),
    // without a trip there is nothing to delay
    ...(hasTrip ? [seconds("trip delay", delay.trip, machine.tripDelay)] : []),
    ...(hasAlarm ? [seconds("alarm delay", delay.alarm, machine.alarmDelay)] : []),
    ...(hasTrip
      ? [
          changeOf(
            { setting: "hysteresis", unit: "%", proposed: hysteresis.percent, allowed: null, why: hysteresis.reasons },
            hysteresisIn(machine),
          ),
        ]
      : []),
  ]);
}
