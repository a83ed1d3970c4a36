import { type ConvertedAmplitude, convertedAt, currentLoop } from "../amplitude/index";
import { bandUse, type Device, loopUse } from "../device/index";
import { type Amplitude, type Assumption, format, significant, union } from "../reading/index";
import { reaches } from "./first-warnings";
import type { SensorLimits, SetpointWarning } from "./setpoint-warnings";

/** What the warnings look at. */
export interface WarningCase {
  /** How far the scatter of the baseline reaches, in `type`; null where it is not known. */
  readonly scatter: number | null;
  readonly alarm: Amplitude | null;
  readonly trip: Amplitude | null;
  readonly hertz: number | undefined;
  readonly sensor: SensorLimits;
  readonly device: Device;
  /** The reading type of the setpoints. */
  readonly type: string;
}

/** Warnings, and what was assumed to come to them. */
interface Warned {
  readonly warnings: readonly SetpointWarning[];
  readonly assumed: readonly Assumption[];
}

/** Ratio of trip to alarm below which the margin is little; common practice, no source. */
const LITTLE = 1.2;

type Scale = Pick<WarningCase, "sensor" | "device" | "hertz" | "type">;

function inType(reading: string | Amplitude, { type, hertz }: Pick<WarningCase, "type" | "hertz">): ConvertedAmplitude {
  return convertedAt(reading, type, hertz);
}

function frequencyOf({ hertz }: Pick<WarningCase, "hertz">) {
  return hertz === undefined ? {} : { at: { hertz } };
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
  const { remark } = bandUse(hertz, band);
  if (remark === null) return [];
  return [{ code: "outside band", text: `the running frequency of ${significant(hertz)} Hz is ${remark}` }];
}

function alarmWarnings(given: WarningCase): Warned {
  const { alarm, scatter, sensor, type } = given;
  if (alarm === null) return { warnings: [], assumed: [] };
  const warnings: SetpointWarning[] = [];
  const floor = sensor.noiseFloor === undefined ? undefined : inType(sensor.noiseFloor, given);
  if (floor !== undefined && alarm.value <= floor.value) {
    warnings.push({
      code: "alarm in noise",
      text: `the alarm of ${format(alarm)} is not above the sensor's noise floor of ${sensor.noiseFloor}`,
    });
  }
  if (scatter !== null && alarm.value <= scatter) {
    warnings.push({
      code: "alarm in scatter",
      text: `the alarm of ${format(alarm)} lies within the scatter of the baseline, which reaches ${significant(scatter)} ${type}: it will come without cause`,
    });
  }
  return { warnings, assumed: floor?.assumed ?? [] };
}

/** The highest levels that sensor and loop carry, in the type of the setpoints. */
function fullScales(given: Scale): ConvertedAmplitude[] {
  const { fullScale, loop } = given.sensor;
  return [
    ...(fullScale === undefined ? [] : [inType(fullScale, given)]),
    ...(loop === undefined ? [] : [inType(currentLoop(loop).reading(20), given)]),
  ];
}

/** The most that sensor, loop and device carry, in the type of the setpoints; undefined where nothing is said of it. */
export function carriedMost(given: Scale): number | undefined {
  const { highest } = given.device;
  const all = [...fullScales(given), ...(highest === undefined ? [] : [inType(highest, given)])];
  return all.length === 0 ? undefined : Math.min(...all.map(({ value }) => value));
}

function tripWarnings(given: WarningCase): Warned {
  const { alarm, trip, type } = given;
  if (trip === null) return { warnings: [], assumed: [] };
  const warnings: SetpointWarning[] = [];
  const carried = fullScales(given);
  const most = Math.min(Number.POSITIVE_INFINITY, ...carried.map(({ value }) => value));
  if (trip.value > most) {
    warnings.push({
      code: "trip beyond full scale",
      text: `the trip of ${format(trip)} lies beyond what sensor and loop carry (${significant(most)} ${type}): no level within their range makes it act`,
    });
  }
  const { loop } = given.sensor;
  const remark = loop === undefined || trip.value > most ? null : loopUse(trip, loop, frequencyOf(given)).remark;
  if (remark !== null) warnings.push({ code: "little of span", text: remark });
  const margin = alarm === null ? Number.POSITIVE_INFINITY : trip.value / alarm.value;
  // a trip that is not above the alarm is told first of all
  if (margin < LITTLE && !reaches(alarm, trip)) {
    warnings.push({
      code: "little margin",
      text: `the trip is only ${significant(margin)} times the alarm: there is little time to act between them`,
    });
  }
  return { warnings, assumed: carried.reduce<readonly Assumption[]>((all, one) => union(all, one.assumed), []) };
}

/** The warnings that the numbers of a case call for. */
export function numberWarnings(given: WarningCase): Warned {
  const [alarm, trip] = [alarmWarnings(given), tripWarnings(given)];
  return {
    warnings: [...alarm.warnings, ...trip.warnings, ...bandWarning(given)],
    assumed: union(alarm.assumed, trip.assumed),
  };
}
