import { isSignal, type SignalSource, signalReading } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import { type Amplitude, isClipped, parseAmplitude } from "../../reading/index";
import { overRangeOr } from "../input/over-range";

/** The reading of a cell that says one, or the signal of one; of one beyond the range of its loop it is no more than its end. */
export function readingIn(cell: string, source: SignalSource): Amplitude {
  const isOfSignal = isSignal(cell);
  const reading = isOfSignal ? signalReading(cell, source) : parseAmplitude(cell);
  if (!isClipped(reading.state)) return reading;
  throw new VeladisError("sensor-fault", {
    expected: `a ${isOfSignal ? "signal" : "reading"} within the range of its loop`,
    received: `${shown(cell)}, ${reading.state}`,
  });
}

/** What a reader makes of a cell; one that is refused and says over range is refused as beyond the range. */
export function readCell<T>(cell: string, read: (cell: string) => T): T {
  try {
    return read(cell);
  } catch (error) {
    throw overRangeOr(error, cell);
  }
}
