import { convertedAt, linearTypeOf } from "../../amplitude/index";
import { type Attempt, attempt, FLOAT_NOISE, VeladisError } from "../../core/index";
import { type Amplitude, format } from "../../reading/index";
import { lowestAtSpeeds, type SetpointLimits, speedEnds } from "../../setpoints/index";
import type { SchemeRef } from "../../severity/index";
import { levelText } from "../level-text";
import type { CalendarDay, PlantMachine } from "../plant-machine";

/** What an audit knows beside one machine. */
export interface AuditSetting {
  /** The day of the audit; undefined where nobody gave it. */
  readonly on: CalendarDay | undefined;
  readonly schemes: readonly SchemeRef[] | undefined;
  /** Lines of the rows with a tag, by the tag as it is compared. */
  readonly linesOf: ReadonlyMap<string, readonly number[]>;
  readonly limitsOf: LimitsOf;
}

/** A machine as the rules look at it. What is asked of it and not known is refused as a missing fact. */
export interface AuditCase extends AuditSetting {
  readonly machine: PlantMachine;
  /** What the running speed may be, in hertz: two ends, one, or none. */
  readonly speeds: readonly number[];
  /** The limits that a reading is held against, in its type; without one in that of the trip, else of the alarm. */
  limits(of?: Amplitude): SetpointLimits;
}

/** What a refusal says of what else a proposal could be made from, which is no matter to an audit. */
export const OTHER_WAYS = /; or limits of the maker.*$/s;

/**
 * A fact of a machine that a rule cannot do without.
 *
 * @throws {@link VeladisError} `missing-fact`
 */
export function known<Value>(value: Value | undefined, what: string): Value {
  if (value !== undefined) return value;
  throw new VeladisError("missing-fact", { expected: what, received: "nothing" });
}

/** The running speeds, at least one. */
export function knownSpeeds({ speeds }: AuditCase): readonly number[] {
  return known(speeds.length === 0 ? undefined : speeds, "the running speed");
}

/** A setpoint in words, with the frequency that it says itself. */
export function setpointText(setpoint: Amplitude): string {
  return setpoint.hertz === undefined ? format(setpoint) : levelText(setpoint);
}

/** True where a value is above another by more than float noise. */
export function isAbove(value: number, other: number): boolean {
  return value > other * (1 + FLOAT_NOISE);
}

/**
 * A reading in the type of another one; across quantities by the running speed, and of a range by the end of it that makes
 * the reading the highest; by the frequency that the other one says, where that makes it higher.
 *
 * @throws {@link VeladisError} `missing-frequency` across quantities without a speed
 */
export function highestIn(reading: Amplitude, of: Amplitude, { speeds }: AuditCase): Amplitude {
  const type = linearTypeOf(of);
  const known = of.hertz === undefined ? speeds : [...speeds, of.hertz];
  const all = (known.length === 0 ? [undefined] : known).map((hertz) => convertedAt(reading, type, hertz));
  return all.reduce((one, other) => (other.value > one.value ? other : one));
}

/** The limits that a machine is held against, or why they cannot be told; a refusal is kept too, since several rules ask. */
export type LimitsOf = (machine: PlantMachine, of?: Amplitude) => Attempt<SetpointLimits>;

/** What limits are written in where the row has no reading to say it. */
const USUAL = "mm/s rms";

/** Tells limits by row, in the type of its setpoints, else of its baseline; those of rows that say the same are told once. */
export function limitsByRow(schemes: readonly SchemeRef[] | undefined): LimitsOf {
  const found = new Map<string, Attempt<SetpointLimits>>();
  return ({ machine, table, limits: own, trip, alarm, baseline }, of) => {
    const reading = of ?? trip ?? alarm ?? baseline?.level;
    const type = reading === undefined ? USUAL : linearTypeOf(reading);
    const key = JSON.stringify([machine, table, own, type, reading?.hertz]);
    const before = found.get(key);
    if (before !== undefined) return before;
    const named =
      schemes?.find((one) => typeof one === "object" && one.id === table) ?? (table as SchemeRef | undefined);
    const request = {
      machine,
      ...(own !== undefined && { limits: own }),
      ...(own === undefined && named !== undefined && { scheme: named }),
      ...(schemes !== undefined && { schemes }),
    };
    const told = attempt(() => lowestAtSpeeds(request, type, reading?.hertz));
    found.set(key, told);
    return told;
  };
}

/** A machine as the rules look at it. */
export function auditCase(machine: PlantMachine, setting: AuditSetting): AuditCase {
  const limits = (of?: Amplitude): SetpointLimits => {
    const limitsOrNot = setting.limitsOf(machine, of);
    if (limitsOrNot.ok) return limitsOrNot.value;
    throw limitsOrNot.error;
  };
  return { ...setting, machine, speeds: speedEnds(machine.machine), limits };
}
