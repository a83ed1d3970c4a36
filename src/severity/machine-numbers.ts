import { parseNumeral, shown, splitNumeral, VeladisError } from "../core/index";
import { frequency } from "../frequency/index";
import type { Machine } from "./machine";
import { phraseAt } from "./machine-phrases";
import { type UnitSaid, unitAt, unitNames } from "./machine-units";
import { type Context, LABEL_NAME } from "./machine-words";
import { near } from "./near-words";
import type { ApparentSaid } from "./plate-power";
import { kilowattsPer, type PowerText, sizeOf } from "./size";

/** A shaft speed or line frequency as it was written. */
export interface SpeedSaid {
  readonly speed: Exclude<Machine["speed"], string | undefined>;
  readonly written: string;
  /** True where it is in hertz, as the frequency of the line is. */
  readonly inHertz: boolean;
  /** True where a space stands between thousands: it could part two numbers. */
  readonly spaced: boolean;
}

/** What a number at the beginning of a text says, and how many characters it takes with its unit. */
export interface NumberSaid {
  readonly length: number;
  readonly facts?: Machine;
  readonly isRange?: true;
  readonly poles?: number;
  readonly speed?: SpeedSaid;
  readonly lineFrequency?: SpeedSaid;
  /** Apparent power as written. */
  readonly apparent?: ApparentSaid;
  /** The nearest that is understood, of a number that is not. */
  readonly didYouMean?: readonly string[];
}

/** How many characters the symbol of a quantity takes before its number: `P=90 kW`, `n = 980 r/min`. */
export function symbolAt(text: string): number {
  return /^(?:P|S|n)\s*=\s*(?=\d|from\b|between\b)/i.exec(text)?.[0].length ?? 0;
}

/** Digits without the marks between thousands, the mark if there is one, and how many characters they take. */
interface Digits {
  readonly digits: string;
  readonly mark: string;
  readonly length: number;
}

const THOUSANDS = /^\d{1,3}([,'’ \u00a0\u2009\u202f])\d{3}(?:\1\d{3})*(?:\.\d+)?(?![\d.,]*\d)/;

function digitsAt(text: string, mayBeSpaced: boolean): Digits | undefined {
  const [whole, mark = ""] = THOUSANDS.exec(text) ?? [""];
  if (whole !== "" && (mark !== " " || mayBeSpaced))
    return { digits: whole.replaceAll(mark, ""), mark, length: whole.length };
  const [digits] = splitNumeral(text);
  return digits === "" ? undefined : { digits, mark: "", length: digits.length };
}

/** The unit behind white space, its length with that. */
function unitBehind(text: string, from: number): UnitSaid | undefined {
  const rest = text.slice(from);
  const unit = unitAt(rest.trimStart());
  return unit && { ...unit, length: unit.length + rest.length - rest.trimStart().length };
}

/** Decimals with one place more or less, so that they are no group of three. */
function unlikeThousands(digits: string): string {
  return digits.endsWith("0") ? String(Number(digits)) : `${digits}0`;
}

/** Refuses digits that two readers would read as two numbers; revolutions per minute with decimals are none. */
function requireMark(text: string, { digits, mark, length }: Digits, unit: UnitSaid | undefined): void {
  if (unit !== undefined && /^[1-9]\d{0,2}(\.\d{3})+$/.test(digits)) {
    // a speed in revolutions has no decimals, and no number has two points
    const isOpen = unit.symbol !== "r/min" && Number.isFinite(Number(digits));
    const other = isOpen ? `, or "${unlikeThousands(digits)} ${unit.symbol}"` : "";
    throw new VeladisError("not-a-number", {
      expected: `a number that is read one way: "${digits.replaceAll(".", "")} ${unit.symbol}"${other}`,
      received: shown(text.slice(0, length + unit.length)),
    });
  }
  if (unit === undefined || unit.symbol === "r/min" || (mark !== "," && mark !== " ")) return;
  const [first = "", ...others] = text.slice(0, length).split(mark);
  // nobody writes 000 kW: what follows the space is no number of its own
  if (mark === " " && others.some((group) => group.startsWith("0"))) return;
  const { symbol } = unit;
  const behind = `, or "${others.join(" ")} ${symbol}" behind the number ${first}`;
  const decimal = others.length > 1 ? "" : `, or "${unlikeThousands(`${first}.${others[0]}`)} ${symbol}"`;
  throw new VeladisError("not-a-number", {
    expected: `a number that is read one way: "${digits} ${symbol}"${mark === "," ? decimal : behind}`,
    received: shown(text.slice(0, length + unit.length)),
  });
}

function hertzOf(digits: string, symbol: string): { hertz: number } {
  return frequency(`${digits} ${symbol}`);
}

function marks({ symbol }: UnitSaid, ...numbers: readonly Digits[]) {
  return { inHertz: /^k?Hz$/.test(symbol), spaced: numbers.some(({ mark }) => mark === " ") };
}

const TO = /^\s*(?:to\b|-|–|—|…|\.\.\.?)\s*(?=\d)/;
const AND = /^\s*and\b\s*(?=\d)/i;

function fallingRange(what: string, example: string, written: string): VeladisError {
  return new VeladisError("out-of-range", {
    expected: `a range of ${what} from the lowest to the highest, such as "${example}"`,
    received: shown(written),
  });
}

/** `50 to 400 kW`: any power from the lowest to the highest. */
function powerRange(from: PowerText, to: PowerText, written: string): Machine {
  const [low, high] = [from, to].map((one) => sizeOf(one, kilowattsPer, 'a rated power above zero such as "90 kW"'));
  if ((low as number) < (high as number)) return { power: { from, to } };
  throw fallingRange("powers", "50 to 400 kW", written);
}

/** `900 to 1800 r/min`, `50 to 400 kW`, with the unit behind both numbers or the last. */
function rangeAt(text: string, first: Digits, unit: UnitSaid | undefined, link: RegExp): NumberSaid | undefined {
  const behind = first.length + (unit?.length ?? 0);
  const between = link.exec(text.slice(behind))?.[0];
  if (between === undefined) return undefined;
  const start = behind + between.length;
  const second = digitsAt(text.slice(start), true) as Digits;
  const other = unitBehind(text, start + second.length);
  if (unit !== undefined && other?.quantity !== unit.quantity) return undefined;
  const length = start + second.length + (other?.length ?? strangeUnit(text.slice(start + second.length)).length);
  if (other?.quantity !== "frequency" && other?.quantity !== "power") return { length, didYouMean: [] };
  requireMark(text, first, { ...other, length: unit?.length ?? 0 });
  requireMark(text.slice(start), second, other);
  const written = text.slice(0, length);
  if (other.quantity === "power") {
    const [from, to] = [`${first.digits} ${unit?.symbol ?? other.symbol}`, `${second.digits} ${other.symbol}`];
    return { length, facts: powerRange(from as PowerText, to as PowerText, written) };
  }
  const from = hertzOf(first.digits, unit?.symbol ?? other.symbol);
  const to = hertzOf(second.digits, other.symbol);
  // either line frequency is no range of a speed
  if (/^50\D+60\s*Hz$/i.test(written)) return { length, didYouMean: [] };
  if (from.hertz < to.hertz) return { length, speed: { speed: { from, to }, written, ...marks(other, first, second) } };
  throw fallingRange("speeds", "900 to 1800 r/min", written);
}

/** The word behind a number that seems to be its unit though it is none, with the white space before it. */
function strangeUnit(behind: string): string {
  const [unit = ""] = /^\s*[^\s,;()[\]|\d"][^\s,;()[\]|]*/.exec(behind) ?? [];
  const word = behind.trimStart();
  // 178 A is no article
  if (/^[A-GI-Z](?![\w-])/.test(word)) return unit;
  return LABEL_NAME.test(word) || phraseAt(word) !== undefined ? "" : unit;
}

/** A number that is not understood, with the word behind it that seems to be its unit. */
function notUnderstood(text: string, { digits, length }: Digits): NumberSaid {
  const unit = strangeUnit(text.slice(length));
  return {
    length: length + unit.length,
    didYouMean: near(unit.trim(), unitNames(), 2).map((symbol) => `${digits} ${symbol}`),
  };
}

/**
 * What a number at the beginning of a text says: a power, a shaft height, a speed or a range of speeds, a number of
 * poles; `context` is what the words before it lead to.
 *
 * @param mayBeSpaced - whether a space may stand between thousands
 * @throws {@link VeladisError} `not-a-number` for a comma that may be decimal or not, `out-of-range` for a range that falls
 */
export function numberAt(text: string, context: Context, mayBeSpaced = true): NumberSaid | undefined {
  const [lead = ""] = /^(?:from|between)\s+(?=\d)/i.exec(text) ?? [];
  if (lead !== "") {
    // from 90 kW: a bound, and no fact
    const said = amountAt(text.slice(lead.length), context, mayBeSpaced, /^b/i.test(lead) ? AND : TO);
    const isRange = said?.isRange === true && said.didYouMean === undefined;
    return isRange ? { ...said, length: said.length + lead.length } : undefined;
  }
  return amountAt(text, context, mayBeSpaced, TO);
}

function amountAt(text: string, context: Context, mayBeSpaced: boolean, link: RegExp): NumberSaid | undefined {
  // 2p = 12, and 6 pole pairs
  const [all, twice, pairs] = /^(?:2\s*p\s*=\s*(\d{1,2})|(\d{1,2})[\s-]*pole[\s-]*pairs?)(?![\w/])/i.exec(text) ?? [];
  if (all !== undefined && Number(twice ?? pairs) > 0)
    return { length: all.length, poles: twice === undefined ? 2 * Number(pairs) : Number(twice) };
  const poles = /^(\d{1,2})[\s-]*(?:p|poles?)(?![\w/])/i.exec(text);
  const even = Number(poles?.[1]);
  if (poles !== null && even > 0 && even % 2 === 0) return { length: poles[0].length, poles: even };
  let first = digitsAt(text, mayBeSpaced);
  if (first === undefined) return undefined;
  let unit = unitBehind(text, first.length);
  if (unit === undefined && first.mark === " ") {
    first = digitsAt(text, false) as Digits;
    unit = unitBehind(text, first.length);
  }
  const range = rangeAt(text, first, unit, link);
  if (range !== undefined)
    return context === "" ? { ...range, isRange: true } : { length: range.length, didYouMean: [] };
  const both = /^50\s*\/\s*60\s*Hz(?!\w)/i.exec(text);
  if (both !== null) return { length: both[0].length, didYouMean: [] };
  if (unit === undefined) return notUnderstood(text, first);
  requireMark(text, first, unit);
  parseNumeral(first.digits);
  const length = first.length + unit.length;
  const size = `${first.digits} ${unit.symbol}`;
  if (unit.quantity === "power") return { length, facts: { power: size as `${number} kW` } };
  if (unit.quantity === "apparent power") return { length, apparent: { digits: first.digits, unit: unit.symbol } };
  if (unit.quantity === "length") {
    // 2 m says of what only where something leads to it; 280 m is a frame size gone wrong, and refused as a height
    const large = unit.symbol === "m" || unit.symbol === "ft";
    if (context === "" && large && Number(first.digits) < 20) {
      return { length, didYouMean: [`height ${size}`, `shaft height ${size}`] };
    }
    return { length, facts: { [context === "height" ? "height" : "shaftHeight"]: size as `${number} mm` } };
  }
  const speed = hertzOf(first.digits, unit.symbol);
  if (context === "natural") return { length, facts: { naturalFrequency: speed } };
  const said = { speed, written: text.slice(0, length), ...marks(unit, first) };
  return context === "line" ? { length, lineFrequency: said } : { length, speed: said };
}
