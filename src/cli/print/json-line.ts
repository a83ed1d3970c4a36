import { jsonText } from "../../core/index";
import { type AnswerKind, type AnswerOf, envelopeOf } from "../../json/index";

/** A number that JSON has none for as a word; those of an answer are words already. */
const inWords = (_: string, value: unknown): unknown =>
  value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY ? String(value) : value;

/**
 * An answer as `--json` prints it: a line that `fromJson` of veladis/json reads.
 *
 * @param told - what the command tells beside it, under keys that the answer does not have
 */
export function jsonLine<const Kind extends AnswerKind>(kind: Kind, answer: AnswerOf<Kind>, told: object = {}): string {
  const { version, answer: name, ...rest } = envelopeOf(kind, answer);
  return `${jsonText({ version, answer: name, ...told, ...rest }, inWords)}\n`;
}
