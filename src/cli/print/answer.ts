import { type ConvertedAmplitude, convertAmplitude } from "../../amplitude/index";
import type { Sentence } from "../../sentence/index";
import type { UncertaintyOf } from "../../uncertainty/index";
import { explainedSteps } from "./explained";
import { jsonLine } from "./json-line";
import { knownUncertainty, uncertainText } from "./uncertain";

/** The answers of a sentence, one a target. */
export function answersOf({ reading, options }: Sentence, targets: readonly string[]): ConvertedAmplitude[] {
  return targets.map((target) => convertAmplitude(reading, target, options));
}

/** The number of an answer as it is written, without its type: for tables, whose headings say the type. */
export function numberText(answer: ConvertedAmplitude, digits: number): string {
  const [number, sign, expanded] = uncertainText(answer, digits).split(" ");
  return sign === "±" ? `${number} ± ${expanded}` : (number as string);
}

/** How well an answer is known, beside the answer, which has value and history itself. */
function toldUncertainty({ value: _, type: __, history: ___, ...rest }: UncertaintyOf) {
  return rest;
}

/** An answer as a line of JSON: the converted amplitude, its text, and the reading it came from. */
export function answerLine(
  answer: ConvertedAmplitude,
  sentence: Sentence,
  { digits, explain }: { readonly digits: number; readonly explain: boolean },
  extra: object = {},
): string {
  const uncertainty = knownUncertainty(answer);
  const from = { written: sentence.written, ...sentence.reading };
  return jsonLine(
    "conversion",
    { ...answer, from },
    {
      ...extra,
      // `uncertainty` would be a part of the reading, which it is not
      ...(uncertainty && { uncertaintyOf: toldUncertainty(uncertainty) }),
      ...explainedSteps(explain, ["", answer]),
      text: uncertainText(answer, digits),
    },
  );
}
