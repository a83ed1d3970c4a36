import { parseNumeral, shown, splitNumeral, VeladisError } from "../core/index";
import { detectors, findDetector } from "../detectors/index";
import { frequency } from "../frequency/index";
import { type Amplitude, parseAmplitude } from "../reading/index";
import { findUnit } from "../units/index";
import type { LevelDifference } from "./value";

/** An amplitude or a number of decibels written within an expression, and where it stands. */
export interface Literal {
  readonly start: number;
  readonly end: number;
  readonly value: Amplitude | LevelDifference;
}

/** Most words that a reading type or a frequency has: `dB re ISO/TS 7849 velocity`, `inches per second zero to peak`. */
const MOST_WORDS = 6;

/** A word of the text with the place where it ends. */
interface Word {
  readonly text: string;
  readonly end: number;
}

/** The words behind a place, up to anything that can only be arithmetic. */
function wordsFrom(text: string, start: number): Word[] {
  const words: Word[] = [];
  const word = /\s*([^\s+*(),=<>;!?[\]{}"|&~:@]+)/y;
  word.lastIndex = start;
  for (let found = word.exec(text); found !== null && words.length < MOST_WORDS; found = word.exec(text)) {
    const [, one = ""] = found;
    if (/^[-/^%]+$/.test(one)) break;
    words.push({ text: one, end: word.lastIndex });
  }
  return words;
}

/** Shorter readings of the last word, cut before an operator that may stand in a unit: `rms/2`, `rms-1`. */
function cuts({ text, end }: Word): Word[] {
  return [...text.matchAll(/[-/^%]/g)]
    .filter(({ index }) => index > 0)
    .map(({ index }) => ({ text: text.slice(0, index), end: end - text.length + index }))
    .reverse();
}

/** Beginnings of the words, longest first, with shorter readings of each last word. */
function* beginnings(words: readonly Word[]): Generator<Word> {
  for (let count = words.length; count > 0; count--) {
    const head = words.slice(0, count - 1).map(({ text }) => text);
    const last = words[count - 1] as Word;
    for (const { text, end } of [last, ...cuts(last)]) yield { text: [...head, text].join(" "), end };
  }
}

function namesReading(text: string): boolean {
  if (/^dB re[:f]? \S/i.test(text)) return true;
  const words = text.split(" ");
  for (let at = 1; at < words.length; at++) {
    if (findDetector(words.slice(at).join(" ")) !== undefined)
      return findUnit(words.slice(0, at).join(" ")) !== undefined;
  }
  return false;
}

/** The end of the frequency that follows `at` or `@`; the place itself if none follows. */
function frequencyEnd(text: string, start: number): number {
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

/** The number of decibels without a reference that begins with the number at a place, or undefined when it is none. */
function decibelsAt(text: string, start: number, digits: string, names: ReadonlySet<string>): Literal | undefined {
  const unit = /\s*(dB)(?![A-Za-z0-9_])/iy;
  unit.lastIndex = start + digits.length;
  const word = unit.exec(text)?.[1];
  if (word === undefined || names.has(word)) return undefined;
  const end = unit.lastIndex;
  // what begins like a reference or a detector is a level that lacks something
  const more = /^\s+(re[:f]?|rms)(?![A-Za-z0-9_])/i.exec(text.slice(end))?.[0];
  if (more !== undefined) parseAmplitude(text.slice(start, end) + more);
  return { start, end, value: Object.freeze({ decibels: parseNumeral(digits, "a number of dB") }) };
}

/** The reading that begins with the number at a place, or undefined when it is a plain number. */
function literalAt(text: string, start: number, digits: string, names: ReadonlySet<string>): Literal | undefined {
  const words = wordsFrom(text, start + digits.length);
  for (const { text: type, end: typeEnd } of beginnings(words)) {
    if (!namesReading(type)) continue;
    try {
      const end = frequencyEnd(text, typeEnd);
      return { start, end, value: parseAmplitude(text.slice(start, end)) };
    } catch (error) {
      // a level takes in words that are not its own, such as an operator behind it
      if (!/^dB/i.test(type) || type.split(" ").length < 4) throw error;
    }
  }
  const difference = decibelsAt(text, start, digits, names);
  if (difference !== undefined) return difference;
  const first = words[0]?.text ?? "";
  if (findUnit(first) !== undefined && !names.has(first)) {
    throw new VeladisError("missing-detector", {
      expected: `a detector after the unit, as in "${digits} ${first} rms"`,
      received: shown(`${digits} ${first}`),
      allowed: Object.keys(detectors),
    });
  }
  return undefined;
}

/** The end of the string that begins at a place. */
function stringEnd(text: string, start: number): number {
  const end = text.indexOf(text[start] as string, start + 1);
  return end < 0 ? text.length : end + 1;
}

/**
 * The amplitudes written within an expression, in order; what stands in quotes is left alone.
 *
 * @param names - names of variables, which stand above units: with a variable `m`, `2 m` is a product
 * @throws {@link VeladisError} `missing-detector` for a number with a unit alone, and as {@link parseAmplitude}
 */
export function literalsOf(text: string, names: ReadonlySet<string>): Literal[] {
  const found: Literal[] = [];
  let at = 0;
  while (at < text.length) {
    const letter = text[at] as string;
    if (letter === '"') {
      at = stringEnd(text, at);
      continue;
    }
    if (/[A-Za-z_]/.test(letter)) {
      at += (/^[A-Za-z0-9_]+/.exec(text.slice(at)) as RegExpExecArray)[0].length;
      continue;
    }
    const [digits] = /[\d.]/.test(letter) ? splitNumeral(text.slice(at)) : [""];
    const literal = digits === "" ? undefined : literalAt(text, at, digits, names);
    if (literal !== undefined) found.push(literal);
    at = literal?.end ?? at + Math.max(1, digits.length);
  }
  return found;
}
