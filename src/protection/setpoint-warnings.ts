import { type Amplitude, convertAmplitude, currentLoop, format, significant } from "../amplitude/index";
import { hertz as hertzOf } from "../frequency/index";
import type { Baseline } from "./baseline";
import type { Device } from "./device";
import { setpointRules } from "./reason";
import type { SetpointLimits } from "./setpoint-limits";

/** What can be wrong with a proposal. */
export const setpointWarnings = /* @__PURE__ */ Object.freeze({
  "unverified limits": "limits or rules recalled from memory, not checked against a printed copy",
  "single baseline": "the baseline is one reading, without scatter",
  "no baseline": "there is no baseline",
  "poor baseline": "the baseline itself carries a warning",
  "no limits": "there is no scheme and no limit of the maker, so no trip is proposed",
  "no shutdown": "the standard prints no shutdown limit for this class",
  "other quantities": "the scheme limits other quantities too",
  "baseline in zone C": "the machine already runs above the upper limit of zone B",
  "alarm in noise": "the alarm lies below the noise floor of the sensor",
  "alarm in scatter": "the alarm lies within the scatter of the baseline",
  "trip beyond full scale": "the trip lies above what sensor or loop can carry",
  "little margin": "there is little margin between alarm and trip",
  "below band": "the running frequency is below or at the edge of the device's band",
  "unknown frequency": "without a running speed the device's band cannot be checked",
  "long delay": "the delay is longer than suits the machine",
  "coarse steps": "the steps of the device are coarse beside the setpoint",
  "beyond device": "the device cannot hold the setpoint",
} as const);

/** The code of a warning: a key of {@link setpointWarnings}. */
export type SetpointWarningCode = keyof typeof setpointWarnings;

/** A warning with the numbers of the case. */
export interface SetpointWarning {
  readonly code: SetpointWarningCode;
  readonly text: string;
}

/** What the signal path can carry. */
export interface SensorLimits {
  /** Smallest level that means anything, e.g. `"0.1 mm/s rms"`. */
  readonly noiseFloor?: string;
  /** Largest level the sensor carries, e.g. `"50 g pk"`. */
  readonly fullScale?: string;
  /** Range of the current loop behind it, e.g. `"0 to 25.4 mm/s rms"`. */
  readonly loop?: string;
}

/** What the warnings look at. */
export interface WarningCase {
  readonly baseline: Baseline | null;
  readonly alarm: Amplitude | null;
  readonly trip: Amplitude | null;
  readonly hertz: number | undefined;
  readonly sensor: SensorLimits;
  readonly device: Device;
  readonly type: string;
}

/** Ratio of trip to alarm below which the margin is little; common practice, no source. */
const LITTLE = 1.2;

function inType(reading: string | Amplitude, { type, hertz }: WarningCase): number {
  return convertAmplitude(reading, type, hertz === undefined ? {} : { at: { hertz } }).value;
}

/** Highest level that the sensor and the loop carry, in the type of the setpoints. */
function fullScale(given: WarningCase): number {
  const { fullScale: sensor, loop } = given.sensor;
  const ends = [
    ...(sensor === undefined ? [] : [inType(sensor, given)]),
    ...(loop === undefined ? [] : [inType(currentLoop(loop).reading(20), given)]),
  ];
  return Math.min(Number.POSITIVE_INFINITY, ...ends);
}

function bandWarning({ device, hertz }: WarningCase): SetpointWarning[] {
  const { band } = device;
  if (band === undefined) return [];
  if (hertz === undefined) {
    return [
      {
        code: "unknown frequency",
        text: "state the running speed, so that it can be held against the device's band",
      },
    ];
  }
  const [low, high] = [hertzOf(band.lowest), hertzOf(band.highest)];
  // A band is stated by its -3 dB edges; by ISO 2954 it is flat within 10 % only from about 1.26 times the lower one.
  if (hertz >= low * 1.26 && hertz <= high) return [];
  const where =
    hertz > high
      ? `above the band of ${significant(low)} to ${significant(high)} Hz`
      : hertz < low
        ? `below the band of ${significant(low)} to ${significant(high)} Hz, so the shaft's own vibration is read low or not at all`
        : `at the lower edge of the band (${significant(low)} Hz), where a device reads as little as 0.707 of it`;
  return [{ code: "below band", text: `the running frequency of ${significant(hertz)} Hz is ${where}` }];
}

/** The warnings that the numbers of a case call for. */
export function numberWarnings(given: WarningCase): SetpointWarning[] {
  const { baseline, alarm, trip, sensor, hertz } = given;
  const warnings: SetpointWarning[] = [];
  const alarmValue = alarm === null ? null : inType({ ...alarm, hertz }, given);
  const tripValue = trip === null ? null : inType({ ...trip, hertz }, given);
  if (alarm !== null && alarmValue !== null) {
    if (sensor.noiseFloor !== undefined && alarmValue <= inType(sensor.noiseFloor, given)) {
      warnings.push({
        code: "alarm in noise",
        text: `the alarm of ${format(alarm)} is not above the sensor's noise floor of ${sensor.noiseFloor}`,
      });
    }
    const scatter = baseline === null ? 0 : baseline.median + 3 * baseline.spread;
    if (baseline !== null && alarmValue <= Math.max(scatter, baseline.percentile.value)) {
      warnings.push({
        code: "alarm in scatter",
        text: `the alarm of ${format(alarm)} lies within the scatter of the baseline, which reaches ${significant(Math.max(scatter, baseline.percentile.value))} ${baseline.as}: it will come without cause`,
      });
    }
  }
  if (trip !== null && tripValue !== null) {
    const most = fullScale(given);
    if (tripValue > most) {
      warnings.push({
        code: "trip beyond full scale",
        text: `the trip of ${format(trip)} lies above what sensor and loop carry (${significant(most)} ${given.type}): it can never act`,
      });
    }
    if (alarmValue !== null && tripValue < alarmValue * LITTLE) {
      warnings.push({
        code: "little margin",
        text: `the trip is only ${significant(tripValue / alarmValue)} times the alarm: there is little time to act between them`,
      });
    }
  }
  return [...warnings, ...bandWarning(given)];
}

/** What decides the warnings about limits and baseline. */
export interface LimitCase {
  readonly limits: SetpointLimits | null;
  /** Whether the limits are the user's own. */
  readonly ofSite: boolean;
  /** Level of the baseline, in `as`. */
  readonly base: number | null;
  readonly statistics: Baseline | null;
  readonly as: string;
}

const CAPS = "the caps of 1.25 times the limits are recalled, not checked against a printed copy";

function limitWarnings({ limits, ofSite, base, as }: LimitCase): SetpointWarning[] {
  if (limits === null) {
    const text = "without a scheme or limits of the maker there is no trip to propose; the alarm is statistical";
    return [{ code: "no limits", text }];
  }
  const known = ofSite
    ? `limits as stated by the user; ${CAPS}`
    : limits.verified
      ? CAPS
      : "limits of the scheme are recalled, not checked against a printed copy";
  const warnings: SetpointWarning[] = [{ code: "unverified limits", text: known }];
  const { lower, upper, leftOut } = limits;
  if (base !== null && base > lower.value) {
    warnings.push({
      code: "baseline in zone C",
      text: `the baseline of ${significant(base)} ${as} is above ${lower.text}: find the cause before setting an alarm from it`,
    });
  }
  if (upper === null) {
    warnings.push({
      code: "no shutdown",
      text: "the standard prints no shutdown limit for this class: it is set from the machine's history",
    });
  }
  if (leftOut.length > 0) {
    warnings.push({
      code: "other quantities",
      text: `the scheme limits ${leftOut.join(" and ")} too; the worst governs, and one setpoint covers one quantity`,
    });
  }
  return warnings;
}

/** The warnings that limits and baseline call for. */
export function caseWarnings(given: LimitCase): SetpointWarning[] {
  const warnings = limitWarnings(given);
  const { base, statistics } = given;
  if (base === null) warnings.push({ code: "no baseline", text: setpointRules["no baseline"].text });
  else if (statistics === null) {
    warnings.push({ code: "single baseline", text: "the baseline is one reading: nothing is known of its scatter" });
  }
  for (const text of statistics?.warnings ?? []) warnings.push({ code: "poor baseline", text });
  return warnings;
}
