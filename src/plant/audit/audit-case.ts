import { convertedAt, linearTypeOf } from "../../amplitude/index";
import { type Attempt, attempt, FLOAT_NOISE, lazily, VeladisError } from "../../core/index";
import type { Amplitude } from "../../reading/index";
import { lowestAtSpeeds, type SetpointLimits, speedEnds } from "../../setpoints/index";
import type { SchemeRef } from "../../severity/index";
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
  /** The limits that the setpoints are held against, in the type of the trip, or without one of the alarm. */
  limits(): SetpointLimits;
}

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

/** True where a value is above another by more than float noise. */
export function isAbove(value: number, other: number): boolean {
  return value > other * (1 + FLOAT_NOISE);
}

/**
 * A reading in the type of another one; across quantities by the running speed, and of a range by the end of it that makes
 * the reading the highest.
 *
 * @throws {@link VeladisError} `missing-frequency` across quantities without a speed
 */
export function highestIn(reading: Amplitude, of: Amplitude, { speeds }: AuditCase): Amplitude {
  const type = linearTypeOf(of);
  const all = (speeds.length === 0 ? [undefined] : speeds).map((hertz) => convertedAt(reading, type, hertz));
  return all.reduce((one, other) => (other.value > one.value ? other : one));
}

/** The limits that a machine is held against, or why they cannot be told; a refusal is kept too, since several rules ask. */
export type LimitsOf = (machine: PlantMachine) => Attempt<SetpointLimits>;

/** What limits are written in where the row has no reading to say it. */
const USUAL = "mm/s rms";

/** Tells limits by row, in the type of its setpoints, else of its baseline; those of rows that say the same are told once. */
export function limitsByRow(schemes: readonly SchemeRef[] | undefined): LimitsOf {
  const found = new Map<string, Attempt<SetpointLimits>>();
  return ({ machine, table, limits: own, trip, alarm, baseline }) => {
    const reading = trip ?? alarm ?? baseline?.level;
    const type = reading === undefined ? USUAL : linearTypeOf(reading);
    const key = JSON.stringify([machine, table, own, type]);
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
    const told = attempt(() => lowestAtSpeeds(request, type));
    found.set(key, told);
    return told;
  };
}

/** A machine as the rules look at it. */
export function auditCase(machine: PlantMachine, setting: AuditSetting): AuditCase {
  const told = lazily(() => setting.limitsOf(machine));
  const limits = (): SetpointLimits => {
    const limitsOrNot = told();
    if (limitsOrNot.ok) return limitsOrNot.value;
    throw limitsOrNot.error;
  };
  return { ...setting, machine, speeds: speedEnds(machine.machine), limits };
}
