import { parseNumeral, shown, splitNumeral, VeladisError } from "../core/index";
import { detectors } from "../detectors/index";
import { type Amplitude, behindReading, endBehind, ownHistory, parseAmplitude, stateBehind } from "../reading/index";
import { findUnit } from "../units/index";
import { readingEnd, stateEnd } from "./reading-end";
import { namesReading } from "./reading-type";
import { uncertainAt } from "./uncertain-literal";
import type { LevelDifference } from "./value";
import { beginnings, wordsFrom } from "./words-behind";

/** An amplitude or a number of decibels written within an expression, and where it stands. */
export interface Literal {
  readonly start: number;
  readonly end: number;
  readonly value: Amplitude | LevelDifference;
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
  const whole = endBehind(text, stateEnd(text, end));
  return { start, end: whole, value: differenceBehind(parseNumeral(digits, "a number of dB"), text.slice(end, whole)) };
}

/** A number of decibels with what stands behind it, as it is printed. */
function differenceBehind(decibels: number, written: string): LevelDifference {
  const [before, { crestFactor, assumed, note }] = behindReading(written);
  const [, state] = stateBehind(before);
  const step = { does: "given", value: decibels, type: "dB" } as const;
  return Object.freeze({
    decibels,
    ...(crestFactor !== undefined && { crestFactor }),
    ...(state !== undefined && { state }),
    ...(assumed !== undefined &&
      note !== undefined && { assumed, history: ownHistory([Object.freeze({ ...step, assumed, note })]) }),
  });
}

/** The reading that begins with the number at a place, or undefined when it is a plain number. */
function literalAt(text: string, start: number, digits: string, names: ReadonlySet<string>): Literal | undefined {
  const uncertain = uncertainAt(text, start, digits);
  if (uncertain !== undefined) return { start, ...uncertain };
  const words = wordsFrom(text, start + digits.length);
  for (const { text: type, end: typeEnd } of beginnings(words)) {
    if (!namesReading(type)) continue;
    try {
      const end = readingEnd(text, typeEnd);
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

/** Whether a minus at a place belongs to the number behind it: nothing stands before it that it could be taken off. */
function isSign(text: string, at: number): boolean {
  return text[at] === "-" && /(^|[-+*/^%=<>([,])\s*$/.test(text.slice(0, at));
}

/** As {@link literalAt}; below zero there are levels alone, and the sign of all else is an operator. */
function signedLiteral(text: string, at: number, digits: string, names: ReadonlySet<string>): Literal | undefined {
  if (!digits.startsWith("-")) return literalAt(text, at, digits, names);
  return /^\s*(?:(?:±|\+\/-)\s*[\d.]+\s*)?dB\s+re/i.test(text.slice(at + digits.length))
    ? literalAt(text, at, digits, names)
    : undefined;
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
    const [digits] = /[\d.]/.test(letter) || isSign(text, at) ? splitNumeral(text.slice(at)) : [""];
    const literal = digits === "" ? undefined : signedLiteral(text, at, digits, names);
    if (literal !== undefined) found.push(literal);
    else if (letter === "-") {
      at++;
      continue;
    }
    at = literal?.end ?? at + Math.max(1, digits.length);
  }
  return found;
}
