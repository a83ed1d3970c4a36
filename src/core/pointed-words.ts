import { shown, VeladisError } from "./error";

/** Digits with points or commas between, that no letter or digit stands right before. */
const numerals = /(^|[^\w.,]|[^\d.,][.,])(\d+(?:[.,]\d+)+)/g;

/** Digits that another reader takes for thousands: 1,480 or 1.480. */
const THOUSANDS = /^[1-9]\d{0,2}[.,]\d{3}$/;

function pointedNumber(number: string): string {
  const [whole = "", decimals = "", ...more] = number.split(/[.,]/);
  const isOpen = THOUSANDS.test(number);
  if (!isOpen && more.length === 0) return `${whole}.${decimals}`;
  throw new VeladisError("not-a-number", {
    expected: isOpen
      ? `a number that is read one way: ${whole}${decimals}, or ${whole},${decimals.replace(/0+$/, "") || "0"}`
      : "a number with one comma, before the decimals, and no point, by --decimal-comma",
    received: shown(number),
  });
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
