import { convertAmplitude, parseAmplitude } from "../amplitude/index";
import {
  finite,
  finiteSamples,
  given,
  held,
  knownKeys,
  nonNegative,
  positive,
  shown,
  VeladisError,
} from "../core/index";

/** A half-sine shock: acceleration that rises and falls once. */
export interface HalfSine {
  /** Its peak, e.g. `"20 g pk"`. */
  readonly peak: string;
  /** Its length in milliseconds. */
  readonly milliseconds: number;
}

/** What {@link shockOnRunning} is told. */
export interface ShockOnRunningOptions {
  /** The running vibration, one sine: `"2.6 mm/s rms at 1485 r/min"`. */
  readonly running: string;
  readonly shock: HalfSine & {
    /** When it begins, in seconds. */
    readonly at: number;
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
  at: true,
});

/** Samples of the longest waveform: more than a page or a device ever needs. */
const MOST = 1e8;

/** Value of a half-sine of peak 1 at a time. */
export function halfSine(time: number, seconds: number): number {
  return time > 0 && time < seconds ? Math.sin((Math.PI * time) / seconds) : 0;
}

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
 *   shock: { peak: "8 g pk", milliseconds: 10, at: 0.5 },
 *   rate: 1000,
 *   seconds: 1,
 * });
 * wave.length; // => 1000
 * wave[505]?.toFixed(4); // => "78.4532"
 * ```
 */
export function shockOnRunning(options: ShockOnRunningOptions): Float64Array {
  given(options, "options with running, shock, rate and seconds");
  const { running, phase = 0 } = knownKeys(options, keys, "an option of a shock on running vibration");
  const shock = knownKeys(
    given(options.shock, "a shock with its peak, its length and when it begins"),
    shockKeys,
    "a part of a shock",
  );
  const rate = positive(options.rate, "a sampling rate above zero, in Hz");
  const reading = parseAmplitude(running);
  const pulse = parseAmplitude(shock.peak);
  if (reading.hertz === undefined) {
    throw new VeladisError("missing-frequency", {
      expected: 'running vibration with its frequency, such as "2.6 mm/s rms at 1485 r/min"',
      received: shown(running),
    });
  }
  if (pulse.quantity !== "acceleration" || pulse.detector !== "pk") {
    throw new VeladisError("wrong-quantity", {
      expected: 'the peak of a shock as acceleration, such as "20 g pk"',
      received: shown(shock.peak),
    });
  }
  const amplitude = convertAmplitude(reading, "m/s2 pk").value;
  const peak = convertAmplitude(pulse, "m/s2 pk").value;
  const length = positive(shock.milliseconds, "a shock length above zero, in ms") / 1000;
  const at = nonNegative(shock.at, "a beginning of zero or more, in s");
  const omega = 2 * Math.PI * reading.hertz;
  const offset = finite(phase, "a phase in rad");
  const count = Math.round(positive(options.seconds, "a length of the record above zero, in s") * rate);
  if (count > MOST) {
    throw new VeladisError("out-of-range", {
      expected: "a record of at most 100 million samples",
      received: `${options.seconds} s at ${rate} Hz`,
    });
  }
  return Float64Array.from(
    { length: count },
    (_, i) => amplitude * Math.sin((omega * i) / rate + offset) + peak * halfSine(i / rate - at, length),
  );
}

/**
 * Velocity in m/s of acceleration in m/s2, as a velocity device with a second-order high-pass forms it.
 *
 * `H(s) = s / (s² + √2 ω s + ω²)`: an integrator and a Butterworth high-pass in one, by the bilinear transform. At its
 * corner a sine reads 0.707 of its velocity.
 *
 * @param acceleration - samples in m/s2
 * @param rate - samples a second
 * @param highPass - corner in hertz
 * @throws {@link VeladisError} `not-positive`
 * @example
 * ```ts
 * import { velocityOf } from "veladis/protection";
 *
 * const omega = 2 * Math.PI * 100;
 * const wave = Float64Array.from({ length: 20000 }, (_, i) => omega * Math.sin((omega * i) / 10000));
 * const last = velocityOf(wave, 10000, 10).slice(-1000);
 * Math.max(...last).toFixed(2); // => "1.00"
 * ```
 */
export function velocityOf(acceleration: ArrayLike<number>, rate: number, highPass: number): Float64Array {
  const k = 2 * positive(rate, "a sampling rate above zero, in Hz");
  const omega = k * Math.tan((2 * Math.PI * positive(highPass, "a high-pass corner above zero, in Hz")) / k);
  const a0 = k * k + Math.SQRT2 * omega * k + omega * omega;
  const a1 = (2 * (omega * omega - k * k)) / a0;
  const a2 = (k * k - Math.SQRT2 * omega * k + omega * omega) / a0;
  const b = k / a0;
  const samples = finiteSamples(given(acceleration, "a list of samples"));
  const velocity = new Float64Array(samples.length);
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let i = 0; i < velocity.length; i++) {
    const x = samples[i] as number;
    const y = b * (x - x2) - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    velocity[i] = y;
  }
  // what has once left the range of numbers never comes back
  if (velocity.length > 0) held(velocity[velocity.length - 1] as number);
  return velocity;
}
