import { type Amplitude, amplitudeIn, amplitudeOf, convertAmplitude, format, parseAmplitude } from "../amplitude/index";
import { choice, given, held as holdable, knownKeys, positive, shown, VeladisError } from "../core/index";
import type { Frequency } from "../frequency/index";
import type { Band } from "./band-response";

/** What a device does with a setting between two of its steps. */
export const roundings = /* @__PURE__ */ Object.freeze(["down", "nearest", "up"] as const);

/** How a device stores a setpoint, from its data sheet. */
export interface Device {
  /** Smallest step of a setpoint, e.g. `"0.2 mm/s rms"`; its unit and detector are the device's. */
  readonly step?: string;
  /** Lowest setpoint it holds, with its unit. */
  readonly lowest?: string;
  /** Highest setpoint it holds, with its unit. */
  readonly highest?: string;
  /** What it does with a setting between two steps; `nearest` if not given. */
  readonly rounds?: (typeof roundings)[number];
  /** Band in which it measures; a -3 dB band reads 0.707 at its edges. */
  readonly band?: Pick<Band, "lowest" | "highest">;
}

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
}

const keys: Readonly<Record<keyof Device, true>> = /* @__PURE__ */ Object.freeze({
  step: true,
  lowest: true,
  highest: true,
  rounds: true,
  band: true,
});

const ROUNDING = "what the device does between two steps";

/** The device itself if it is one, without a key that no device has. */
export function checkedDevice(device: Device): Device {
  given(device, 'a device such as { step: "0.1 mm/s rms" }; {} where nothing is known of it');
  if (device.band !== undefined) given(device.band, 'a band such as { lowest: "10 Hz", highest: "1 kHz" }');
  if (device.rounds !== undefined) choice(device.rounds, roundings, ROUNDING);
  return knownKeys(device, keys, "a fact of a device");
}

/** The device's own reading type: that of its step or of an end of its range; else the one given. */
export function deviceType({ step, highest, lowest }: Device, otherwise: string): string {
  const own = step ?? highest ?? lowest;
  if (own === undefined) return otherwise;
  const { unit, detector } = parseAmplitude(own);
  return `${unit} ${detector}`;
}

/** A value on a step: division noise of 1e-9 does not count as a step. */
function onStep(value: number, step: number, rounds: (typeof roundings)[number]): number {
  const steps = value / step;
  const near = Math.round(steps);
  const count =
    Math.abs(steps - near) <= 1e-9 * Math.max(1, Math.abs(steps))
      ? near
      : rounds === "down"
        ? Math.floor(steps)
        : rounds === "up"
          ? Math.ceil(steps)
          : near;
  return Number((count * step).toPrecision(12));
}

function effectOf(asked: Amplitude, stored: Amplitude, percent: number, { step, highest }: Device): string {
  if (step === undefined && highest === undefined) return "no steps of the device were given";
  if (percent === 0) return "the device stores what was asked";
  const size = `${Math.abs(percent).toFixed(1)} %`;
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
 * import { storedSetpoint } from "veladis/protection";
 *
 * const { stored, percent, acts } = storedSetpoint("5.65 mm/s rms", { step: "0.2 mm/s rms" });
 * stored.value; // => 5.6
 * percent.toFixed(1); // => "-0.9"
 * acts; // => "earlier"
 * storedSetpoint("5.65 mm/s rms", { step: "0.2 mm/s rms", rounds: "up" }).stored.value; // => 5.8
 * ```
 */
export function storedSetpoint(
  asked: string | Amplitude,
  device: Device,
  at?: Frequency,
  rounds?: (typeof roundings)[number],
): StoredSetpoint {
  checkedDevice(device);
  const reading = amplitudeOf(given(asked, "a setpoint with its unit"));
  const type = deviceType(device, `${reading.unit} ${reading.detector}`);
  const inDevice = (value: string | Amplitude) =>
    convertAmplitude(given(value, "a level with its unit"), type, at === undefined ? {} : { at }).value;
  const value = inDevice(reading);
  positive(value, "a setpoint above zero");
  const rounding = choice(rounds ?? device.rounds ?? "nearest", roundings, ROUNDING);
  const step = device.step === undefined ? undefined : positive(inDevice(device.step), "a step above zero");
  const highest = device.highest === undefined ? Number.POSITIVE_INFINITY : inDevice(device.highest);
  const lowest = device.lowest === undefined ? 0 : inDevice(device.lowest);
  const held = Math.min(step === undefined ? value : onStep(value, step, rounding), highest);
  if (held < lowest * (1 - 1e-9) || held === 0) {
    throw new VeladisError("out-of-range", {
      expected: `a setpoint the device can hold, ${device.lowest ?? device.step} or more`,
      received: shown(format(reading)),
    });
  }
  const hertz = reading.hertz;
  const difference = Math.abs(held - value) <= 1e-9 * value ? 0 : held - value;
  const askedHere = amplitudeIn(type, value, hertz);
  const stored = amplitudeIn(type, held, hertz);
  const percent = holdable((100 * difference) / value);
  return Object.freeze({
    asked: askedHere,
    stored,
    difference,
    percent,
    acts: difference === 0 ? "as asked" : difference < 0 ? "earlier" : "later",
    effect: effectOf(askedHere, stored, percent, device),
  });
}
