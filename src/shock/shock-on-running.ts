import { convertAmplitude } from "../amplitude/index";
import {
  inPlace,
  requireFinite,
  requireGiven,
  requireKnownKeys,
  requireNonNegative,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { parseAmplitude } from "../reading/index";
import { type HalfSine, halfSine } from "./half-sine";

/** What {@link shockOnRunning} is told. */
export interface ShockOnRunningOptions {
  /** The running vibration, one sine: `"2.6 mm/s rms at 1485 r/min"`. */
  readonly running: string;
  readonly shock: HalfSine & {
    /** When it begins, in seconds. */
    readonly time: number;
  };
  /** Samples a second. */
  readonly rate: number;
  /** Length of the waveform in seconds. */
  readonly seconds: number;
  /** Phase of the running vibration at time 0, in radians; 0 if not given. */
  readonly phase?: number;
}

const keys: Readonly<Record<keyof ShockOnRunningOptions, true>> = /* @__PURE__ */ Object.freeze({
  running: true,
  shock: true,
  rate: true,
  seconds: true,
  phase: true,
});

const shockKeys: Readonly<Record<keyof ShockOnRunningOptions["shock"], true>> = /* @__PURE__ */ Object.freeze({
  peak: true,
  milliseconds: true,
  time: true,
});

/** Samples of the longest waveform: more than a page or a device ever needs. */
const MOST = 1e8;

/**
 * A half-sine shock on top of running vibration, as acceleration in m/s2.
 *
 * @returns one sample for each `1 / rate` seconds from time 0
 * @throws {@link VeladisError} `not-positive`, `missing-frequency` for a running vibration without one,
 *   `wrong-quantity` for a shock that is no acceleration
 * @example
 * ```ts
 * import { shockOnRunning } from "veladis/protection";
 *
 * const wave = shockOnRunning({
 *   running: "0 mm/s rms at 25 Hz",
 *   shock: { peak: "8 g pk", milliseconds: 10, time: 0.5 },
 *   rate: 1000,
 *   seconds: 1,
 * });
 * wave.length; // => 1000
 * wave[505]?.toFixed(4); // => "78.4532"
 * ```
 */
export function shockOnRunning(options: ShockOnRunningOptions): Float64Array {
  return withParameters({ options }, () => {
    requireGiven(options, "options with running, shock, rate and seconds", { parameter: "options" });
    const { running, phase = 0 } = requireKnownKeys(options, keys, "an option of a shock on running vibration");
    const shock = requireKnownKeys(
      requireGiven(options.shock, "a shock with its peak, its length and when it begins", { option: "shock" }),
      shockKeys,
      "a part of a shock",
    );
    const rate = requirePositive(options.rate, "a sampling rate above zero, in Hz", { option: "rate" });
    const reading = inPlace({ option: "running" }, () => parseAmplitude(running));
    const pulse = inPlace({ option: "peak" }, () => parseAmplitude(shock.peak));
    if (reading.hertz === undefined) {
      throw new VeladisError("missing-frequency", {
        expected: 'running vibration with its frequency, such as "2.6 mm/s rms at 1485 r/min"',
        received: shown(running),
        option: "running",
      });
    }
    if (pulse.quantity !== "acceleration" || pulse.detector !== "pk") {
      throw new VeladisError("wrong-quantity", {
        expected: 'the peak of a shock as acceleration, such as "20 g pk"',
        received: shown(shock.peak),
        option: "peak",
      });
    }
    const amplitude = convertAmplitude(reading, "m/s2 pk").value;
    const peak = convertAmplitude(pulse, "m/s2 pk").value;
    const length =
      requirePositive(shock.milliseconds, "a shock length above zero, in ms", { option: "milliseconds" }) / 1000;
    const time = requireNonNegative(shock.time, "a beginning of zero or more, in s", { option: "time" });
    const omega = 2 * Math.PI * reading.hertz;
    const offset = requireFinite(phase, "a phase in rad", { option: "phase" });
    const count = Math.round(
      requirePositive(options.seconds, "a length of the record above zero, in s", { option: "seconds" }) * rate,
    );
    if (count > MOST) {
      throw new VeladisError("out-of-range", {
        expected: "a record of at most 100 million samples",
        received: `${options.seconds} s at ${rate} Hz`,
        option: "seconds",
      });
    }
    return Float64Array.from(
      { length: count },
      (_, i) => amplitude * Math.sin((omega * i) / rate + offset) + peak * halfSine(i / rate - time, length),
    );
  });
}
