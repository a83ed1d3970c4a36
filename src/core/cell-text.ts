import { visibleText } from "./visible-text";

/** What a spreadsheet takes for the beginning of a formula, in its wide form too, whatever blanks stand before it. */
const formula = /^[\s']*[=+\-@\uff1d\uff0b\uff0d\uff20]/;

/**
 * A text as a cell that is added to a table, so that no spreadsheet runs it: an apostrophe stands before what would
 * begin a formula, and before apostrophes before that. Whoever takes one apostrophe off such a cell has the text.
 * Numbers are none of its business.
 */
export function cellText(text: string): string {
  const plain = visibleText(text);
  return formula.test(plain) ? `'${plain}` : plain;
}
