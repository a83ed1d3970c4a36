import { convertAmplitude, currentLoop, linearTypeOf } from "../amplitude/index";
import { bandResponse } from "../device/index";
import { hertz as hertzOf } from "../frequency/index";
import { type Amplitude, amplitudeIn, significant } from "../reading/index";
import { toleranceShare } from "./bench-tolerance";
import { levelText } from "./level-text";
import type { PlantMachine } from "./plant-machine";

/** The type in which levels of a shaker are compared: at one frequency each other one is in a fixed ratio to it. */
export const SHAKER_TYPE = "mm/s rms";

/** Share of the level that a device reads where its band is called flat; below it the plan tells of the band too. */
const FLAT = 0.98;

/** Levels about the only setpoint there is, as shares of it; common practice, no source. */
const belowTrip = [0.7, 1] as const;
const aboveAlarm = [1, 1.25] as const;

/** The levels at which a device is checked, in {@link SHAKER_TYPE}, at one frequency. */
export interface BenchWindow {
  readonly machine: PlantMachine;
  readonly lowest: number;
  readonly highest: number;
}

/** A device whose check no setting of a shaker serves, and why. */
export interface NoWindow {
  readonly why: string;
  readonly mend: string;
}

/** A setpoint without a frequency of its own, since the shaker gives it one. */
function bare(setpoint: Amplitude): Amplitude {
  return amplitudeIn(linearTypeOf(setpoint), setpoint.value);
}

/** The unit and detector that a device shows. */
export function shownType({ trip, alarm }: PlantMachine): string | undefined {
  const setpoint = trip ?? alarm;
  return setpoint === undefined ? undefined : linearTypeOf(setpoint);
}

/** The frequency in the middle of the band of a device, in octaves. */
export function middleOfBand({ band }: PlantMachine): number | undefined {
  return band === undefined ? undefined : Math.sqrt(hertzOf(band.lowest) * hertzOf(band.highest));
}

/**
 * The levels between alarm and trip of a device at a frequency, its tolerance away from both, in the flat part of its band and within its loop.
 *
 * With one setpoint alone they lie close to it. A band that the list does not have is taken to hold the frequency; the
 * round tells so.
 */
export function benchWindow(machine: PlantMachine, hertz: number): BenchWindow | NoWindow {
  const { trip, alarm, band, loop } = machine;
  const setpoints = [alarm, trip].filter((one) => one !== undefined);
  const [first] = setpoints;
  if (first === undefined) {
    return { why: "neither alarm nor trip is in the list", mend: "write the setpoints of the device into the list" };
  }
  if (band !== undefined) {
    const share = bandResponse({ hertz }, band);
    if (share < FLAT) {
      const why = `at ${significant(hertz)} Hz a device of its band nominally reads ${significant(share)} of the level`;
      return { why, mend: "take a shaker with a frequency in the flat part of the band" };
    }
  }
  const levelIn = (level: Amplitude): number => convertAmplitude(bare(level), SHAKER_TYPE, { at: { hertz } }).value;
  const levels = setpoints.map(levelIn);
  const shares = levels.length > 1 ? ([1, 1] as const) : trip === undefined ? aboveAlarm : belowTrip;
  const lowest = Math.min(...levels) * shares[0];
  const away = setpoints.map((one) => toleranceShare(machine.tolerance, one, linearTypeOf(one)));
  const share = Math.max(...away);
  const end = loop === undefined ? undefined : currentLoop(loop).reading(20);
  const most = end === undefined ? Number.POSITIVE_INFINITY : levelIn(end);
  if (end !== undefined && lowest > most) {
    return {
      why: `its loop ends at ${levelText(bare(end))}, below ${levelText(bare(first))}`,
      mend: "a loop whose range holds alarm and trip",
    };
  }
  const highest = Math.max(...levels) * shares[1];
  // a device at the edge of its tolerance shows a level on a setpoint on either side of it
  const [from, to] = [
    alarm === undefined ? lowest : lowest * (1 + share),
    trip === undefined ? highest : highest * (1 - share),
  ];
  const middle = (lowest + highest) / 2;
  const [low, high] = from <= to ? [from, to] : [middle, middle];
  return { machine, lowest: Math.min(low, most), highest: Math.min(high, most) };
}
