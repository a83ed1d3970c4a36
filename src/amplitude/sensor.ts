import {
  finiteResult,
  inPlace,
  parseNumeral,
  requirePositive,
  requireText,
  shown,
  splitNumeral,
  VeladisError,
  withParameters,
} from "../core/index";
import {
  type Amplitude,
  type Assumption,
  amplitudeIn,
  historyTo,
  type Made,
  madeOf,
  type ReadingTypeText,
  union,
  withStep,
} from "../reading/index";
import { type UnitSymbol, unitSymbol, units } from "../units/index";
import { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";
import type { ConvertOptions } from "./convert-options";
import {
  checkedVoltage,
  parseVoltage,
  type Voltage,
  type VoltageReading,
  type VoltageType,
  voltageIn,
  voltageSymbol,
  voltageType,
} from "./signal-voltage";

/** A sensor with a voltage output, read in both directions. */
export interface Sensor {
  /** The unit of vibration that the sensitivity is stated in. */
  readonly unit: UnitSymbol;
  /**
   * The sensitivity in another pair of units of the same quantity, e.g. `"V/mm"`.
   *
   * @throws {@link VeladisError} `syntax`, `unknown-unit`, `wrong-quantity`
   */
  sensitivity(per: string): number;
  /**
   * The voltage for a reading; across quantities the reading or the options need a frequency.
   *
   * @throws {@link VeladisError} as {@link convertAmplitude}
   */
  voltage(reading: string | Amplitude, as: VoltageType, options?: ConvertOptions): VoltageReading;
  /**
   * The reading for a voltage; across quantities the options need a frequency.
   *
   * @throws {@link VeladisError} as {@link convertAmplitude}
   */
  reading(voltage: string | VoltageReading, as: ReadingTypeText, options?: ConvertOptions): ConvertedAmplitude;
}

const FORM = 'a sensitivity such as "100 mV/g" or "20 mV/(mm/s)"';
const PER = /^(\S+?)\s*(?:\/|\sper\s)\s*(?:\((.+)\)|(.+))$/;

/** The two units of a sensitivity, such as those of `"mV/g"`. */
function sensitivityUnits(written: string): { voltage: Voltage; unit: UnitSymbol } {
  const found = typeof written === "string" && written.length <= 80 && PER.exec(written.trim());
  if (!found) {
    throw new VeladisError(typeof written === "string" ? "syntax" : "wrong-type", {
      expected: FORM,
      received: shown(written),
    });
  }
  const [, voltage, bracketed, bare] = found;
  return { voltage: voltageSymbol(voltage as string), unit: unitSymbol((bracketed ?? bare) as string) };
}

/**
 * A sensor with a voltage output: accelerometer, velocity sensor or proximity probe.
 *
 * @param sensitivity - voltage per unit of vibration, peak for peak or RMS for RMS: `"100 mV/g"`,
 *   `"10.2 mV/(m/s2)"`, `"500 mV/(in/s)"`, `"20 mV/(mm/s)"`, `"200 mV/mil"`, `"7.87 V/mm"`
 * @returns the frozen sensor
 * @throws {@link VeladisError} `syntax`, `not-positive`, `unknown-unit`
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { sensor } from "veladis/sensor";
 *
 * const accelerometer = sensor("100 mV/g");
 * accelerometer.voltage("1 g pk", "mV rms").value.toFixed(2); // => "70.71"
 * format(accelerometer.reading("70.71 mV rms", "g pk")); // => "1.00 g pk"
 * format(accelerometer.reading("10 mV rms", "mm/s rms", { at: "1500 r/min" })); // => "6.24 mm/s rms"
 * sensor("200 mV/mil").sensitivity("V/mm").toFixed(3); // => "7.874"
 * ```
 */
export function sensor(sensitivity: string): Sensor {
  return withParameters({ sensitivity }, () => {
    const written = requireText(sensitivity, FORM, { parameter: "sensitivity" }).trim();
    const [number, rest] = splitNumeral(written);
    if (number === "" || rest === "" || written.length > 80) {
      throw new VeladisError("syntax", { expected: FORM, received: shown(sensitivity), parameter: "sensitivity" });
    }
    const scale = requirePositive(parseNumeral(number), "a sensitivity above zero");
    const own = sensitivityUnits(rest);
    const { quantity, num, den } = units[own.unit];
    return Object.freeze({
      unit: own.unit,
      sensitivity(per: string): number {
        const other = inPlace({ parameter: "per" }, () => sensitivityUnits(per));
        const unit = units[other.unit];
        if (unit.quantity !== quantity) {
          throw new VeladisError("wrong-quantity", {
            expected: `a sensitivity per unit of ${quantity}`,
            received: shown(per),
            parameter: "per",
          });
        }
        return finiteResult((voltageIn(scale, own.voltage, other.voltage) * unit.num * den) / (unit.den * num));
      },
      voltage(reading: string | Amplitude, as: VoltageType, options?: ConvertOptions): VoltageReading {
        const { unit, detector } = voltageType(as);
        const vibration = withParameters({ as, options, reading }, () =>
          convertAmplitude(reading, `${own.unit} ${detector}`, options),
        );
        const volts = finiteResult(voltageIn(vibration.value * scale, own.voltage, unit));
        const by = voltageIn(scale, own.voltage, unit);
        const step = {
          does: "scale",
          value: volts,
          type: `${unit} ${detector}`,
          by,
          note: `sensor of ${written}`,
        } as const;
        const { assumed, state, history } = madeOf([vibration], step) as Made &
          Required<Pick<Made, "assumed" | "history">>;
        return Object.freeze({ value: volts, unit, detector, ...(state !== undefined && { state }), assumed, history });
      },
      reading(voltage: string | VoltageReading, as: ReadingTypeText, options?: ConvertOptions): ConvertedAmplitude {
        const given = inPlace({ parameter: "voltage" }, () =>
          typeof voltage === "object" && voltage !== null ? checkedVoltage(voltage) : parseVoltage(voltage),
        );
        const { value, unit, detector, state } = given;
        const volts = voltageIn(value, unit, own.voltage);
        const type = `${own.unit} ${detector}`;
        const vibration = volts / scale;
        const by = voltageIn(1, unit, own.voltage);
        const before = historyTo(value, `${unit} ${detector}`, given);
        const inOwn =
          by === 1 ? before : withStep(before, { does: "scale", value: volts, type: `${own.voltage} ${detector}`, by });
        const note = `sensor of ${written}`;
        const history = withStep(inOwn, { does: "scale", value: vibration, type, over: scale, note });
        const assumed = history.reduce<readonly Assumption[]>((all, step) => union(all, step.assumed), []);
        const measured = {
          ...amplitudeIn(type, vibration),
          ...(state !== undefined && { state }),
          assumed,
          history,
        };
        return withParameters({ options, voltage, as }, () => convertAmplitude(Object.freeze(measured), as, options));
      },
    });
  });
}
