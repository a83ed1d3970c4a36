import { type Amplitude, convertAmplitude, currentLoop, format, significant } from "../amplitude/index";
import type { Device } from "../device/index";
import { hertz as hertzOf } from "../frequency/index";
import type { Baseline } from "./baseline";
import type { SensorLimits, SetpointWarning } from "./setpoint-warnings";

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
  return [{ code: "outside band", text: `the running frequency of ${significant(hertz)} Hz is ${where}` }];
}

function alarmWarnings(given: WarningCase): SetpointWarning[] {
  const { alarm, baseline, sensor } = given;
  if (alarm === null) return [];
  const warnings: SetpointWarning[] = [];
  const value = inType(alarm, given);
  if (sensor.noiseFloor !== undefined && value <= inType(sensor.noiseFloor, given)) {
    warnings.push({
      code: "alarm in noise",
      text: `the alarm of ${format(alarm)} is not above the sensor's noise floor of ${sensor.noiseFloor}`,
    });
  }
  if (baseline === null) return warnings;
  const reach = Math.max(baseline.median + 3 * baseline.spread, baseline.percentile.value);
  if (value <= reach) {
    warnings.push({
      code: "alarm in scatter",
      text: `the alarm of ${format(alarm)} lies within the scatter of the baseline, which reaches ${significant(reach)} ${baseline.as}: it will come without cause`,
    });
  }
  return warnings;
}

function tripWarnings(given: WarningCase): SetpointWarning[] {
  const { alarm, trip } = given;
  if (trip === null) return [];
  const warnings: SetpointWarning[] = [];
  const value = inType(trip, given);
  const most = fullScale(given);
  if (value > most) {
    warnings.push({
      code: "trip beyond full scale",
      text: `the trip of ${format(trip)} lies above what sensor and loop carry (${significant(most)} ${given.type}): it can never act`,
    });
  }
  const margin = alarm === null ? Number.POSITIVE_INFINITY : value / inType(alarm, given);
  if (margin < LITTLE) {
    warnings.push({
      code: "little margin",
      text: `the trip is only ${significant(margin)} times the alarm: there is little time to act between them`,
    });
  }
  return warnings;
}

/** The warnings that the numbers of a case call for. */
export function numberWarnings(given: WarningCase): SetpointWarning[] {
  return [...alarmWarnings(given), ...tripWarnings(given), ...bandWarning(given)];
}
