import { type Amplitude, format, historyOf, isUncertain, type Step } from "../../reading/index";
import { formatUncertain, type UncertaintyOf, uncertaintyOf } from "../../uncertainty/index";

/** How well an answer is known; undefined where nobody said. */
export function knownUncertainty(answer: Amplitude): UncertaintyOf | undefined {
  return isUncertain(historyOf(answer)) ? uncertaintyOf(answer) : undefined;
}

/** An answer with its uncertainty, where it has one; that has two digits, so that the digits asked for do not count. */
export function uncertainText(answer: Amplitude, digits: number): string {
  return (knownUncertainty(answer)?.expanded ?? 0) > 0 ? formatUncertain(answer) : format(answer, { digits });
}

/** What was taken of a bare uncertainty in a history; nothing where none was. */
export function boundNotes(history: readonly Step[]): string[] {
  const isBound = history.some((step) =>
    [step.uncertainty, step.hertzUncertainty].some((one) => one?.distribution === "rectangular"),
  );
  return isBound ? ["± without k taken as a bound with equal chance within"] : [];
}

/** What is to be told of the uncertainty of an answer, in brackets: what was taken of a bare one, and how it was drawn. */
export function uncertaintyNote(answer: Amplitude): string {
  const known = knownUncertainty(answer);
  if (known === undefined) return "";
  const notes = [
    ...boundNotes(historyOf(answer)),
    ...(known.parts.length > 1 ? ["independent inputs"] : []),
    ...(known.draws === undefined ? [] : [`${known.method}, ${known.draws} draws, seed ${known.seed}`]),
  ];
  return notes.length === 0 ? "" : `(${notes.join("; ")})`;
}
