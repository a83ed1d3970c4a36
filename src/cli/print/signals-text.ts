import { currentLoop, formatVoltage, type SignalSource, sensor } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { type Amplitude, isClipped, significant } from "../../reading/index";
import { labelled } from "./labelled";

/** The signal at a level: by the loop or by the sensor, in words; why there is none where a frequency is missing. */
function signalText(
  setpoint: Amplitude,
  { sensor: sensitivity, loop }: SignalSource,
  hertz: number | undefined,
): string[] {
  // a level that is set: how the baseline came, and the state of its loop, say nothing of it
  const { value, unit, detector } = setpoint;
  const level = `${value} ${unit} ${detector}`;
  const at = hertz === undefined ? {} : { at: { hertz } };
  const said = (word: () => string): string => {
    try {
      return word();
    } catch (error) {
      if (error instanceof VeladisError && error.code === "missing-frequency")
        return "a voltage needs the running speed";
      throw error;
    }
  };
  return [
    ...(loop === undefined
      ? []
      : [
          said(() => {
            const { current, percent } = currentLoop(loop);
            const { milliamperes, state } = current(level, at);
            const share = `${significant(percent(milliamperes), 4)} %`;
            return isClipped(state)
              ? `beyond ${loop}: no current`
              : `${significant(milliamperes, 4)} mA, ${share} of ${loop}`;
          }),
        ]),
    ...(sensitivity === undefined
      ? []
      : [
          said(() => `${formatVoltage(sensor(sensitivity).voltage(level, `mV ${detector}`, at), 4)} by ${sensitivity}`),
        ]),
  ];
}

/** What loop and sensor give at the setpoints, for whoever sets or proves them by a signal. */
export function signalsText(
  levels: readonly (readonly [name: string, level: Amplitude])[],
  source: SignalSource,
  hertz: number | undefined,
): string {
  const all = levels.flatMap(([name, level]) => {
    const texts = signalText(level, source, hertz);
    return texts.length === 0 ? [] : [`${name} ${texts.join("; ")}`];
  });
  return labelled("as a signal", all, 13);
}
