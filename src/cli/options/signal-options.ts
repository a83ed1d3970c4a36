import { currentLoop, isSignal, type SignalSource, sensor, signalReading, wayOfSignal } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import type { Amplitude } from "../../reading/index";
import type { OptionRow, Values } from "./option-row";
import { waysOfPoints } from "./points-read";

/** The options that turn a signal into a vibration, for readings in volts, milliamperes or per cent. */
export const signalOptions = {
  sensor: {
    argument: "<sensitivity>",
    help: "sensor of readings in volts, e.g. of 98 mV pk",
    example: '"100 mV/g"',
  },
  loop: {
    argument: "<range>",
    help: "range of the 4-20 mA loop of readings in mA or per cent, e.g. of 12 mA",
    example: '"0 to 20 mm/s rms"',
  },
} as const satisfies { readonly [name: string]: OptionRow };

/** What the options say of the way from a signal to a vibration. */
export function signalSource({ sensor: sensitivity, loop }: Values<typeof signalOptions>): SignalSource {
  // one that is none is refused also where no reading asks for it
  if (sensitivity !== undefined) sensor(sensitivity);
  if (loop !== undefined) currentLoop(loop);
  return { ...(sensitivity !== undefined && { sensor: sensitivity }), ...(loop !== undefined && { loop }) };
}

/** The vibration that a signal says; any other reading is left as it was written. */
export function vibrationOf(written: string, source: SignalSource): string | Amplitude {
  return isSignal(written) ? signalReading(written, source) : written;
}

/**
 * Refuses a sensor or a loop beside readings none of which is a signal, since it would play no part.
 *
 * @throws {@link VeladisError} `unknown-option`
 */
export function requireSignal(source: SignalSource, ...written: readonly (string | undefined)[]): void {
  const ways = written.flatMap((text) => (text === undefined ? [] : [wayOfSignal(text), ...waysOfPoints(text)]));
  const option = Object.keys(source).find((one) => !ways.includes(one as keyof SignalSource));
  if (option === undefined) return;
  throw new VeladisError("unknown-option", {
    expected: `a reading in ${option === "sensor" ? "volts" : "mA or per cent"} for --${option}`,
    received: written.flatMap((text) => (text === undefined ? [] : [shown(text)])).join(" and "),
    option,
  });
}
