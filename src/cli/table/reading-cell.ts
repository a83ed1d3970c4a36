import { isSignal, type SignalSource, signalReading } from "../../amplitude/index";
import { shown } from "../../core/index";
import { type Amplitude, parseAmplitude } from "../../reading/index";
import { overRangeOr } from "../input/over-range";
import { requireMeasured } from "../input/signal-column";

/** The reading of a cell that says one, or the signal of one; of one beyond the range of its loop it is no more than its end. */
export function readingIn(cell: string, source: SignalSource): Amplitude {
  return isSignal(cell)
    ? requireMeasured(signalReading(cell, source), shown(cell))
    : requireMeasured(parseAmplitude(cell), shown(cell), "a reading");
}

/** What a reader makes of a cell; one that is refused and says over range is refused as beyond the range. */
export function readCell<T>(cell: string, read: (cell: string) => T): T {
  try {
    return read(cell);
  } catch (error) {
    throw overRangeOr(error, cell);
  }
}
