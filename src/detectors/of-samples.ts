type Samples = ArrayLike<number>;

/** Largest distance of a sample from zero. */
export function peakOf(samples: Samples): number {
  let most = 0;
  for (let i = 0; i < samples.length; i++) most = Math.max(most, Math.abs(samples[i] as number));
  return most;
}

/** Highest sample less the lowest. */
export function peakToPeakOf(samples: Samples): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < samples.length; i++) {
    low = Math.min(low, samples[i] as number);
    high = Math.max(high, samples[i] as number);
  }
  return high - low;
}

/** Root of the mean square. */
export function rmsOf(samples: Samples): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += (samples[i] as number) ** 2;
  return Math.sqrt(sum / samples.length);
}

/** Mean of the rectified samples. */
export function averageOf(samples: Samples): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += Math.abs(samples[i] as number);
  return sum / samples.length;
}
