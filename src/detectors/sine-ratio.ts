import { type Detector, detectors } from "./catalogue";

/**
 * What the one detector reads from a sine, over what the other does.
 *
 * @param crestFactor - peak over RMS of the waveform; the root of two of a sine if not given
 */
export function sineRatio(from: Detector, to: Detector, crestFactor: number = Math.SQRT2): number {
  const [a, b] = [detectors[from], detectors[to]];
  return ((b.num * a.den) / (b.den * a.num)) * Math.PI ** (b.pi - a.pi) * crestFactor ** (b.rootTwo - a.rootTwo);
}
