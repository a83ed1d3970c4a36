import {
  finiteResult,
  finiteSamples,
  inPlace,
  requireGiven,
  requireKnownKeys,
  requireNonNegative,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";

/** How a device makes a level of a waveform. */
export type LevelDetector =
  /** Root of the exponentially averaged square, with this time constant in seconds. */
  | { readonly kind: "rms"; readonly averaging: number }
  /** Highest absolute value, falling off exponentially with this time constant in seconds. */
  | { readonly kind: "peak"; readonly decay: number };

/** What {@link detectedLevels} is told besides the samples. */
export interface DetectedLevelsOptions {
  /** Samples a second. */
  readonly rate: number;
  readonly detector: LevelDetector;
  /** The level before the first sample, in the unit of the samples; 0 if not given. */
  readonly initial?: number;
}

const keys: Readonly<Record<keyof DetectedLevelsOptions, true>> = /* @__PURE__ */ Object.freeze({
  rate: true,
  detector: true,
  initial: true,
});

/** The detector's time constant, checked. */
export function requireTimeConstant(detector: LevelDetector): number {
  return inPlace({ option: "detector" }, () => timeConstantOf(detector));
}

function timeConstantOf(detector: LevelDetector): number {
  if (detector?.kind === "rms") {
    requireKnownKeys(detector, { kind: true, averaging: true }, "a setting of an RMS detector");
    return requirePositive(detector.averaging, "an averaging time above zero, in s", { option: "averaging" });
  }
  if (detector?.kind === "peak") {
    requireKnownKeys(detector, { kind: true, decay: true }, "a setting of a peak detector");
    return requirePositive(detector.decay, "a decay time above zero, in s", { option: "decay" });
  }
  throw new VeladisError(detector === undefined ? "missing-option" : "unknown-option", {
    expected: 'a detector such as { kind: "rms", averaging: 1 } or { kind: "peak", decay: 2 }',
    received: shown((detector as { kind?: unknown } | undefined)?.kind),
    ...(typeof detector === "object" && { option: "kind" }),
    allowed: ["rms", "peak"],
  });
}

/**
 * The level a device's detector shows at each sample of a waveform.
 *
 * RMS: an exponential average of the square, `y += (x² - y) (1 - exp(-1 / (rate τ)))`, and its root; a step in level is
 * shown to 63 % in the square after one time constant. Peak: the greater of `|x|` and the last peak times
 * `exp(-1 / (rate τ))`.
 *
 * @param samples - the waveform about its mean, in any one unit
 * @returns a level for each sample, in the unit of the samples
 * @throws {@link VeladisError} `not-positive`, `negative`, `not-a-number`, `not-finite`
 * @example
 * ```ts
 * import { detectedLevels } from "veladis/protection";
 *
 * const step = new Float64Array(2000).fill(1);
 * const rms = detectedLevels(step, { rate: 1000, detector: { kind: "rms", averaging: 1 } });
 * rms[999]?.toFixed(3); // => "0.795"
 * const held = detectedLevels([0, 5, 0, 0], { rate: 1, detector: { kind: "peak", decay: 2 } });
 * held[3]?.toFixed(3); // => "1.839"
 * ```
 */
export function detectedLevels(samples: ArrayLike<number>, options: DetectedLevelsOptions): Float64Array {
  return withParameters({ samples, options }, () => {
    const {
      rate,
      detector,
      initial = 0,
    } = requireKnownKeys(
      requireGiven(options, "options with rate and detector", { parameter: "options" }),
      keys,
      "an option of detected levels",
      { parameter: "options" },
    );
    const checked = finiteSamples(requireGiven(samples, "a list of samples", { parameter: "samples" }));
    const left = Math.exp(
      -1 /
        (requirePositive(rate, "a sampling rate above zero, in Hz", { option: "rate" }) *
          requireTimeConstant(detector)),
    );
    const levels = new Float64Array(checked.length);
    const start = requireNonNegative(initial, "a level of zero or more before the first sample", { option: "initial" });
    if (detector.kind === "rms") {
      let square = start * start;
      for (let i = 0; i < levels.length; i++) {
        const x = checked[i] as number;
        square = x * x + (square - x * x) * left;
        levels[i] = Math.sqrt(square);
      }
    } else {
      let peak = start;
      for (let i = 0; i < levels.length; i++) {
        peak = Math.max(Math.abs(checked[i] as number), peak * left);
        levels[i] = peak;
      }
    }
    // what has once left the range of numbers never comes back
    if (levels.length > 0) finiteResult(levels[levels.length - 1] as number);
    return levels;
  });
}
