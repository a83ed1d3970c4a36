import { isAnswered, shown, VeladisError } from "../core/index";
import { frequency } from "../frequency/index";
import { endBehind, stateBehind } from "../reading/index";
import { beginnings, wordsFrom } from "./words-behind";

/** The end of the frequency that follows `at` or `@`; the place itself if none follows. */
export function frequencyEnd(text: string, start: number): number {
  const at = /\s*(?:\bat\s+|@\s*)/iy;
  at.lastIndex = start;
  if (at.exec(text) === null) return start;
  const begin = at.lastIndex;
  let refused: unknown;
  for (const { text: candidate, end } of beginnings(wordsFrom(text, begin))) {
    try {
      frequency(candidate);
      return end;
    } catch (error) {
      refused ??= error;
    }
  }
  throw (
    refused ??
    new VeladisError("syntax", {
      expected: 'a frequency after "at", such as "1500 r/min"',
      received: shown(text.slice(start)),
    })
  );
}

/** The place behind the state of a loop, `(above range)`; the place itself if none follows. */
export function stateEnd(text: string, start: number): number {
  const bracket = /\s*\([^()]*\)/y;
  bracket.lastIndex = start;
  const [words] = bracket.exec(text) ?? [];
  return words !== undefined && stateBehind(words)[1] !== undefined ? bracket.lastIndex : start;
}

/** The place behind a frequency that is written once more in brackets, `(1500 r/min)`; the place itself if it is not. */
export function sameFrequencyEnd(text: string, start: number): number {
  const bracket = /\s*\(([^()]*)\)/y;
  bracket.lastIndex = start;
  const words = bracket.exec(text)?.[1];
  return words !== undefined && /^\s*[\d.]+\s*[^\s\d.*+-]/.test(words) && isFrequency(words)
    ? bracket.lastIndex
    : start;
}

/** True for a text that says a frequency. */
export function isFrequency(text: string): boolean {
  return isAnswered(() => frequency(text));
}

/** The place where all ends that belongs to a reading behind its type: state, frequency, crest factor, what was assumed. */
export function readingEnd(text: string, typeEnd: number): number {
  const behindState = stateEnd(text, typeEnd);
  const behindFrequency = frequencyEnd(text, behindState);
  return endBehind(text, behindFrequency > behindState ? sameFrequencyEnd(text, behindFrequency) : behindState);
}
