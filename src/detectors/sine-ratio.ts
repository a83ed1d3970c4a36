import { type Detector, detectors } from "./catalogue";
import { requireRelated } from "./related";

/**
 * What the one detector reads from a sine, over what the other does.
 *
 * @param crestFactor - peak over RMS of the waveform; the root of two of a sine if not given
 * @throws {@link VeladisError} `not-a-sine` for a true peak and another detector without a crest factor
 */
export function sineRatio(from: Detector, to: Detector, crestFactor?: number): number {
  requireRelated(from, to, crestFactor);
  const [a, b] = [detectors[from], detectors[to]];
  return (
    ((b.num * a.den) / (b.den * a.num)) *
    Math.PI ** (b.pi - a.pi) *
    (crestFactor ?? Math.SQRT2) ** (b.rootTwo - a.rootTwo)
  );
}
