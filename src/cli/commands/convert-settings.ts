import type { SignalSource } from "../../amplitude/index";
import { frequency } from "../../frequency/index";
import { agreedHertz } from "../../reading/index";
import { joinedPeaks, parseSentence, plainSpelling, type Sentence } from "../../sentence/index";
import type { WrittenAs } from "../delimited/written-as";
import { type ReadAtState, readAtState } from "../input/state-at-reading";
import { withSpeedUnit } from "../options/speed-unit";

/** What the options say, for the modes of `convert`. */
export interface ConvertSettings {
  readonly targets: readonly string[];
  /** Reading type of inputs that are bare numbers. */
  readonly from: string | undefined;
  readonly at: string | undefined;
  readonly file: string | undefined;
  readonly column: string | undefined;
  /** Unit of bare numbers behind `at`. */
  readonly speedUnit: string | undefined;
  /** What turns readings in volts, mA or per cent into vibrations. */
  readonly source: SignalSource;
  /** How the file of the column is written. */
  readonly written: WrittenAs;
  readonly digits: number;
  /** Whether the arithmetic is printed below the answer. */
  readonly explain: boolean;
  readonly json: boolean;
  readonly keepGoing: boolean;
}

/** A sentence, and what was noted of the machine beside its reading. */
export interface NotedSentence extends Sentence {
  readonly state: Omit<ReadAtState, "reading">;
}

/** What a line says, in plain spelling and with the type and the unit of speeds that the options give to bare numbers. */
export function typedLine(line: string, { from, speedUnit }: ConvertSettings) {
  const { reading, ...state } = readAtState(line, speedUnit);
  const spelt = withSpeedUnit(plainSpelling(reading), speedUnit);
  return { text: from === undefined ? spelt : `${spelt} ${plainSpelling(from)}`, state };
}

/** The sentence of a line, with the type and frequency that the options give to bare numbers. */
export function sentenceOf(line: string, settings: ConvertSettings): NotedSentence {
  const { at, source } = settings;
  const { text, state } = typedLine(line, settings);
  const typed = joinedPeaks(text);
  if (at === undefined) return { ...parseSentence(typed, source), state };
  if (!/ at |@/.test(typed)) {
    return { ...parseSentence(typed.replace(/( to .*|$)/i, ` at ${at}$1`), source), state };
  }
  const sentence = parseSentence(typed, source);
  agreedHertz(sentence.reading.hertz, frequency(at));
  return { ...sentence, state };
}
