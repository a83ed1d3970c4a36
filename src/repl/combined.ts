import { requireNonNegative, requirePositive, VeladisError } from "../core/index";
import { type Amplitude, type Assumption, amplitudeOf, format, madeOf, type Step, writtenIn } from "../reading/index";
import { withHistory } from "./kept";
import { isOneReading, ONE_READING } from "./linear-share";
import { inType, linearTypeOf, operands } from "./operands";

/** Frequency of a result of several readings: the one that they say, also where only some say it; else unknown. */
function commonHertz(readings: readonly Amplitude[]): number | undefined {
  const said = readings.map(({ hertz }) => hertz).filter((hertz) => hertz !== undefined);
  return said.every((hertz) => hertz === said[0]) ? said[0] : undefined;
}

/** True where some readings say one frequency and others none, so that the result takes it for all. */
function takesOneFrequency(readings: readonly Amplitude[]): boolean {
  return commonHertz(readings) !== undefined && readings.some(({ hertz }) => hertz === undefined);
}

/** What a step makes of readings in one type: an amplitude in that type, with their histories and the step. */
function made(of: readonly Amplitude[], value: number, step: Omit<Step, "of" | "value" | "type">): Amplitude {
  const [first] = of as readonly [Amplitude, ...Amplitude[]];
  const { unit, detector, quantity } = first;
  requireNonNegative(value, "an amplitude of zero or more");
  const way = madeOf(of, { ...step, value, type: writtenIn(first) });
  return Object.freeze({ value, unit, detector, quantity, hertz: commonHertz(of), ...way });
}

/** What putting together in phase assumes: where not both frequencies are known, that they are one. */
function assumedInPhase(a: Amplitude, b: Amplitude, doing: string): readonly Assumption[] {
  if (a.hertz === undefined || b.hertz === undefined) return Object.freeze(["one-frequency", "in-phase"] as const);
  if (a.hertz === b.hertz) return Object.freeze(["in-phase"] as const);
  throw new VeladisError("wrong-frequency", {
    expected: `readings at one frequency to ${doing} (RMS readings of different frequencies go together by rss)`,
    received: `${a.hertz} Hz and ${b.hertz} Hz`,
  });
}

function inPhase(a: Amplitude, b: Amplitude, does: "sum" | "difference", doing: string): Amplitude {
  const assumed = assumedInPhase(a, b, doing);
  const of = operands(a === b ? Array<Amplitude>(2).fill(withHistory(a)) : [a, b], doing) as [Amplitude, Amplitude];
  const [x, y] = of.map(({ value }) => value) as [number, number];
  const told = isOneReading(...of) ? { note: ONE_READING } : { assumed };
  return made(of, does === "sum" ? x + y : x - y, { does, ...told });
}

/** One reading and another that rises and falls with it. */
export function sumOf(a: Amplitude, b: Amplitude): Amplitude {
  return inPhase(a, b, "sum", "add");
}

/** One reading without another that rises and falls with it. */
export function differenceOf(a: Amplitude, b: Amplitude): Amplitude {
  return inPhase(a, b, "difference", "subtract");
}

/** A reading times a number, or over one; why, and what that number had assumed. */
export function scaledReading(
  reading: Amplitude,
  { by = 1, over = 1, ...told }: Pick<Step, "by" | "over" | "note" | "assumed">,
): Amplitude {
  const checked = amplitudeOf(reading);
  const linear = inType(checked, linearTypeOf(checked));
  requireNonNegative(by, "a number of zero or more to multiply an amplitude with");
  requirePositive(over, "a number above zero to divide an amplitude by");
  const step = { does: "scale", by, ...(over !== 1 && { over }), ...told } as const;
  return made([linear], (linear.value * by) / over, step);
}

/** The root of the sum of squares of RMS readings that have nothing to do with one another. */
export function rootSumSquare(readings: readonly Amplitude[]): Amplitude {
  for (const reading of readings) {
    if (reading.detector === "rms") continue;
    throw new VeladisError("wrong-detector", {
      expected: "RMS readings, since peaks of different waves do not add by their squares",
      received: format(reading),
      allowed: ["rms"],
    });
  }
  const of = operands(readings, "combine");
  if (of.length === 1) return of[0] as Amplitude;
  const value = Math.hypot(...of.map((one) => one.value));
  // readings by their squares need not be of one frequency: one that says none is not taken to have that of another
  const told = { does: "rss", assumed: Object.freeze(["uncorrelated"] as const) } as const;
  const result = made(of, value, told);
  return takesOneFrequency(of) ? Object.freeze({ ...result, hertz: undefined }) : result;
}

/** The arithmetic mean of readings: of their numbers, so that no phase comes into it. */
export function meanOf(readings: readonly Amplitude[]): Amplitude {
  const of = operands(readings, "average");
  if (of.length === 1) return of[0] as Amplitude;
  const total = of.reduce((sum, { value }) => sum + value, 0);
  const assumed = takesOneFrequency(of) && { assumed: Object.freeze(["one-frequency"] as const) };
  return scaledReading(made(of, total, { does: "sum", note: "of the numbers", ...assumed }), {
    over: of.length,
    note: `mean of ${of.length}`,
  });
}

/** The largest or smallest of several readings, as it was written; what the others assumed went into the choice. */
export function extremeOf(readings: readonly Amplitude[], does: "largest" | "smallest"): Amplitude {
  const values = operands(readings, "compare").map(({ value }) => value);
  const place = values.indexOf((does === "largest" ? Math.max : Math.min)(...values));
  const checked = readings.map(amplitudeOf);
  const chosen = checked[place] as Amplitude;
  if (checked.length === 1) return chosen;
  const type = linearTypeOf(chosen);
  const of = checked.map((one) => inType(one, type));
  const { crestFactor: _ofAll, ...found } = made(of, (of[place] as Amplitude).value, { does });
  const { hertz, crestFactor } = chosen;
  const itsOwn = Object.freeze({ ...found, hertz, ...(crestFactor !== undefined && { crestFactor }) });
  return inType(itsOwn, writtenIn(chosen));
}
