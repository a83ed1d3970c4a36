import { type ConvertedAmplitude, convertAmplitude, format } from "../amplitude/index";
import type { Sentence } from "../repl/index";

/** What was assumed, in the brackets behind an answer: `(sine)`. */
export function assumedText({ assumed, crestFactor }: ConvertedAmplitude): string {
  const words = assumed.map((name) =>
    name === "one-frequency" ? "one frequency" : name === "crest-factor" ? `crest factor ${crestFactor}` : name,
  );
  return words.length === 0 ? "" : `(${words.join(", ")})`;
}

/** The answers of a sentence, one a target. */
export function answersOf({ reading, options }: Sentence, targets: readonly string[]): ConvertedAmplitude[] {
  return targets.map((target) => convertAmplitude(reading, target, options));
}

/** An answer as a JSON object: the converted amplitude, its text, and the reading it came from. */
export function answerObject(answer: ConvertedAmplitude, sentence: Sentence, digits: number, extra: object = {}) {
  return {
    ...extra,
    ...answer,
    text: format(answer, { digits }),
    from: { written: sentence.written, ...sentence.reading },
  };
}
