import { jsonText } from "../../core/index";
import { type AnswerKind, type AnswerOf, envelopeOf } from "../../json/index";

/** What is told beside an answer, with words for numbers that JSON has none for. */
function toldData<Told extends object>(told: Told): Told {
  const word = (_: string, value: unknown): unknown =>
    value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY ? String(value) : value;
  return JSON.parse(JSON.stringify(told, word));
}

/**
 * An answer as `--json` prints it: a line that `fromJson` of veladis/json reads.
 *
 * @param told - what the command tells beside it, under keys that the answer does not have
 */
export function jsonLine<const Kind extends AnswerKind>(kind: Kind, answer: AnswerOf<Kind>, told: object = {}): string {
  const { version, answer: name, ...rest } = envelopeOf(kind, answer);
  return `${jsonText({ version, answer: name, ...toldData(told), ...rest })}\n`;
}
