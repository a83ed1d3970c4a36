/**
 * What is obeyed and not shown: control characters, line and paragraph separators, what turns the direction of writing;
 * and what no XML may hold: halves of surrogate pairs and the two that are no characters.
 */
// in numbers: an engine looks \p{Cc} and \p{Cs} up where it reads them, which takes a tenth of all that loading takes
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const hidden = /[\0-\x1f\x7f-\x9f\ud800-\udfff\u2028-\u202e\u2066-\u2069\ufffe\uffff]/gu;

function code(one: string): string {
  return `\\u${one.charCodeAt(0).toString(16).padStart(4, "0")}`;
}

/**
 * A text from outside as a terminal may print it, and as the escapers of other media take it: what would be obeyed
 * stands there as its code, such as `\u001b`; line ends and tabs too.
 */
export function visibleText(text: string): string {
  return text.replace(hidden, code);
}

/** The same of text that the program made: its line ends stay. In JSON the codes mean what they stand for. */
export function visibleLines(text: string): string {
  return text.replace(hidden, (one) => (one === "\n" ? one : code(one)));
}
