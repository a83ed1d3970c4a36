import {
  finiteResult,
  frozen,
  inPlace,
  parseNumeral,
  requireKnownOptions,
  requireText,
  shown,
  splitNumeral,
  VeladisError,
  withParameters,
} from "../core/index";
import { frequency } from "../frequency/index";
import { type Amplitude, ownHistory, type Step } from "../reading/index";
import { type CurrentLoop, currentLoop } from "./current-loop";
import { sensor } from "./sensor";
import { parseVoltage } from "./signal-voltage";

/** What turns a signal into a vibration, where its text does not say it. */
export interface SignalSource {
  /** Sensitivity of the sensor that gives the volts, e.g. `"100 mV/g"`. */
  readonly sensor?: string;
  /** Range of the 4-20 mA loop that gives the milliamperes or per cent, e.g. `"0 to 25.4 mm/s rms"`. */
  readonly loop?: string;
}

const known: Readonly<Record<keyof SignalSource, true>> = /* @__PURE__ */ Object.freeze({ sensor: true, loop: true });

const FORM =
  'a signal such as "98 mV pk by 100 mV/g at 80 Hz", "12 mA of 0 to 25.4 mm/s rms" or "50 % of 0 to 25.4 mm/s rms"';

/** The unit behind the number of a signal. */
const SIGNAL = /^\s*(?:([u\u00b5\u03bcm]?V)(?![A-Za-z])|(mA)(?![A-Za-z])|(%|per ?cent)(?=\s*(?:$|of\s|at\s|to\s|@)))/;

/** What stands behind a signal: how it becomes a vibration, and at which frequency. */
const BEHIND = /^(.*?)(?:\s+(by|of)\s+(.*?))?(?:\s*(?:\sat\s|@)\s*(.*))?$/is;

/** A range as a line has it whose "to" is not to begin a target: `0-to-20 mm/s rms`. */
export const JOINED_RANGE = /-to-(?=-?[\d.])/g;

/** The number of a signal, what stands behind it and what turns it into a vibration; undefined for what is no signal. */
function partsOf(text: string): { number: string; rest: string; unit: string; option: keyof SignalSource } | undefined {
  const [number, rest] = splitNumeral(text);
  const found = number === "" ? null : SIGNAL.exec(rest);
  if (found === null) return undefined;
  const [, volts, current, share] = found;
  return { number, rest, unit: (volts ?? current ?? share) as string, option: volts === undefined ? "loop" : "sensor" };
}

/** What turns a text into a vibration: a sensor for volts, a loop for milliamperes or per cent; undefined for what is no signal. */
export function wayOfSignal(text: string): keyof SignalSource | undefined {
  return typeof text === "string" ? partsOf(text.trim())?.option : undefined;
}

/** True for a text whose number is one of volts, of milliamperes or, with its range, of per cent: a signal, no vibration. */
export function isSignal(text: string): boolean {
  return wayOfSignal(text) !== undefined;
}

const WAYS = {
  sensor: 'the sensitivity of the sensor, as in "98 mV pk by 100 mV/g"',
  loop: 'the range of the loop, as in "12 mA of 0 to 25.4 mm/s rms"',
} as const satisfies Record<keyof SignalSource, string>;

/** Refuses a way from a signal to a vibration that is missing, told twice or of the other kind. */
function wayOf(written: string, said: string | undefined, told: string | undefined, option: "sensor" | "loop"): string {
  if (said !== undefined && told !== undefined && said.replace(/\s+/g, "") !== told.replace(/\s+/g, "")) {
    throw new VeladisError("out-of-range", {
      expected: `one ${option}: that of the text, or that of the options`,
      received: `${shown(said)} and ${shown(told)}`,
      parameter: "source",
      option,
    });
  }
  const way = said ?? told;
  if (way !== undefined) return way;
  throw new VeladisError("missing-option", {
    expected: WAYS[option],
    received: shown(written),
    parameter: "source",
    option,
  });
}

/** The reading of a loop at a share of its range; its steps begin with the share. */
function shareReading(loop: CurrentLoop, percent: number): Amplitude {
  const reading = loop.reading(finiteResult(4 + (16 * percent) / 100));
  const [current, ...more] = reading.history ?? [];
  const steps: Step[] = [
    { does: "given", value: percent, type: "%" },
    { ...(current as Step), does: "line", of: [0], by: 0.16, plus: 4, note: "0 to 100 % are 4 to 20 mA" },
    ...more.map((step) => (step.of === undefined ? step : { ...step, of: step.of.map((place) => place + 1) })),
  ];
  return Object.freeze({ ...reading, history: ownHistory(steps.map(frozen)) });
}

/**
 * The vibration that a signal says: volts by the sensitivity of their sensor, milliamperes or per cent by the range of
 * their 4-20 mA loop. What the text leaves out, the second argument may say; what both say must agree.
 *
 * `<volts> <detector> [by <sensitivity>] [at <frequency>]`, `<n> mA [of <range>] [at <frequency>]` or
 * `<n> % [of <range>] [at <frequency>]`
 *
 * @param signal - the text, at most 200 characters
 * @returns the frozen reading in the unit of the sensor or of the range, with the state of a loop and the steps
 * @throws {@link VeladisError} `syntax` for what is no signal, `missing-option` where nothing says how it becomes a
 *   vibration, `out-of-range` for two ways that differ, `sensor-fault` for a failed loop, and as {@link sensor} and
 *   {@link currentLoop}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { signalReading } from "veladis/sensor";
 *
 * format(signalReading("98 mV pk by 100 mV/g")); // => "0.980 g pk"
 * format(signalReading("12 mA", { loop: "0 to 25.4 mm/s rms" })); // => "12.7 mm/s rms"
 * format(signalReading("25 % of 0 to 20 mm/s rms")); // => "5.00 mm/s rms"
 * signalReading("98 mV pk"); // throws missing-option
 * ```
 */
export function signalReading(signal: string, source: SignalSource = {}): Amplitude {
  return withParameters({ signal, source }, () => readingOf(signal, source));
}

function readingOf(signal: string, source: SignalSource): Amplitude {
  const written = requireText(signal, FORM, { parameter: "signal" })
    .trim()
    .replace(/\s+/g, " ")
    .replace(JOINED_RANGE, " to ");
  const told = requireKnownOptions(source, known, {
    what: "a way from a signal to a vibration",
    form: 'a way such as { sensor: "100 mV/g" }',
    place: { parameter: "source" },
  });
  const parts = written.length <= 200 ? partsOf(written) : undefined;
  const [, plain = "", word, way, at] = BEHIND.exec(parts?.rest ?? "") as RegExpExecArray;
  const isVoltage = parts?.option === "sensor";
  const isOther = word !== undefined && word.toLowerCase() !== (isVoltage ? "by" : "of");
  if (parts === undefined || isOther || (!isVoltage && plain.trim() !== parts.unit)) {
    throw new VeladisError("syntax", { expected: FORM, received: shown(signal), parameter: "signal" });
  }
  // of a list of signals some are read by the one, some by the other: each must be one
  if (told.sensor !== undefined)
    inPlace({ parameter: "source", option: "sensor" }, () => sensor(told.sensor as string));
  if (told.loop !== undefined) inPlace({ parameter: "source", option: "loop" }, () => currentLoop(told.loop as string));
  const by = wayOf(written, way, told[parts.option], parts.option);
  if (isVoltage) {
    const voltage = parseVoltage(`${parts.number}${plain}`);
    const made = sensor(by);
    return made.reading(voltage, `${made.unit} ${voltage.detector}`, at === undefined ? {} : { at: frequency(at) });
  }
  const loop = currentLoop(at === undefined ? by : `${by} at ${at}`);
  const value = parseNumeral(parts.number, "a number of mA or per cent");
  return parts.unit === "mA" ? loop.reading(value) : shareReading(loop, value);
}
