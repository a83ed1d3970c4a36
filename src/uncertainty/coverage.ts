import { lazily, parseNumeral, shown, VeladisError } from "../core/index";

/** What says how an expanded uncertainty is meant: its coverage factor, and the words it is told by. */
export interface Coverage {
  readonly k: number;
  /** `k=2`, or `95 %, k=1.96`. */
  readonly words: string;
}

const COVERAGE = "a coverage factor of 1 to 10, such as (k=2)";

const FORM =
  "how an uncertainty is meant, written (k=2), (2 sigma) or (95 %), the last as 1.96 standard deviations of a bell; nothing for a bound with equal chance within";

/** The share of a bell within plus and minus so many standard deviations that certificates state; rounded up to the next digit. */
const OF_95_PERCENT = 1.96;
/** A certificate says both for one uncertainty: k = 2 covers 95.45 %. */
const MOST_FOR_95_PERCENT = 2.01;

/** What says how an uncertainty is meant, in a text; made when a text is first read. */
const patterns = /* @__PURE__ */ lazily(() => {
  // a bracket that says so, or tries to
  const bracket = "\\s*\\(([^()%=\u03c3]*(?:k\\s*=|%|\u03c3|\\bsigma\\b|=)[^()]*)\\)";
  // the same without a bracket; a comma within is a decimal one, and refused
  const factor =
    "(?:k\\s*=\\s*\\d[\\d.]*(?:,\\d+(?![\\d.]*\\s*%))?|\\d[\\d.]*(?:,\\d+)?\\s*(?:\u03c3|sigma))(?![\\w.])";
  // a share stands behind a comma, where it is no amount
  const share = "\\d[\\d.]*\\s*%(?!\\s*within)(?:\\s+confidence\\b)?";
  const items = `(${factor}(?:\\s*[,;]\\s*${share})?|(?<=[,;]\\s*)(?<!\\d,)${share}(?:\\s*[,;]\\s*${factor})?)`;
  const alone = `[\\s,;]\\s*${items}`;
  return {
    said: new RegExp(`${bracket}|${alone}`, "i"),
    saidHere: new RegExp(`(?:${bracket}|${alone})`, "iy"),
    // what stands in brackets parts no list
    parted: new RegExp(`\\([^()]*\\)|\\s*[,;]\\s*${items}`, "gi"),
  };
});

/** More than any list of points: nothing is looked for beyond. */
const LONGEST = 10_000;

/** Long white space makes patterns search: one space, or a line end, says as much. */
function tidied(text: string): string {
  if (text.length > LONGEST) return "";
  return text.replace(/\s{2,}/g, (run) => (run.includes("\n") ? "\n" : " "));
}

/** A text in which what says behind a comma or a semicolon how an uncertainty is meant stands in brackets: it parts no list. */
export function bracketedCoverage(text: string): string {
  if (text.length > LONGEST) return text;
  return tidied(text).replace(patterns().parted, (all, items: string | undefined) =>
    items === undefined ? all : ` (${items})`,
  );
}

/** True for a text that says how an uncertainty is meant, well or badly. */
export function hasCoverage(text: string): boolean {
  return patterns().said.test(tidied(text));
}

/** The place behind the words at a place that say how an uncertainty is meant; the place itself where none stand there. */
export function coverageEnd(text: string, at: number): number {
  const { saidHere } = patterns();
  saidHere.lastIndex = at;
  return saidHere.test(text) ? saidHere.lastIndex : at;
}

/** The factor that one item of a bracket says: `k = 2`, `2 sigma`, `95 %`. */
function factorOf(item: string): number | undefined {
  const digits = /^k\s*=\s*(.*)$/i.exec(item)?.[1] ?? /^(.*?)\s*(?:\u03c3|sigma)$/i.exec(item)?.[1];
  if (digits !== undefined) return parseNumeral(digits.trim(), COVERAGE);
  return /^95\s*%(?:\s+confidence(?:\s+(?:level|interval))?)?$/i.test(item) ? OF_95_PERCENT : undefined;
}

function coverageOf(words: string): Coverage {
  if (/\d,\d+(?![\d.]*\s*%)/.test(words)) {
    throw new VeladisError("not-a-number", {
      expected: "a coverage factor with a point for decimals, such as (k=2.5)",
      received: shown(`(${words})`),
    });
  }
  const items = words.split(/[,;]/).map((item) => item.trim());
  const factors = items.map(factorOf);
  const stated = factors.filter((_, i) => !(items[i] as string).includes("%"));
  const [k = OF_95_PERCENT] = stated as number[];
  const isCovered = stated.length < factors.length;
  if (factors.includes(undefined) || factors.length > 2 || stated.length > 1) {
    throw new VeladisError("syntax", { expected: FORM, received: shown(`(${words})`) });
  }
  if (k < 1 || k > 10) throw new VeladisError("out-of-range", { expected: COVERAGE, received: `${k}` });
  if (isCovered && (k < OF_95_PERCENT || k > MOST_FOR_95_PERCENT)) {
    throw new VeladisError("out-of-range", {
      expected: "a coverage factor and a share of a bell that say the same, such as (k=2, 95 %)",
      received: shown(`(${words})`),
    });
  }
  return Object.freeze({ k, words: stated.length === 0 ? `95 %, k=${k}` : `k=${k}` });
}

/**
 * A text without the words in it that say how an uncertainty is meant, and what they say.
 *
 * @throws {@link VeladisError} `syntax` for two, and for words that say it in no known form, `out-of-range` for a factor
 *   below 1 or above 10, and as `parseNumeral`
 */
export function withoutCoverage(text: string): [rest: string, coverage: Coverage | undefined] {
  const { said } = patterns();
  const tidy = tidied(text);
  const found = said.exec(tidy);
  if (found === null) return [text, undefined];
  const rest = tidy.slice(0, found.index) + tidy.slice(found.index + found[0].length);
  if (said.test(rest)) throw new VeladisError("syntax", { expected: COVERAGE, received: shown(text) });
  return [rest, coverageOf((found[1] ?? found[2]) as string)];
}
