/**
 * Sensors and current loops: what a voltage or a current says of a vibration, and what a vibration gives; worked examples
 * stand in the guide "Sensors and current loops".
 *
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { currentLoop, sensor } from "veladis/sensor";
 *
 * format(sensor("100 mV/g").reading("70.71 mV rms", "g pk")); // => "1.00 g pk"
 * format(currentLoop("0 to 25.4 mm/s rms").reading(12)); // => "12.7 mm/s rms"
 * ```
 *
 * @module veladis/sensor
 */
export {
  type CurrentLoop,
  currentLoop,
  formatVoltage,
  isSignal,
  type LoopCurrent,
  type LoopLimits,
  type LoopReading,
  loopLimits,
  type ProbeDirection,
  type ProbeGap,
  type ProbeGapOptions,
  type ProbeLength,
  probeGap,
  type Sensor,
  type SignalSource,
  sensor,
  signalReading,
  type Voltage,
  type VoltageReading,
  type VoltageType,
} from "../amplitude/index";
export { VeladisError } from "../core/index";
