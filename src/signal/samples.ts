import { requireFinite, requirePositive, shown, VeladisError } from "../core/index";

/** Samples of a waveform, evenly spaced in time: any array of numbers, typed or not. */
export type Samples = ArrayLike<number>;

function refuseOffender(samples: Samples, from: number): void {
  for (let i = 0; i < samples.length; i++)
    requireFinite(samples[i] as number, `a finite sample at index ${from + i}`, {
      parameter: "samples",
      index: from + i,
    });
}

/** Sum of the samples, by four running sums so that rounding stays small and additions overlap. */
export function sumOf(x: Float64Array): number {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  const whole = x.length & ~3;
  for (let i = 0; i < whole; i += 4) {
    a += x[i] as number;
    b += x[i + 1] as number;
    c += x[i + 2] as number;
    d += x[i + 3] as number;
  }
  for (let i = whole; i < x.length; i++) a += x[i] as number;
  return a + b + (c + d);
}

/**
 * A copy of the samples as 64-bit numbers, all of them finite.
 *
 * @param from - index of the first of them in the whole signal, for the message
 * @throws {@link VeladisError} `wrong-type`, or `not-a-number` or `not-finite` with the index of the sample
 */
export function finiteSamples(samples: Samples, from = 0): Float64Array {
  const typed = ArrayBuffer.isView(samples) && !(samples instanceof DataView) && typeof samples[0] !== "bigint";
  if (!(typed || Array.isArray(samples))) {
    throw new VeladisError("wrong-type", {
      expected: "a list of samples",
      received: shown(samples),
      parameter: "samples",
    });
  }
  if (!typed) refuseOffender(samples, from);
  const copy = new Float64Array(samples);
  // a sum is finite only if every sample is; a sum beyond all numbers of finite samples is no fault of theirs
  if (typed && !Number.isFinite(sumOf(copy))) refuseOffender(samples, from);
  return copy;
}

/** The error for samples of which each is the same. */
export function deadChannel(count: number, value: number | undefined): VeladisError {
  return new VeladisError("sensor-fault", {
    expected: "a signal that vibrates",
    received: `${count} samples that are all ${value}, as of a dead or disconnected channel`,
    parameter: "samples",
  });
}

/**
 * A copy of the samples of a vibration: finite, enough of them, and not all the same.
 *
 * @throws {@link VeladisError} as {@link finiteSamples}, `missing-fact` below the least number of samples,
 *   `sensor-fault` when all are equal
 */
export function vibrationSamples(samples: Samples, least = 2): Float64Array {
  const copy = finiteSamples(samples);
  if (copy.length < least) {
    throw new VeladisError("missing-fact", {
      expected: `${least} samples or more`,
      received: copy.length === 1 ? "one sample" : `${copy.length} samples`,
      parameter: "samples",
    });
  }
  if (copy.every((value) => value === copy[0])) throw deadChannel(copy.length, copy[0]);
  return copy;
}

/**
 * The sampling rate if it is one.
 *
 * @throws {@link VeladisError} `wrong-type`, `not-a-number`, `not-finite` or `not-positive`
 */
export function requireSamplingRate(rate: number): number {
  return requirePositive(rate, "a sampling rate above zero, in Hz", { option: "rate" });
}
