import { parseNumeral, shown, VeladisError } from "../core/index";

/** What says how an expanded uncertainty is meant: its coverage factor, and the words it is told by. */
export interface Coverage {
  readonly k: number;
  /** `k=2`, or `95 %, k=1.96`. */
  readonly words: string;
}

const FORM =
  "a coverage factor of 1 to 10 such as (k=2) or (2 sigma), or (95 %), which is 1.96; without one ± is a bound with equal chance within";

/** A bracket that says how an uncertainty is meant, or tries to; and `k=2` without one. */
const said = /\(([^()]*?(?:[=%\u03c3]|sigma)[^()]*)\)|(?<![\w.])(k\s*=\s*\d[\d.]*)(?![\w.])/i;

/** What it says in its known forms: a factor, a share of a bell, or both. */
const known = /^(?:(?:k\s*=\s*([^,;]+)|([\d.]+)\s*(?:\u03c3|sigma))[,;]?)?\s*(95\s*%)?$/i;

/** True for a text that says how an uncertainty is meant, well or badly. */
export function hasCoverage(text: string): boolean {
  return said.test(text);
}

/** The place behind the words at a place that say how an uncertainty is meant; the place itself where none stand there. */
export function coverageEnd(text: string, at: number): number {
  const here = new RegExp(`[\\s,;]*(?:${said.source})`, "iy");
  here.lastIndex = at;
  return here.test(text) ? here.lastIndex : at;
}

function coverageOf(words: string): Coverage {
  const [all, factor, sigmas, share] = known.exec(words.trim()) ?? [];
  const digits = factor ?? sigmas;
  const k = digits === undefined ? 1.96 : parseNumeral(digits.trim(), FORM);
  // a certificate says both of one uncertainty: k = 2 covers 95.45 %
  const isOther = share !== undefined && (k < 1.96 || k > 2.01);
  if (all !== undefined && k >= 1 && k <= 10 && !isOther) {
    return { k, words: digits === undefined ? `95 %, k=${k}` : `k=${k}` };
  }
  throw new VeladisError(all === undefined ? "syntax" : "out-of-range", { expected: FORM, received: shown(words) });
}

/**
 * A text without the words in it that say how an uncertainty is meant, and what they say.
 *
 * @throws {@link VeladisError} `syntax` for two, and for words that say it in no known form, `out-of-range` for a factor
 *   below 1 or above 10 and for a share that is not that of the factor, and as `parseNumeral`
 */
export function withoutCoverage(text: string): [rest: string, coverage: Coverage | undefined] {
  const found = said.exec(text);
  if (found === null) return [text, undefined];
  const [all, words, alone = words] = found;
  const rest = text.slice(0, found.index).replace(/[,;]\s*$/, "") + text.slice(found.index + all.length);
  return [rest, coverageOf(said.test(rest) ? text : (alone as string))];
}
