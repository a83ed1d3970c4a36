import { splitNumeral } from "../core/index";
import { type Amplitude, endBehind } from "../reading/index";
import { coverageEnd, intervalEnd, parseUncertain } from "../uncertainty/index";
import { frequencyEnd, isFrequency, sameFrequencyEnd, stateEnd } from "./reading-end";
import { namesReading } from "./reading-type";
import { beginnings, wordsFrom } from "./words-behind";

/** The place behind a pattern that stands at a place; nothing where it does not. */
function behindPattern(pattern: RegExp, text: string, at: number): number | undefined {
  const sticky = new RegExp(pattern.source, "iy");
  sticky.lastIndex = at;
  return sticky.test(text) ? sticky.lastIndex : undefined;
}

/** The place behind a plus-minus sign and its amount, with a `%` or a bare `dB` behind it; nothing where none stands. */
function amountEnd(text: string, at: number): number | undefined {
  const sign = behindPattern(/\s*(?:±|\+\/[-\u2212])\s*/, text, at);
  if (sign === undefined) return undefined;
  const minus = text[sign] === "-" ? 1 : 0;
  const end = sign + minus + splitNumeral(text.slice(sign + minus))[0].length;
  return behindPattern(/\s*(?:%|dB(?!\s+re)(?![A-Za-z0-9_]))/, text, end) ?? end;
}

/** The place behind the longest words that are something; the place itself where none are. */
function wordsEnd(text: string, at: number, is: (words: string) => boolean): number {
  for (const { text: words, end } of beginnings(wordsFrom(text, at))) if (is(words)) return end;
  return at;
}

/** The end of a frequency with its tolerance, `at 25 ± 0.5 Hz (k=2)`; nothing where none with a tolerance follows. */
function toleranceEnd(text: string, start: number): number | undefined {
  const begin = behindPattern(/\s*(?:\bat\s+|@\s*)/, text, start);
  if (begin === undefined) return undefined;
  const isUnit = (words: string): boolean => isFrequency(`1 ${words}`);
  const digits = splitNumeral(text.slice(begin))[0].length;
  const shared = amountEnd(text, begin + digits);
  const own = shared ?? amountEnd(text, wordsEnd(text, begin, isFrequency));
  return own === undefined ? undefined : coverageEnd(text, wordsEnd(text, own, isUnit));
}

/** A reading with an uncertainty, and where it ends. */
interface UncertainLiteral {
  readonly end: number;
  readonly value: Amplitude;
}

/**
 * The reading with its uncertainty, or that of its frequency, which begins with the number at a place: in the forms of
 * {@link parseUncertain}, with what is printed behind it. Nothing where no plus-minus sign stands in it.
 *
 * @throws {@link VeladisError} as {@link parseUncertain}
 */
export function uncertainAt(text: string, start: number, digits: string): UncertainLiteral | undefined {
  const behindDigits = start + digits.length;
  const amount = amountEnd(text, behindDigits);
  const shared = amount === undefined ? undefined : coverageEnd(text, amount);
  const type = wordsEnd(text, shared ?? behindDigits, namesReading);
  const own = shared === undefined && type > behindDigits ? amountEnd(text, stateEnd(text, type)) : undefined;
  const subject = own === undefined ? type : wordsEnd(text, own, namesReading);
  const within =
    shared === undefined && own === undefined && type > behindDigits ? intervalEnd(text, stateEnd(text, type)) : 0;
  const isWithin = within > stateEnd(text, type);
  const covered = isWithin ? within : stateEnd(text, coverageEnd(text, subject));
  const tolerance = type > behindDigits ? toleranceEnd(text, covered) : undefined;
  if (shared === undefined && own === undefined && tolerance === undefined && !isWithin) return undefined;
  const at = tolerance ?? frequencyEnd(text, covered);
  const twice = tolerance === undefined && at > covered ? sameFrequencyEnd(text, at) : at;
  const end = endBehind(text, twice);
  // what was assumed belongs to the reading, and is read with it: before the frequency
  const written = text.slice(start, covered) + text.slice(twice, end) + text.slice(covered, at);
  return { end, value: parseUncertain(written) };
}
