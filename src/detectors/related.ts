import { shown, VeladisError } from "../core/index";
import { type Detector, type DetectorEntry, detectors } from "./catalogue";

const rows: Readonly<Record<Detector, DetectorEntry>> = detectors;

/** Whether both detectors read a sine, so that its ratios relate them. */
export function areOfSine(from: Detector, to: Detector): boolean {
  return !rows[from].ofWaveform && !rows[to].ofWaveform;
}

/**
 * Refuses two detectors that no ratio of a sine relates: one that reads a waveform of any shape, such as a true peak, has
 * only its RMS value beside it, by a stated crest factor, and no other quantity.
 *
 * @throws {@link VeladisError} `not-a-sine`
 */
export function requireRelated(from: Detector, to: Detector, crestFactor: number | undefined, steps = 0): void {
  if (areOfSine(from, to)) return;
  const [a, b] = [rows[from], rows[to]];
  if (steps === 0 && (from === to || (crestFactor !== undefined && a.pi === b.pi && a.rootTwo !== b.rootTwo))) return;
  const known = a.ofWaveform ? from : to;
  throw new VeladisError("not-a-sine", {
    expected: `beside ${known} the RMS of its quantity alone, as in "3 g ${known} with crest factor 4"`,
    received: shown(`${from} to ${to}`),
  });
}
