import { convertAmplitude } from "../amplitude/index";
import {
  cautions,
  type ErrorPlace,
  inPlace,
  requireGiven,
  requireKnownOptions,
  requireList,
  type Source,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { type Amplitude, amplitudeIn } from "../reading/index";
import { COMMON_PRACTICE } from "../setpoints/index";
import { REFERENCE, type Shaker } from "../verification/index";
import { benchCandidate, type ChosenLevel } from "./bench-choice";
import { middleOfBand, type NoWindow, SHAKER_TYPE, shownType } from "./bench-window";
import { requireDay } from "./calendar";
import type { DueCheck } from "./due-checks";
import type { Plant, PlantMachine } from "./plant-machine";
import { requireDue } from "./require-due";
import { requirePlant } from "./require-plant";
import { sheetNumber } from "./sheet-number";

/** What {@link benchRound} is told besides the checks that are due. */
export interface RoundOptions {
  /** The day that the numbers of the sheets have. */
  readonly on: string;
  /** Mass of sensor and fixture on the shaker, e.g. `"0.5 kg"`; `"0 kg"` if not given. */
  readonly load?: string;
  /** Frequencies to choose from; those of the shaker, 79.4 Hz or the middle of a band if not given. */
  readonly frequencies?: readonly Frequency[];
}

/** A device on the shaker. */
export interface BenchDevice {
  /** Number of its sheet, which its result names. */
  readonly number: string;
  readonly tag: string;
  readonly line: number;
  /** What the device should show, in its own unit and detector, with the frequency. */
  readonly known: Amplitude;
  /** False where the list has no band: whether it holds the frequency is not known. */
  readonly isBandKnown: boolean;
}

/** One setting of the shaker, and the devices that it serves. */
export interface BenchSetting {
  readonly hertz: number;
  /** In mm/s rms, at that frequency. */
  readonly level: Amplitude;
  readonly displacement: Amplitude;
  readonly acceleration: Amplitude;
  readonly devices: readonly BenchDevice[];
}

/** A device that no setting of this shaker serves. */
export interface LeftOut {
  readonly tag: string;
  readonly line: number;
  readonly why: string;
  readonly mend: string;
}

/** A round on the bench. */
export interface BenchRound {
  /** The settings that serve most devices first. */
  readonly settings: readonly BenchSetting[];
  readonly left: readonly LeftOut[];
  readonly source: Source;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

const keys: Readonly<Record<keyof RoundOptions, true>> = /* @__PURE__ */ Object.freeze({
  on: true,
  load: true,
  frequencies: true,
});

const NOTES: readonly string[] = /* @__PURE__ */ Object.freeze([
  "before: record the settings as found, and under the site's procedure disconnect the device from the trip of the running machine; while it is disconnected the machine has no vibration trip from it",
  "levels lie between alarm and trip, the tolerance away from both (5 % where the list has none), so that the alarm may be given; where that leaves no room, in the middle; with one setpoint alone at 70 to 100 % of the trip, or 100 to 125 % of the alarm",
  "one level at one frequency proves the reading there; trip, reset, delay, latch and failure are proven by the steps of the sheet",
  "after: put every setting back, reconnect the device to the trip, lift every bypass and record it",
]);

/** How far apart two frequencies are, in octaves. */
function octaves(one: number, other: number): number {
  return Math.abs(Math.log2(one / other));
}

/** Refuses a frequency that no shaker runs at. */
function requireShaken(one: Frequency, place: ErrorPlace): void {
  const hertz = inPlace(place, () => hertzOf(one));
  if (hertz > 0.001 && hertz < 1e6) return;
  throw new VeladisError("out-of-range", {
    expected: "a frequency that a shaker runs at, from 0.001 Hz to 1 MHz",
    received: `${hertz} Hz`,
    ...place,
  });
}

/** The frequencies that a round may use, in hertz, the nearest to the reference first. */
function frequenciesOf(given: readonly Frequency[] | undefined, shaker: Shaker, machines: readonly PlantMachine[]) {
  const [lowest, highest] = [hertzOf(shaker.lowest), hertzOf(shaker.highest)];
  const reference = hertzOf(REFERENCE);
  const told = given === undefined ? undefined : requireList(given, "a list of frequencies", { option: "frequencies" });
  for (const [index, one] of (told ?? []).entries()) requireShaken(one, { option: "frequencies", index });
  const own = told ?? shaker.frequencies ?? (lowest === highest ? [shaker.lowest] : undefined);
  const middles = machines.flatMap((machine) => {
    const middle = inPlace({ parameter: "plant" }, () => middleOfBand(machine));
    return middle === undefined ? [] : [Number(middle.toPrecision(2))];
  });
  const all = own?.map((one) => hertzOf(one)) ?? [reference, ...middles];
  return [...new Set(all)].sort((a, b) => octaves(a, reference) - octaves(b, reference) || a - b);
}

function settingOf(hertz: number, { level, windows }: ChosenLevel, on: string): BenchSetting {
  const known: Amplitude = Object.freeze({ ...amplitudeIn(SHAKER_TYPE, level), hertz });
  return Object.freeze({
    hertz,
    level: known,
    displacement: convertAmplitude(known, "um pp"),
    acceleration: convertAmplitude(known, "g pk"),
    devices: Object.freeze(
      windows.map(({ machine }) => {
        const { tag, line, band } = machine;
        const shows = convertAmplitude(known, shownType(machine) as string);
        return Object.freeze({
          number: sheetNumber({ tag, on }),
          tag,
          line,
          known: shows,
          isBandKnown: band !== undefined,
        });
      }),
    ),
  });
}

function leftOut({ tag, line }: PlantMachine, reason: NoWindow | undefined): LeftOut {
  const why = reason?.why ?? "the shaker runs at none of the frequencies, or does not carry the mass";
  return Object.freeze({
    tag,
    line,
    why,
    mend: reason?.mend ?? "take another shaker, or inject a signal by a plan of its own",
  });
}

/**
 * The checks that are due as a round on the bench: few settings of the shaker, each for as many devices as it suits.
 *
 * A setting suits a device where its frequency lies in the flat part of the band and its level between alarm and trip, the
 * tolerance away from both, within the loop and the reach of the shaker. Chosen is each time the setting that serves most of those that are left; that
 * is seldom the smallest number of settings, and never far from it.
 *
 * @param due - of {@link dueChecks}; those that are due are taken
 * @throws {@link VeladisError} `missing-option`, `unknown-option`, and as {@link dueChecks} and {@link shakerReach}
 * @example
 * ```ts
 * import { benchRound, dueChecks, parsePlant } from "veladis/plant";
 *
 * const heading = ["tag", "kind", "alarm", "trip", "band"];
 * const rows = [
 *   ["LU-01", "fan", "5.6 mm/s rms", "9 mm/s rms", "10 Hz to 1000 Hz"],
 *   ["BP-L", "pump", "0.2 in/s pk", "0.35 in/s pk", "10 Hz to 1000 Hz"],
 * ];
 * const plant = parsePlant({ heading, rows });
 * const on = "2026-12-01";
 * const { settings } = benchRound(plant, dueChecks(plant, { on }), { lowest: "8 Hz", highest: "3 kHz" }, { on });
 * settings.map(({ level, devices }) => [level.value, level.hertz, devices.map(({ number }) => number)]);
 * // => [[5.9, 79.4, ["LU-01-2026-12-01", "BP-L-2026-12-01"]]]
 * settings[0]?.devices[1]?.known.value.toFixed(3); // => "0.328"
 * ```
 */
export function benchRound(plant: Plant, due: readonly DueCheck[], shaker: Shaker, options: RoundOptions): BenchRound {
  return withParameters({ plant, due, shaker, options }, () => {
    const {
      on,
      load = "0 kg",
      frequencies,
    } = requireKnownOptions(options, keys, {
      what: "an option of a round on the bench",
      form: 'options such as { on: "2026-12-01" }',
      place: { parameter: "options" },
    });
    requireDay(requireGiven(on, "the day of the round", { option: "on" }), "the day of the round", { option: "on" });
    requireGiven(shaker, "a shaker with its limits", { parameter: "shaker" });
    const lines = new Set(requireDue(due).flatMap((one) => (one.isDue ? [one.line] : [])));
    const machines = requirePlant(plant).machines.filter(({ line }) => lines.has(line));
    const candidates = frequenciesOf(frequencies, shaker, machines).flatMap((hertz) => {
      const one = benchCandidate(hertz, machines, shaker, load);
      return one === undefined ? [] : [one];
    });
    const remaining = new Set(machines);
    const settings: BenchSetting[] = [];
    while (remaining.size > 0) {
      let [best, hertz]: [ChosenLevel | undefined, number] = [undefined, 0];
      for (const one of candidates) {
        const level = inPlace({ parameter: "plant" }, () => one.best(remaining));
        if ((level?.windows.length ?? 0) > (best?.windows.length ?? 0)) [best, hertz] = [level, one.hertz];
      }
      if (best === undefined) break;
      const [chosen, at] = [best, hertz];
      settings.push(inPlace({ parameter: "plant" }, () => settingOf(at, chosen, on)));
      for (const { machine } of best.windows) remaining.delete(machine);
    }
    return Object.freeze({
      settings: Object.freeze(settings),
      left: Object.freeze([...remaining].map((machine) => leftOut(machine, candidates[0]?.refusal(machine)))),
      source: COMMON_PRACTICE,
      notes: NOTES,
      cautions,
    });
  });
}
