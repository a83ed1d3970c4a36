import { type ConvertedAmplitude, convertAmplitude } from "../../amplitude/index";
import type { Sentence } from "../../sentence/index";
import { uncertainText } from "./uncertain";

/** The answers of a sentence, one a target. */
export function answersOf({ reading, options }: Sentence, targets: readonly string[]): ConvertedAmplitude[] {
  return targets.map((target) => convertAmplitude(reading, target, options));
}

/** The number of an answer as it is written, without its type: for tables, whose headings say the type. */
export function numberText(answer: ConvertedAmplitude, digits: number): string {
  const [number, sign, expanded] = uncertainText(answer, digits).split(" ");
  return sign === "±" ? `${number} ± ${expanded}` : (number as string);
}
