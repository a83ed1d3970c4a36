import { isAnswered, lazily, shown, VeladisError } from "../core/index";
import { findDetector } from "../detectors/index";
import { parsedType } from "../reading/index";
import { findUnit } from "../units/index";

/** A unit and a detector written as one word, `gRMS` or `mm/s-pk`; checked against both catalogues before it counts. */
const glued = /* @__PURE__ */ lazily(
  () =>
    /(?<![\p{L}\p{N}_/-])([\p{L}\p{No}²^2/∕.·⋅'-]*?[\p{L}²2])[-_]?(rms|pk-pk|p-p|0-pk|pk|pp|peak)(?![\p{L}\p{N}/-])/giu,
);

/** A capital G before its detector: no other unit of vibration has that letter. */
const CAPITAL = /(?<![A-Za-z])G(?=\s+(?:rms|pk|pp|peak|p-p|pk-pk|0-pk|true|avg)\b)/gi;

const ARROW = /\s*(?:->|=>|[\u2192\u21d2])\s*/g;

/** A fraction at the beginning of a reading, with whole units before it or not: `5/8`, `1 1/2`, `1-1/2`. */
const FRACTION = /^(\s*)(?:(\d+)(?:\s+|-))?(\d+)[/\u2044](\d+)(?=\s*[A-Za-z\u00b5\u03bc])/;

/** Fractions that are one sign, as they are typed. */
const SIGNS = /(\d?)([\u00bc-\u00be\u2150-\u215e])(?=\s*[A-Za-z\u00b5\u03bc])/;

const FRACTIONS = 'a fraction below one, with whole units before it or not, such as "5/8", "1 1/2" or "1-1/2"';

/** The fraction that a reading begins with, as its decimals. */
function withDecimals(text: string): string {
  const typed = text.replace(SIGNS, (_, whole: string, sign: string) => {
    const plain = sign.normalize("NFKC").replace("\u2044", "/");
    return `${whole === "" ? "" : `${whole} `}${plain}`;
  });
  const [all, blank, whole, over, under] = FRACTION.exec(typed) ?? [];
  if (all === undefined) return text;
  const [above, below] = [Number(over), Number(under)];
  if (above === 0 || below === 0 || (whole !== undefined && above >= below)) {
    throw new VeladisError("syntax", { expected: FRACTIONS, received: shown(all.trim()) });
  }
  return `${blank}${Number(whole ?? 0) + above / below}${typed.slice(all.length)}`;
}

/** The "in" of `0.2 ips pk in mm/s rms` as the "to" that it means: behind a reading, and before a type, no inch can stand. */
function withTo(text: string): string {
  if (/\sto\s/i.test(text)) return text;
  for (const { index, 0: word } of text.matchAll(/\sin\s+/gi)) {
    const [first = ""] = text.slice(index + word.length).split(/,| and /);
    const isBehindReading = /(?:[A-Za-z)\u00b2]|\d\s*(?:Hz|r\/min))\s*$/.test(text.slice(0, index));
    if (isBehindReading && isAnswered(() => parsedType(first.trim()))) {
      return `${text.slice(0, index)} to ${text.slice(index + word.length)}`;
    }
  }
  return text;
}

/**
 * A line with what people write in the plain spelling of readings: `gRMS` and `G rms` as `g rms`, `->` and `in` before a type as
 * `to`, `5/8 ips pk` as `0.625 ips pk`.
 *
 * @throws {@link VeladisError} `syntax` for a fraction that is none
 */
export function plainSpelling(line: string): string {
  const parted = line.replace(ARROW, " to ");
  const spelt = parted.replace(glued(), (word, unit: string, detector: string) => {
    const isType = findUnit(word) === undefined && findDetector(word) === undefined;
    const plain = unit === "G" ? "g" : unit;
    return isType && findUnit(plain) !== undefined ? `${plain} ${detector}` : word;
  });
  return withTo(withDecimals(spelt.replace(CAPITAL, "g")));
}
