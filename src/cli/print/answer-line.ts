import type { ConvertedAmplitude } from "../../amplitude/index";
import type { Sentence } from "../../sentence/index";
import type { UncertaintyOf } from "../../uncertainty/index";
import { explainedSteps } from "./explained";
import { jsonLine } from "./json-line";
import { knownUncertainty, uncertainText } from "./uncertain";

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
