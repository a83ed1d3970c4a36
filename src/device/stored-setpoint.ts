import {
  type ConvertedAmplitude,
  convertAmplitude,
  derivedAmplitude,
  leastAmplitude,
  linearTypeOf,
  notedAmplitude,
} from "../amplitude/index";
import {
  finiteResult,
  inPlace,
  requireGiven,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import type { Frequency } from "../frequency/index";
import {
  type Amplitude,
  type Assumption,
  amplitudeOf,
  exactAmplitude,
  format,
  type Step,
  union,
  wholeSteps,
} from "../reading/index";
import { type Device, deviceType, requireDevice, requireRounding, type roundings } from "./device";

/** A setpoint as it was asked for and as the device holds it. */
export interface StoredSetpoint {
  /** In the device's unit. */
  readonly asked: Amplitude;
  readonly stored: Amplitude;
  /** Stored less asked, in the device's unit. */
  readonly difference: number;
  /** The same in percent of asked. */
  readonly percent: number;
  /** Whether the device acts as asked, at a lower level (`earlier`) or only at a higher one (`later`). */
  readonly acts: "as asked" | "earlier" | "later";
  /** The effect in words. */
  readonly effect: string;
  /** What was assumed on the whole way to what is stored, and in holding it against the range of the device. */
  readonly assumed: readonly Assumption[];
  /** The steps that led to what is stored. */
  readonly history: readonly Step[];
}

function effectOf(asked: Amplitude, stored: Amplitude, percent: number, { step, highest }: Device): string {
  if (step === undefined && highest === undefined) return "no steps of the device were given";
  if (percent === 0) return "the device stores what was asked";
  const size = Math.abs(percent) < 0.05 ? "less than 0.1 %" : `${Math.abs(percent).toFixed(1)} %`;
  return percent < 0
    ? `the device stores ${format(stored)} for ${format(asked)}: it acts at a level ${size} lower than asked`
    : `the device stores ${format(stored)} for ${format(asked)}: levels up to ${size} above what was asked do not act`;
}

/**
 * A setpoint as a device stores it: on its steps, within its range.
 *
 * @param asked - what was entered
 * @param device - its steps, range and rounding
 * @param at - frequency, where the device shows another quantity
 * @param rounds - a rounding in place of the device's own, for choosing what to enter
 * @throws {@link VeladisError} `out-of-range` for a setpoint below the lowest the device can hold, and as
 *   {@link convertAmplitude}
 * @example
 * ```ts
 * import { explain } from "veladis/explain";
 * import { storedSetpoint } from "veladis/protection";
 *
 * const setpoint = storedSetpoint("5.65 mm/s rms", { step: "0.2 mm/s rms" });
 * setpoint.stored.value; // => 5.6
 * setpoint.percent.toFixed(1); // => "-0.9"
 * setpoint.acts; // => "earlier"
 * storedSetpoint("5.65 mm/s rms", { step: "0.2 mm/s rms", rounds: "up" }).stored.value; // => 5.8
 * explain(setpoint).text.split("\n").at(-1);
 * // => "5.65 mm/s rms to the nearest whole number of steps of 0.2 = 5.6 mm/s rms  (steps of the device)"
 * ```
 */
export function storedSetpoint(
  asked: string | Amplitude,
  device: Device,
  at?: Frequency,
  rounds?: (typeof roundings)[number],
): StoredSetpoint {
  return withParameters({ at, rounds, device, asked }, () => {
    const setpoint = inPlace({ parameter: "asked" }, () =>
      exactAmplitude(requireGiven(asked, "a setpoint with its unit")),
    );
    return setpointInDevice(setpoint, device, at, rounds);
  });
}

/** As {@link storedSetpoint}, also of a setpoint with an uncertainty, for a caller that names it. */
export function setpointInDevice(
  asked: Amplitude,
  device: Device,
  at?: Frequency,
  rounds?: (typeof roundings)[number],
): StoredSetpoint {
  inPlace({ parameter: "device" }, () => requireDevice(device));
  const reading = notedAmplitude(amplitudeOf(asked), "asked for");
  const type = deviceType(device, linearTypeOf(reading));
  const inDevice = (value: string | Amplitude): ConvertedAmplitude =>
    convertAmplitude(requireGiven(value, "a level with its unit"), type, at === undefined ? {} : { at });
  const ofDevice = (option: "step" | "highest" | "lowest"): ConvertedAmplitude | undefined =>
    device[option] === undefined
      ? undefined
      : inPlace({ parameter: "device", option }, () => inDevice(device[option] as string));
  const wanted = inDevice(reading);
  requirePositive(wanted.value, "a setpoint above zero", { parameter: "asked" });
  const rounding = requireRounding(rounds ?? device.rounds ?? "nearest");
  const steps = ofDevice("step");
  const step = steps && requirePositive(steps.value, "a step above zero", { parameter: "device", option: "step" });
  const highest = ofDevice("highest");
  const lowest = ofDevice("lowest");
  const onStep =
    step === undefined
      ? wanted
      : derivedAmplitude([wanted], wholeSteps(wanted.value, step, rounding), {
          ...({ does: "round", by: step, rounds: rounding } as const),
          note: "steps of the device",
        });
  const stored =
    highest === undefined || onStep.value <= highest.value
      ? onStep
      : leastAmplitude([onStep, highest], "highest of the device");
  if (stored.value < (lowest?.value ?? 0) * (1 - 1e-9) || stored.value === 0) {
    throw new VeladisError("out-of-range", {
      expected: `a setpoint the device can hold, ${device.lowest ?? device.step} or more`,
      received: shown(format(reading)),
      parameter: "asked",
    });
  }
  const isAsAsked = Math.abs(stored.value - wanted.value) <= 1e-9 * wanted.value;
  const difference = isAsAsked ? 0 : stored.value - wanted.value;
  const percent = finiteResult((100 * difference) / wanted.value);
  return Object.freeze({
    asked: wanted,
    stored,
    difference,
    percent,
    acts: isAsAsked ? "as asked" : difference < 0 ? "earlier" : "later",
    effect: effectOf(wanted, stored, percent, device),
    assumed: union(union(stored.assumed, highest?.assumed), lowest?.assumed),
    history: stored.history as readonly Step[],
  });
}
