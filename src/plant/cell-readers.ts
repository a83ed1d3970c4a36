import { currentLoop, sensor } from "../amplitude/index";
import {
  type NumeralOptions,
  nearest,
  numeralAndUnit,
  parseNumeral,
  plainNumerals,
  pointedWords,
  requireNonNegative,
  requirePositive,
  shown,
  splitNumeral,
  VeladisError,
} from "../core/index";
import { bandOfText } from "../frequency/index";
import { type Amplitude, isReadingType, parseAmplitude } from "../reading/index";
import type { DayOrder } from "./calendar-day";

/** How the cells of a list are written. */
export interface CellOptions extends NumeralOptions {
  /** The order of day and month of dates that have the year last; such dates are refused if it is not given. */
  readonly dates?: DayOrder;
}

/** A text whose numbers have a point for decimals; what may be thousands is refused where a comma was told. */
export function pointed(cell: string, { decimal }: CellOptions): string {
  return decimal === "," ? pointedWords(cell, true) : cell;
}

/** The text of a number or a reading with a point for decimals: told a comma, 3,545 is no thousands. */
export function pointedValue(cell: string, { decimal }: CellOptions): string {
  return plainNumerals(cell, decimal === undefined ? undefined : { decimal }).trim();
}

/** A number without a unit: its heading names the unit. */
export function numberOf(cell: string, options: CellOptions, what: string): number {
  const text = plainNumerals(cell, options.decimal === undefined ? undefined : { decimal: options.decimal }).trim();
  const [digits, rest] = splitNumeral(text);
  if (digits !== "" && rest !== "") {
    throw new VeladisError("not-a-number", {
      expected: `${what}, a number alone: the heading names the unit`,
      received: shown(cell),
    });
  }
  return requireNonNegative(parseNumeral(text, what), what);
}

/** A whole number from 1. */
export function countOf(cell: string, options: CellOptions, what: string, most = 1e6): number {
  const count = numberOf(cell, options, what);
  if (Number.isSafeInteger(count) && count >= 1 && count <= most) return count;
  throw new VeladisError("out-of-range", {
    expected: `${what}, a whole number from 1 to ${most}`,
    received: shown(cell),
  });
}

/** A reading with its unit. */
export function readingOf(cell: string, options: CellOptions): Amplitude {
  return parseAmplitude(cell, options.decimal === undefined ? undefined : { decimal: options.decimal });
}

/** A setpoint: a reading above zero. */
export function setpointOf(cell: string, options: CellOptions, what: string): Amplitude {
  const reading = readingOf(cell, options);
  requirePositive(reading.value, `a reading above zero: ${what}`);
  return reading;
}

/** A share or an amount, as text with a point for decimals. */
export function amountText(cell: string, options: CellOptions, what: string, decibels = false): string {
  const text = plainNumerals(cell, options.decimal === undefined ? undefined : { decimal: options.decimal }).trim();
  const [digits, unit] = numeralAndUnit(text, what);
  requireNonNegative(parseNumeral(digits, what), what);
  if (/^(?:%|percent|per cent)$/i.test(unit) || (decibels && /^dB$/i.test(unit)) || isReadingType(unit)) return text;
  throw new VeladisError("syntax", { expected: what, received: shown(cell) });
}

/** A word of a closed list, without regard to case. */
export function choiceOf<const Word extends string>(cell: string, words: readonly Word[], what: string): Word {
  const plain = cell.toLowerCase().replace(/[\s_]+/g, " ");
  const found = words.find((word) => word === plain);
  if (found !== undefined) return found;
  throw new VeladisError("unknown-option", {
    expected: what,
    received: shown(cell),
    didYouMean: plain.length > 1 ? nearest(plain, words) : [],
    allowed: words,
  });
}

/** The sensitivity of a sensor, checked, as text. */
export function sensorText(cell: string, options: CellOptions): string {
  const text = pointed(cell, options);
  sensor(text);
  return text;
}

/** The range of a loop, checked, as text. */
export function loopText(cell: string, options: CellOptions): string {
  const text = pointed(cell, options);
  currentLoop(text);
  return text;
}

/** A band by its edges. */
export function bandOf(cell: string, options: CellOptions) {
  const [low, high] = bandOfText(pointed(cell, options));
  if (low > 0 && low < high) return { lowest: { hertz: low }, highest: { hertz: high } };
  throw new VeladisError("out-of-range", {
    expected: "a band that rises, such as 10 Hz to 1000 Hz",
    received: shown(cell),
  });
}
