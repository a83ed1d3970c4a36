import { type Amplitude, historyOf, ownHistory } from "../reading/index";
import { isAmplitude, isList, type Value } from "./value";

/** A reading with a step that says how it was given, by which it is known again wherever it comes in. */
export function withHistory(reading: Amplitude): Amplitude {
  if (reading.history !== undefined) return reading;
  return Object.freeze({ ...reading, history: ownHistory([...historyOf(reading)]) });
}

/** A value to keep, each reading in it with its history. */
export function kept(value: Value): Value {
  if (isList(value)) return value.map(kept);
  return isAmplitude(value) ? withHistory(value) : value;
}
