import { isAnswered, shown, VeladisError } from "../../core/index";
import { requireName } from "./require-name";

const REFUSED = 'one reading a line, behind its place: "ID fan 1, motor DE: 4.1 mm/s rms"';

/** A number, or a fraction, that a reading may begin with. */
const NUMBER = /^[+\u2212-]?(?:\.?\d|[\u00bc-\u00be\u2150-\u215e])/;

/** A number that stands alone, which may be a reading whose unit stands elsewhere. */
const ALONE = /^[+\u2212-]?\d[\d.,]*$/;

/** Columns that stand apart: by tabs, by bars, or by several blanks. */
const APART = /\s*[\t|]\s*|\s{2,}/;

/**
 * The place of the colon behind which the reading begins: the last one before a number, else the first of all. That of
 * `dB re: 1 nm/s` ends no place; one between two digits ends one only where there is no other, and no columns.
 */
function colonOf(line: string): number | undefined {
  const all = [...line.matchAll(/(?<!\bref?):/g)].map(({ index }) => index);
  const between = (at: number): boolean => /^\d:\d/.test(line.slice(Math.max(0, at - 1)));
  const before = all.filter((at) => NUMBER.test(line.slice(at + 1).trim()) && !between(at));
  return before.at(-1) ?? all.find((at) => !between(at) || !APART.test(line.trim()));
}

/**
 * The place and the reading of a line whose columns stand apart, by tabs, bars or several blanks: the reading is what reads as
 * one, from a column on to the end of the line.
 *
 * @throws {@link VeladisError} `syntax` where a number stands among the names that may be another reading
 */
function splitColumns(line: string, isReading: (text: string) => boolean): [place: string, reading: string] {
  const cells = line
    .replace(/^\s*\||\|\s*$/g, "")
    .split(APART)
    .map((cell) => cell.trim())
    .filter((cell) => cell !== "");
  const from = cells.findIndex((_, i) => NUMBER.test(cells[i] as string) && isReading(cells.slice(i).join(" ")));
  if (from < 0) return ["", cells.join(" ")];
  const names = cells.slice(0, from);
  const isNumber = (cell: string, i: number): boolean =>
    ALONE.test(cell) ? i > 0 || i === names.length - 1 || /[.,]/.test(cell) : NUMBER.test(cell) && isReading(cell);
  if (names.some(isNumber)) throw new VeladisError("syntax", { expected: REFUSED, received: shown(line) });
  requireName(names.join(", "));
  return [names.join(", "), cells.slice(from).join(" ")];
}

/**
 * The place and the reading of a line `place: reading`, or of one whose columns stand apart; a line without a place gives an
 * empty one. A place may have colons.
 *
 * @param isReading - whether a text is a reading, for columns that stand apart
 * @throws {@link VeladisError} `syntax` for columns with a number that may be another reading, and as {@link requireName}
 */
export function splitPlace(line: string, isReading: (text: string) => void): [place: string, reading: string] {
  const reads = (text: string): boolean => isAnswered(() => isReading(text));
  const colon = colonOf(line);
  const place = line.slice(0, colon ?? 0).trim();
  requireName(place);
  const behind = line.slice(colon === undefined ? 0 : colon + 1).trim();
  if (!APART.test(behind) || reads(behind)) return [place, behind];
  const [names, reading] = splitColumns(behind, reads);
  return [[place, names].filter((one) => one !== "").join(", "), reading];
}
