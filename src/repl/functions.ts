import { convertAmplitude, rssDifference, signalReading, vectorDifference } from "../amplitude/index";
import { frozen, requireFinite, VeladisError } from "../core/index";
import { type Amplitude, writtenValue } from "../reading/index";
import { namesPoints, type Scheme } from "../severity/index";
import { parseUncertain } from "../uncertainty/index";
import { beat } from "./beat";
import { changed } from "./changed";
import { extremeOf, meanOf, rootSumSquare } from "./combined";
import { gapReport } from "./gap-report";
import { judged, judgedPoints } from "./judged";
import { proposed } from "./proposed";
import { amplitude, isAmplitude, kindText, opened, type Value } from "./value";

/** A function of the calculator. */
export interface CalculatorFunction {
  /** How it is called, for the help. */
  readonly usage: string;
  readonly help: string;
  /** Fewest and most arguments. */
  readonly arity: readonly [least: number, most: number];
  readonly run: (args: readonly Value[], schemes?: readonly Scheme[]) => Value;
}

/** More arguments than a line can hold. */
const ANY = 1e9;

function number(value: Value | undefined, what: string): number {
  if (typeof value === "number") return requireFinite(value, what);
  throw new VeladisError("wrong-type", { expected: what, received: value === undefined ? "nothing" : kindText(value) });
}

function phrase(value: Value | undefined, what: string): string {
  if (typeof value === "string") return value;
  throw new VeladisError("wrong-type", {
    expected: `${what} in quotes`,
    received: value === undefined ? "nothing" : kindText(value),
  });
}

function amplitudes(args: readonly Value[]): Amplitude[] {
  return opened(args).map((value) => amplitude(value, "amplitudes"));
}

/** Amplitudes by one function, numbers by another. */
function ofEither(
  args: readonly Value[],
  ofAmplitudes: (readings: readonly Amplitude[]) => Value,
  ofNumbers: (numbers: readonly number[]) => number,
): Value {
  const values = opened(args);
  const [first] = values;
  if (first === undefined) {
    throw new VeladisError("missing-option", { expected: "at least one value", received: "an empty list" });
  }
  return isAmplitude(first)
    ? ofAmplitudes(amplitudes(values))
    : ofNumbers(values.map((value) => number(value, "numbers")));
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

/** All functions with a meaning for amplitudes. To add one, add its row here and nowhere else. */
export const functions = /* @__PURE__ */ frozen({
  rss: {
    usage: "rss(2.1 mm/s rms, 0.8 mm/s rms)",
    help: "root of the sum of squares of uncorrelated RMS readings, also of different frequencies; levels in dB too, as in rss(a, b) to dB re 1e-9 m/s",
    arity: [1, ANY],
    run: (args) => rootSumSquare(amplitudes(args)),
  },
  vectorDifference: {
    usage: "vectorDifference(40 um pp, 6 um pp, 90)",
    help: "a reading less another at its frequency, at an angle in degrees: slow-roll runout",
    arity: [3, 3],
    run: (args) => {
      const [from, off] = amplitudes(args.slice(0, 2)) as [Amplitude, Amplitude];
      return vectorDifference(from, off, number(args[2], "an angle in degrees"));
    },
  },
  rssDifference: {
    usage: "rssDifference(2.1 mm/s rms, 0.8 mm/s rms)",
    help: "an RMS reading less an uncorrelated background: root of the difference of squares",
    arity: [2, 2],
    run: (args) => rssDifference(...(amplitudes(args) as [Amplitude, Amplitude])),
  },
  mean: {
    usage: "mean(2 mm/s rms, 2.4 mm/s rms)",
    help: "arithmetic mean of amplitudes or numbers",
    arity: [1, ANY],
    run: (args) => ofEither(args, meanOf, (numbers) => total(numbers) / numbers.length),
  },
  max: {
    usage: "max(a, b, c)",
    help: "largest of amplitudes or numbers",
    arity: [1, ANY],
    run: (args) =>
      ofEither(
        args,
        (all) => extremeOf(all, "largest"),
        (numbers) => Math.max(...numbers),
      ),
  },
  min: {
    usage: "min(a, b, c)",
    help: "smallest of amplitudes or numbers",
    arity: [1, ANY],
    run: (args) =>
      ofEither(
        args,
        (all) => extremeOf(all, "smallest"),
        (numbers) => Math.min(...numbers),
      ),
  },
  value: {
    usage: 'value(a, "mm/s rms")',
    help: "the number of an amplitude, in a reading type if one is given",
    arity: [1, 2],
    run: ([reading, type]) => {
      const one = amplitude(reading);
      if (type === undefined) return one.value;
      return writtenValue(convertAmplitude(one, phrase(type, "a reading type")));
    },
  },
  signal: {
    usage: 'signal("98 mV pk by 100 mV/g at 80 Hz")',
    help: 'the reading of a signal: volts by a sensor, "12 mA of 0 to 20 mm/s rms" or "50 % of 0 to 20 mm/s rms" by a loop; a second argument is the sensor or the range of several',
    arity: [1, 2],
    run: ([written, by]) => {
      const text = phrase(written, "a signal");
      return signalReading(
        by === undefined ? text : `${text} ${/V/.test(text) ? "by" : "of"} ${phrase(by, "a sensor or a range")}`,
      );
    },
  },
  gap: {
    usage: 'gap("-9.8 V", "200 mV/mil", "-2 to -18 V", "-10.4 V")',
    help: "where a shaft stands by the gap voltage of a proximity probe: its sensitivity, its linear range and, for the movement, its cold gap voltage",
    arity: [3, 4],
    run: ([volts, sensitivity, range, cold]) =>
      gapReport(
        phrase(volts, "a gap voltage"),
        phrase(sensitivity, "a sensitivity"),
        phrase(range, "a linear range"),
        cold === undefined ? undefined : phrase(cold, "a cold gap voltage"),
      ),
  },
  at: {
    usage: 'at(a, "1480 r/min")',
    help: "the same amplitude with its frequency, where it does not say one itself",
    arity: [2, 2],
    run: ([reading, speed]) => {
      const { unit, detector, ...rest } = amplitude(reading);
      const { hertz } = convertAmplitude({ unit, detector, ...rest }, `${unit} ${detector}`, {
        at: phrase(speed, "a frequency") as "1 Hz",
      });
      return Object.freeze({ ...rest, unit, detector, hertz });
    },
  },
  hertz: {
    usage: "hertz(a)",
    help: "the frequency of an amplitude, in hertz",
    arity: [1, 1],
    run: ([reading]) => {
      const { hertz } = amplitude(reading);
      if (hertz !== undefined) return hertz;
      throw new VeladisError("missing-frequency", {
        expected: "an amplitude with its frequency, as in 2 mm/s rms at 1500 r/min",
        received: kindText(reading as Value),
      });
    },
  },
  change: {
    usage: "change(now, before)",
    help: "how far a reading has moved from an earlier one, in percent and decibels",
    arity: [2, 2],
    run: ([now, before]) => changed(amplitude(now), amplitude(before)),
  },
  beat: {
    usage: "beat(3.4 mm/s rms at 1480 r/min, 1.2 mm/s rms at 1492 r/min)",
    help: "the range in which two readings of two near frequencies swell, and how often",
    arity: [2, 2],
    run: (args) => beat(...(amplitudes(args) as [Amplitude, Amplitude])),
  },
  judge: {
    usage: 'judge(4.1 mm/s rms, "pump 90 kW 2980 r/min rigid")',
    help: 'the zones possible for a reading of a machine, by all schemes that its facts admit; a third argument names the one scheme; several points in quotes, the worst governs: "DE-H 3.1, DE-V 2.2 mm/s rms"',
    arity: [2, 3],
    run: ([reading, machine, scheme], schemes) => {
      const words = phrase(machine, "a machine");
      const by = scheme === undefined ? undefined : phrase(scheme, "a scheme");
      if (typeof reading === "string" && namesPoints(reading)) return judgedPoints(reading, words, by, schemes);
      return judged(typeof reading === "string" ? parseUncertain(reading) : amplitude(reading), words, by, schemes);
    },
  },
  setpoints: {
    usage: 'setpoints(2 mm/s rms, "pump 90 kW 2980 r/min rigid")',
    help: 'alarm and trip proposed from a baseline, with reasons, by the scheme that judge takes (of several the one with the lowest trip); further arguments name the scheme, multiples of the baseline ("alarm 1.5 times, trip 3 times") and a raised setpoint ("2 times from 900 to 1400 r/min for 30 s")',
    arity: [2, 5],
    run: ([baseline, machine, ...more], schemes) =>
      proposed(
        amplitude(baseline, "a baseline"),
        phrase(machine, "a machine"),
        more.map((one) => phrase(one, "a scheme, multiples or a raised setpoint")),
        schemes,
      ),
  },
} as const satisfies Record<string, CalculatorFunction>);

/** Functions of numbers that mathjs evaluates. */
export const numberFunctions = [
  "abs",
  "acos",
  "asin",
  "atan",
  "atan2",
  "cbrt",
  "ceil",
  "cos",
  "exp",
  "floor",
  "hypot",
  "log",
  "log10",
  "log2",
  "median",
  "pow",
  "round",
  "sign",
  "sin",
  "sqrt",
  "square",
  "std",
  "sum",
  "tan",
  "variance",
] as const;
