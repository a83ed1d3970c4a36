import { type ConvertOptions, isSignal, JOINED_RANGE, type SignalSource, signalReading } from "../amplitude/index";
import { parseNumeral, requireText, shown, VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { parseUncertain } from "../uncertainty/index";
import { plainSpelling } from "./plain-spelling";

/** A line such as `0.25 in/s pk at 1500 r/min to mm/s rms, mil pp`, taken apart. */
export interface Sentence {
  readonly reading: Amplitude;
  /** The reading as it was written, in its plain spelling. */
  readonly written: string;
  /** Reading types asked for, as written; none when the line asks for all equivalents. */
  readonly targets: readonly string[];
  readonly options: ConvertOptions;
}

const LONGEST = 1000;
const FORM = 'a line such as "0.25 in/s pk at 1500 r/min to mm/s rms, mil pp"';

/**
 * What stands between a reading and a crest factor for its conversion. Behind a comma, or in brackets as an answer says
 * what it assumed, a crest factor is the reading's own, and {@link parseAmplitude} reads it.
 */
export const CREST_FACTOR = /(?:\s+with\s+|(?<![,\s])\s+)crest factor\s+(?![^()]*\))/i;

/** The line with "peak to peak", "95 % within 1 to 2" and "mA of 0 to 20 mm/s" written with dashes, since a "to" in them begins no target. */
export function joinedPeaks(line: string): string {
  return line
    .replace(/\b(peak|pk|0|zero)\s+to\s+(peak|pk)\b/gi, "$1-to-$2")
    .replace(/(\s(?:mA|%|per ?cent)\s+of\s+-?[\d.]+[^,]*?)\s+to\s+(?=-?[\d.])/gi, "$1-to-")
    .replace(/(%\s+within\s+-?\d\S*)\s+to\s+(?=-?\d)/gi, "$1-to-");
}

/**
 * The sentence that a line says.
 *
 * `<reading> [± <uncertainty>] [at <frequency>] [with crest factor <number>] [to <type>, <type> ...]`; in the place of
 * the reading a signal, as {@link signalReading} takes it. Other spellings are read as {@link plainSpelling} reads them.
 *
 * @param source - what turns a signal into a vibration, where the line does not say it
 * @throws {@link VeladisError} `syntax` and all of {@link parseUncertain} and {@link signalReading}
 */
export function parseSentence(line: string, source: SignalSource = {}): Sentence {
  const plain = requireText(line, FORM).trim();
  if (plain.length > LONGEST) throw new VeladisError("syntax", { expected: FORM, received: shown(line) });
  const words = joinedPeaks(plainSpelling(plain.replace(/\s+/g, " ")));
  const [before, after, ...more] = words.split(/ to /i);
  if (more.length > 0 || after?.trim() === "" || / to$/i.test(words)) {
    throw new VeladisError("syntax", { expected: FORM, received: shown(line) });
  }
  const [written, crest] = (before as string).split(CREST_FACTOR) as [string, string?];
  const isFromSignal = isSignal(written);
  const reading = isFromSignal ? signalReading(written, source) : parseUncertain(written);
  const targets = after === undefined ? [] : after.split(/,| and /).map((target) => target.trim());
  return {
    reading,
    written: isFromSignal ? written.replace(JOINED_RANGE, " to ") : written,
    targets,
    options: crest === undefined ? {} : { crestFactor: parseNumeral(crest, "a crest factor") },
  };
}
