import { type ConvertedAmplitude, convertAmplitude } from "../../amplitude/index";
import { format } from "../../reading/index";
import type { Sentence } from "../../sentence/index";
import { explainedSteps } from "./explained";

/** The answers of a sentence, one a target. */
export function answersOf({ reading, options }: Sentence, targets: readonly string[]): ConvertedAmplitude[] {
  return targets.map((target) => convertAmplitude(reading, target, options));
}

/** The number of an answer as {@link format} writes it, without its type: for tables, whose headings say the type. */
export function numberText(answer: ConvertedAmplitude, digits: number): string {
  return format(answer, { digits }).split(" ")[0] as string;
}

/** An answer as a JSON object: the converted amplitude, its text, and the reading it came from. */
export function answerObject(
  answer: ConvertedAmplitude,
  sentence: Sentence,
  { digits, explain }: { readonly digits: number; readonly explain: boolean },
  extra: object = {},
) {
  return {
    ...extra,
    ...answer,
    ...explainedSteps(explain, ["", answer]),
    text: format(answer, { digits }),
    from: { written: sentence.written, ...sentence.reading },
  };
}
