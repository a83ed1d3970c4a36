import { currentLoop, sensor } from "../amplitude/index";
import { inPlace } from "../core/index";
import { loopUse } from "../device/index";
import { type Amplitude, isClipped, type Made, significant } from "../reading/index";
import type { BenchSettings } from "./bench-settings";
import type { BenchSignal } from "./bench-step";

/** A signal, and what was assumed on the way to it. */
interface SignalAtLevel extends Required<Pick<Made, "assumed">> {
  readonly signal: BenchSignal;
  /** Whether it is one that the loop carries. */
  readonly carried: boolean;
}

/** A signal in words, in four digits: `11.20 mA`, `35.06 mV rms`; of a level that its loop does not carry, that. */
export function signalText({ value, type, by, beyond = false }: BenchSignal): string {
  return beyond ? `beyond ${by}: no current` : `${significant(value, 4)} ${type}`;
}

/** The current of a loop at a level; one that it does not carry ends at what it carries. */
export function currentAt(level: Amplitude, range: string): SignalAtLevel {
  return inPlace({ option: "loop" }, () => {
    const { milliamperes, state, assumed } = currentLoop(range).current(level);
    const beyond = isClipped(state);
    const signal = { value: milliamperes, type: "mA", by: range, ...(beyond && { beyond }) } as const;
    return { signal, carried: !beyond, assumed };
  });
}

/** The voltage of a sensor at a level, in millivolts by the detector of the level. */
export function voltageAt(level: Amplitude, sensitivity: string): SignalAtLevel {
  return inPlace({ option: "sensor" }, () => {
    const type = `mV ${level.detector}` as const;
    const { value, assumed } = sensor(sensitivity).voltage(level, type);
    return { signal: { value, type, by: sensitivity }, carried: true, assumed: assumed ?? [] };
  });
}

/** What loop and sensor give at a level, as far as they are told. */
export function signalsAt(level: Amplitude, { loop, sensor: sensitivity }: BenchSettings): readonly SignalAtLevel[] {
  return [
    ...(loop === undefined ? [] : [currentAt(level, loop)]),
    ...(sensitivity === undefined ? [] : [voltageAt(level, sensitivity)]),
  ];
}

/** What is to be known of a threshold in the range of the loop. */
export function loopNotes(threshold: Amplitude, { loop }: BenchSettings): readonly string[] {
  if (loop === undefined) return [];
  const { remark } = inPlace({ option: "loop" }, () => loopUse(threshold, loop));
  return remark === null ? [] : [remark];
}
