/** Most words that a reading type or a frequency has: `dB re ISO/TS 7849 velocity`, `inches per second zero to peak`. */
const MOST_WORDS = 6;

/** A word of the text with the place where it ends. */
interface Word {
  readonly text: string;
  readonly end: number;
}

/** The words behind a place, up to anything that can only be arithmetic. */
export function wordsFrom(text: string, start: number): Word[] {
  const words: Word[] = [];
  const word = /\s*([^\s+*(),=<>;!?[\]{}"|&~:@±]+)/y;
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
export function* beginnings(words: readonly Word[]): Generator<Word> {
  for (let count = words.length; count > 0; count--) {
    const head = words.slice(0, count - 1).map(({ text }) => text);
    const last = words[count - 1] as Word;
    for (const { text, end } of [last, ...cuts(last)]) yield { text: [...head, text].join(" "), end };
  }
}
