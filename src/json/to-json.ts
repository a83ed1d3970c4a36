import { jsonText, withParameters } from "../core/index";
import type { AnswerKind, AnswerOf } from "./answers";
import { envelopeOf } from "./envelope";

/**
 * An answer of this library as one line of JSON, that {@link fromJson} reads back: its version, its kind, the answer, and
 * the sources and histories that it cites, each written once.
 *
 * A number that JSON has none for is a word: `"Infinity"`, `"-Infinity"`, `"-0"`. Samples are a list. Keys that
 * the kind does not have are written too, if they hold plain data.
 *
 * @param kind - what the answer is, such as `"verdict"`; with `[]` behind it a list of such, as in `"trip event[]"`
 * @throws {@link VeladisError} `unknown-option` for a kind there is none of; `missing-fact` and `wrong-type` for an answer
 *   of another kind, or a value that JSON cannot hold
 * @example
 * ```ts
 * import { convertAmplitude, format } from "veladis";
 * import { fromJson, toJson } from "veladis/json";
 *
 * const text = toJson("amplitude", convertAmplitude("3.81 mm/s rms", "in/s rms"));
 * JSON.parse(text).version; // => 1
 * format(fromJson("amplitude", text)); // => "0.150 in/s rms"
 * ```
 */
export function toJson<const Kind extends AnswerKind>(kind: Kind, answer: AnswerOf<Kind>): string {
  return withParameters({ kind, answer }, () => {
    return jsonText(envelopeOf(kind, answer));
  });
}
