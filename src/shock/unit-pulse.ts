import { type ErrorPlace, requirePositive, VeladisError } from "../core/index";
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

/** The fastest rate at which a shock is tried, in samples a second. */
const FASTEST = 4e6;
/** The least rate that shows what a high-pass does, in multiples of its corner. */
const PER_CORNER = 100;

/** Samples of the longest record that is tried, some hundred times over. */
const MOST = 250_000;

const CORNER = { parameter: "settings", option: "highPass" };

/**
 * The corner of a high-pass in hertz, if the fastest record shows what it does.
 *
 * @throws {@link VeladisError} `not-positive`, `out-of-range`
 */
export function requireCorner(highPass: number): number {
  requirePositive(highPass, "a high-pass corner above zero, in Hz", CORNER);
  if (highPass <= FASTEST / PER_CORNER) return highPass;
  throw new VeladisError("out-of-range", {
    expected: `a high-pass corner of ${FASTEST / PER_CORNER} Hz at the most`,
    received: `${highPass} Hz`,
    ...CORNER,
  });
}

/**
 * The rate at which a shape that falls at once ends on a sample, so that its peak is one. The half step behind the fall is
 * too much, by one part in all samples of the shape: as many as a record has room for, 512 at the most.
 */
function rateToEnd(length: number, ringing: number, wanted: number): number {
  const room = Math.floor((MOST * length) / (length + ringing)) - 2;
  return Math.ceil(Math.max(wanted * length, Math.min(512, room))) / length;
}

/**
 * A shock of 1 g, a half-sine if no other shape is given, and behind it what rings on.
 *
 * @param least - the least rate, in samples a second, that shows the running vibration
 * @param highPass - corner of the high-pass of a device that forms velocity, as {@link requireCorner} gives it back
 * @param told - where the length stands, and the shape
 */
export function unitPulse(
  milliseconds: number,
  least: number,
  highPass: number | undefined,
  told: { readonly place: ErrorPlace; readonly shape?: PulseShape },
): UnitPulse {
  const { place, shape = "half-sine" } = told;
  const length = requirePositive(milliseconds, "a shock length above zero, in ms", place) / 1000;
  // 1 / (sqrt(2) pi corner) is the filter's own time constant; twelve of them leave nothing
  const ringing = highPass === undefined ? 0 : 12 / (Math.SQRT2 * Math.PI * highPass);
  const wanted = Math.max(64 / length, least, PER_CORNER * (highPass ?? 0));
  const falls = shape === "final-peak saw-tooth";
  const rate = Math.min(falls ? rateToEnd(length, ringing, wanted) : wanted, FASTEST);
  const samples = Math.ceil((length + ringing) * rate) + 1;
  if (!(samples <= MOST)) {
    throw new VeladisError("out-of-range", {
      expected: "a shock and a high-pass corner that a record of a quarter of a million samples shows",
      received: highPass === undefined ? `${milliseconds} ms` : `${milliseconds} ms and ${highPass} Hz`,
      ...(ringing > length ? CORNER : place),
    });
  }
  const pulse = Float64Array.from(
    { length: samples },
    (_, i) => (units.g.num / units.g.den) * pulseAt(shape, i / rate, length),
  );
  if (falls) pulse[Math.round(length * rate)] = units.g.num / units.g.den;
  return { milliseconds, rate, response: highPass === undefined ? pulse : velocityOf(pulse, rate, highPass) };
}
