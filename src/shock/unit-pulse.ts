import { requirePositive, VeladisError } from "../core/index";
import { units } from "../units/index";
import { type PulseShape, pulseAt } from "./pulse-shapes";
import { velocityOf } from "./velocity-of";

/** What a device's input makes of a shock of 1 g. */
export interface UnitPulse {
  readonly milliseconds: number;
  /** Samples a second. */
  readonly rate: number;
  /** m/s2, or m/s behind a high-pass. */
  readonly response: Float64Array;
}

/** Samples of the longest record that is tried, some hundred times over. */
const MOST = 250_000;

/**
 * A shock of 1 g, a half-sine if no other shape is given, and behind it what rings on.
 *
 * @param fastest - the least rate, in samples a second, that shows what else is to be shown
 * @param highPass - corner of the high-pass of a device that forms velocity
 */
export function unitPulse(
  milliseconds: number,
  fastest: number,
  highPass?: number,
  shape: PulseShape = "half-sine",
): UnitPulse {
  const length =
    requirePositive(milliseconds, "a shock length above zero, in ms", { parameter: "milliseconds" }) / 1000;
  const rate = Math.min(Math.max(64 / length, fastest), 4e6);
  // 1 / (sqrt(2) pi corner) is the filter's own time constant; twelve of them leave nothing
  const ringing = highPass === undefined ? 0 : 12 / (Math.SQRT2 * Math.PI * highPass);
  const samples = Math.ceil((length + ringing) * rate) + 1;
  if (!(samples <= MOST)) {
    throw new VeladisError("out-of-range", {
      expected: "a shock and a high-pass corner that a record of a quarter of a million samples shows",
      received: highPass === undefined ? `${milliseconds} ms` : `${milliseconds} ms and ${highPass} Hz`,
    });
  }
  const pulse = Float64Array.from(
    { length: samples },
    (_, i) => (units.g.num / units.g.den) * pulseAt(shape, i / rate, length),
  );
  return { milliseconds, rate, response: highPass === undefined ? pulse : velocityOf(pulse, rate, highPass) };
}
