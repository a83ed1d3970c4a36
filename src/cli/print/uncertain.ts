import { type Amplitude, format, historyOf, isUncertain } from "../../reading/index";
import { formatUncertain, type UncertaintyOf, uncertaintyOf } from "../../uncertainty/index";

/** How well an answer is known; undefined where nobody said. */
export function knownUncertainty(answer: Amplitude): UncertaintyOf | undefined {
  return isUncertain(historyOf(answer)) ? uncertaintyOf(answer) : undefined;
}

/** An answer with its uncertainty, where it has one; that has two digits, so that the digits asked for do not count. */
export function uncertainText(answer: Amplitude, digits: number): string {
  return (knownUncertainty(answer)?.expanded ?? 0) > 0 ? formatUncertain(answer) : format(answer, { digits });
}

/** What is to be told of the uncertainty of an answer, in brackets: what was taken of a bare one, and how it was drawn. */
export function uncertaintyNote(answer: Amplitude): string {
  const known = knownUncertainty(answer);
  if (known === undefined) return "";
  const stated = historyOf(answer).flatMap(({ uncertainty, hertzUncertainty }) => [uncertainty, hertzUncertainty]);
  const isBound = stated.some((one) => one?.distribution === "rectangular");
  const notes = [
    ...(isBound ? ["± without k taken as a bound with equal chance within"] : []),
    ...(known.parts.length > 1 ? ["independent inputs"] : []),
    ...(known.draws === undefined ? [] : [`${known.method}, ${known.draws} draws, seed ${known.seed}`]),
  ];
  return notes.length === 0 ? "" : `(${notes.join("; ")})`;
}
