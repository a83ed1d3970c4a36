import { shown, VeladisError } from "../../core/index";
import { pointed } from "./number-cell";

/** Digits with points or commas between, that no letter or digit stands right before. */
const numerals = /(^|[^\w.,]|[^\d.,][.,])(\d+(?:[.,]\d+)+)/g;

/** Digits that another reader takes for thousands: 1,480 or 1.480. */
const THOUSANDS = /^[1-9]\d{0,2}[.,]\d{3}$/;

function notOneNumber(expected: string, received: string): VeladisError {
  return new VeladisError("not-a-number", { expected, received: shown(received) });
}

/** A reading in words whose numbers have a comma for decimals, with points; a number with a point is refused. */
export function pointedReading(written: string): string {
  return written.replaceAll(numerals, (_, before: string, number: string) => {
    if (number.indexOf(",") === number.lastIndexOf(",")) return before + pointed(number);
    throw notOneNumber("a number with one comma, before the decimals, by --decimal-comma", number);
  });
}

function pointedNumber(number: string): string {
  if (THOUSANDS.test(number)) {
    const [whole, decimals] = number.split(/[.,]/) as [string, string];
    const expected = `a number that is read one way: ${whole}${decimals}, or ${whole},${decimals.replace(/0+$/, "") || "0"}`;
    throw notOneNumber(expected, number);
  }
  if (/^\d+[.,]\d+$/.test(number)) return number.replace(",", ".");
  throw notOneNumber("a number with one comma, before the decimals, and no point, by --decimal-comma", number);
}

/**
 * Words on a machine whose numbers have a comma for decimals, with points, as they are read: a comma between two digits
 * parts no facts. What may be thousands is refused with both readings; other numbers may have a point all the same, since
 * words stand in an option too, beside a file with commas.
 *
 * @throws {@link VeladisError} `not-a-number`
 */
export function pointedWords(words: string, decimalComma: boolean): string {
  if (!decimalComma) return words;
  return words.replaceAll(numerals, (_, before: string, number: string) => before + pointedNumber(number));
}
