import { requireChoice, requireKnownKeys, requireNonNegative } from "../core/index";
import {
  type ChannelSettings,
  type DeviceBand,
  deviceSettings,
  type RelaySettings,
  requireCoil,
  requireContact,
  requireLatching,
  sensorFaults,
} from "../device/index";
import type { Frequency } from "../frequency/index";
import type { Amplitude } from "../reading/index";

/** Settings that a bench plan proves; the settings of a `TripLogic` serve. */
export interface BenchSettings {
  /** As the device has stored it. */
  readonly threshold: string | Amplitude;
  readonly hysteresis: string;
  /** Seconds. */
  readonly onDelay: number;
  /** Seconds; 0 if not given. */
  readonly offDelay?: number;
  readonly latching: boolean;
  readonly contact?: RelaySettings["contact"];
  readonly coil?: RelaySettings["coil"];
  readonly sensorFault?: ChannelSettings["sensorFault"];
  /** Frequencies to test at; the first proves the trip. 79.4 Hz if not given. */
  readonly frequencies?: readonly Frequency[];
  /** Measuring band of the device, for what it reads near the edges. */
  readonly band?: DeviceBand;
  /** Mass of sensor and fixture on the shaker, e.g. `"0.5 kg"`; `"0 kg"` if not given. */
  readonly load?: string;
  /** Tolerance of the device, e.g. `"5 %"`; 5 % if not given. */
  readonly tolerance?: string;
  /** Range of the 4-20 mA loop that carries the level, e.g. `"0 to 20 mm/s rms"`; each step then tells its current. */
  readonly loop?: string;
  /** Sensitivity of the sensor, e.g. `"100 mV/g"`; each step then tells its voltage. */
  readonly sensor?: string;
}

/** Refuses settings that a plan would print and that are none; the threshold and what is a share of it apart. */
export function requireBenchSettings(settings: BenchSettings): void {
  const known: Readonly<Record<keyof BenchSettings, true>> = deviceSettings;
  const { onDelay, offDelay, latching, contact, coil, sensorFault } = requireKnownKeys(
    settings,
    known,
    "a setting of a device",
  );
  requireNonNegative(onDelay, "onDelay: a time of zero or more, in s", { option: "onDelay" });
  if (offDelay !== undefined)
    requireNonNegative(offDelay, "offDelay: a time of zero or more, in s", { option: "offDelay" });
  requireLatching(latching);
  if (contact !== undefined) requireContact(contact);
  if (coil !== undefined) requireCoil(coil);
  if (sensorFault !== undefined) {
    requireChoice(sensorFault, sensorFaults, "sensorFault: what a sensor fault does", { option: "sensorFault" });
  }
}
