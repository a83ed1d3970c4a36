import { inPlace, requireKnownOptions, shown, VeladisError, withParameters } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type WindowName, windowName, windows } from "./windows";

/** How two lines are to be told apart. */
export interface ResolvingOptions {
  /** The highest frequency that the spectrum is to show. */
  readonly highest: Frequency;
  /** Hann if not given. */
  readonly window?: WindowName;
  /** How many segments are averaged; 1 if not given. */
  readonly averages?: number;
  /** Part of a segment that the next one shares, 0 up to but not 1; 0.5 if not given. */
  readonly overlap?: number;
}

/** The settings of a spectrum in which two lines stand apart. */
export interface ResolvingSettings {
  /** How far the two lie apart, in hertz. */
  readonly difference: number;
  readonly window: WindowName;
  /** How many lines the two must lie apart for this window. */
  readonly apart: number;
  /** The smallest size of one beside the other with which both show: a tenth, of a rectangular window half. */
  readonly smallest: number;
  /** The widest spacing of the lines that will do, in hertz. */
  readonly resolution: number;
  /** The shortest segment that gives it, in seconds. */
  readonly seconds: number;
  /** The highest frequency shown, in hertz. */
  readonly highest: number;
  /** The fewest lines up to it, of the numbers that analysers have (100, 200, 400, ...), and what they give. */
  readonly lines: number;
  readonly spacing: number;
  readonly segment: number;
  /** The customary sampling rate: 2.56 times the highest frequency. */
  readonly rate: number;
  readonly averages: number;
  /** The whole record that the averages take with these lines, in seconds. */
  readonly record: number;
  /** The time from one swell of the beat of the two to the next, in seconds. */
  readonly beat: number;
}

const keys: Readonly<Record<keyof ResolvingOptions, true>> = /* @__PURE__ */ Object.freeze({
  highest: true,
  window: true,
  averages: true,
  overlap: true,
});

/** Samples a line up to the highest frequency: 2.56, of which a little over 2 is needed. Common practice, no source. */
const SAMPLES_A_LINE = 2.56;
/** The fewest lines of a spectrum; each further setting has twice as many. Common practice, no source. */
const FEWEST = 100;
/** More lines than this no analyser has, nor memory for. */
const MOST = 104_857_600;
/** Beyond the main lobe of a window, half as wide as it has terms, where one line no longer fills the dip beside the other. */
const BESIDE_LOBE = 2;
/** The smallest line that shows beside another, as a part of it; side lobes of the rectangular window hide more. */
const SMALLEST = { rectangular: 0.5, other: 0.1 } as const;

/** The averages, and how much of a segment each further one takes. */
function requireAverages({ averages = 1, overlap = 0.5 }: ResolvingOptions): { averages: number; fresh: number } {
  if (!(Number.isSafeInteger(averages) && averages >= 1)) {
    throw new VeladisError("out-of-range", {
      expected: "a number of averages, 1 or more",
      received: shown(averages),
      option: "averages",
    });
  }
  if (!(typeof overlap === "number" && overlap >= 0 && overlap < 1)) {
    throw new VeladisError("out-of-range", {
      expected: "an overlap from 0 to below 1",
      received: shown(overlap),
      option: "overlap",
    });
  }
  return { averages, fresh: 1 - overlap };
}

/**
 * The settings of a spectrum that tell two frequencies apart: spacing of its lines, length of its record, number of lines.
 *
 * Two tones show as two lines, wherever they fall between the lines and whatever their phases, when they lie half the
 * main lobe of the window and two lines more apart: 4 lines of a Hann window (2 + 2), 3 of a rectangular one, 7 of a flat top. The customary
 * twice the noise bandwidth (3 lines of Hann; common practice, no source) will do for two of about one size alone.
 *
 * @throws {@link VeladisError} `out-of-range` for two that are equal, for one above the highest frequency, and for more
 *   lines than there can be; all of `hertz` for the frequencies
 * @example
 * ```ts
 * import { resolvingSettings } from "veladis/signal";
 *
 * // 1x of an induced-draught fan at 1480 r/min, and its twin beside it at 1492 r/min
 * const settings = resolvingSettings("1480 r/min", "1492 r/min", { highest: "400 Hz", averages: 4 });
 * settings.difference.toFixed(2); // => "0.20"
 * settings.apart; // => 4
 * settings.resolution.toFixed(4); // => "0.0500"
 * settings.seconds.toFixed(1); // => "20.0"
 * settings.lines; // => 12800
 * settings.record.toFixed(0); // => "80"
 * settings.beat.toFixed(1); // => "5.0"
 * ```
 */
export function resolvingSettings(first: Frequency, second: Frequency, options: ResolvingOptions): ResolvingSettings {
  return withParameters({ first, second, options }, () => {
    requireKnownOptions(options, keys, {
      what: "an option of settings that resolve",
      form: 'options with { highest: "1 kHz" }',
    });
    const one = inPlace({ parameter: "first" }, () => hertz(first));
    const other = inPlace({ parameter: "second" }, () => hertz(second));
    const highest = inPlace({ option: "highest" }, () => hertz(options.highest));
    const window = inPlace({ option: "window" }, () => windowName(options.window ?? "hann"));
    const { averages, fresh } = requireAverages(options);
    const difference = Math.abs(one - other);
    if (!(difference > 1e-9 * Math.max(one, other))) {
      throw new VeladisError("out-of-range", {
        expected: "two frequencies that differ",
        received: `${one} Hz and ${other} Hz`,
        parameter: "second",
      });
    }
    if (!(highest > Math.max(one, other))) {
      throw new VeladisError("out-of-range", {
        expected: `a highest frequency above both, ${one} Hz and ${other} Hz`,
        received: `${highest} Hz`,
        option: "highest",
      });
    }
    const apart = windows[window].terms.length + BESIDE_LOBE;
    const smallest = SMALLEST[window === "rectangular" ? window : "other"];
    const resolution = difference / apart;
    const needed = highest / resolution;
    if (!(needed <= MOST)) {
      throw new VeladisError("out-of-range", {
        expected: `settings of at most ${MOST} lines; a lower highest frequency needs fewer`,
        received: `${needed.toPrecision(3)} lines`,
        option: "highest",
      });
    }
    const lines = FEWEST * 2 ** Math.max(0, Math.ceil(Math.log2(needed / FEWEST) - 1e-9));
    const segment = lines / highest;
    return Object.freeze({
      ...{ difference, window, apart, smallest, resolution, seconds: 1 / resolution, highest },
      ...{ lines, spacing: highest / lines, segment, rate: SAMPLES_A_LINE * highest },
      ...{ averages, record: segment * (1 + (averages - 1) * fresh), beat: 1 / difference },
    });
  });
}
