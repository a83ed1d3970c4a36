import { parseNumeral, requireNonNegative, shown, splitNumeral, VeladisError } from "../core/index";
import { PLUS_MINUS, type Uncertainty } from "../reading/index";

/** What a text says behind a plus-minus sign: an amount, what it is in, and a coverage factor. */
export interface Stated {
  readonly amount: number;
  /** The digits of the amount, as they were written. */
  readonly digits: string;
  /** `%`, `dB`, a unit and a detector, or empty for that of the number before it. */
  readonly unit: string;
  /** Coverage factor; left out for a bound. */
  readonly k?: number;
}

const FORM = 'an uncertainty such as "± 0.3", "± 5 %" or "± 0.5 dB (k=2)"';
const COVERAGE = "a coverage factor of 1 to 10, such as (k=2)";

/** A coverage factor in brackets, such as `(k=2)`. */
const coverage = /\s*\(\s*k\s*=\s*([^)]*)\)/i;

/** True for a text with a coverage factor in it. */
export function hasCoverage(text: string): boolean {
  return coverage.test(text);
}

/**
 * A text without the coverage factor in it, and that factor.
 *
 * @throws {@link VeladisError} `syntax` for two, `out-of-range` for one below 1 or above 10, and as `parseNumeral`
 */
export function withoutCoverage(text: string): [rest: string, k: number | undefined] {
  const found = coverage.exec(text);
  if (found === null) return [text, undefined];
  const rest = text.slice(0, found.index) + text.slice(found.index + found[0].length);
  if (coverage.test(rest)) throw new VeladisError("syntax", { expected: COVERAGE, received: shown(text) });
  const k = parseNumeral(found[1] as string, COVERAGE);
  if (k >= 1 && k <= 10) return [rest, k];
  throw new VeladisError("out-of-range", { expected: COVERAGE, received: `${k}` });
}

/** An amount without the plus-minus sign that may stand before it. */
export function withoutSign(text: string): string {
  const plain = text.trim();
  return plain.search(PLUS_MINUS) === 0 ? plain.replace(PLUS_MINUS, "").trimStart() : plain;
}

/**
 * What stands behind a plus-minus sign.
 *
 * @throws {@link VeladisError} `syntax`, `negative`, `not-finite`, `not-a-number`
 */
export function statedBehind(text: string, k: number | undefined): Stated {
  const [digits, unit] = splitNumeral(text.trim());
  if (digits === "") throw new VeladisError("syntax", { expected: FORM, received: shown(text) });
  const amount = requireNonNegative(parseNumeral(digits, "an uncertainty"), "an uncertainty of zero or more");
  return { amount, digits, unit: unit.trim(), ...(k !== undefined && { k }) };
}

/** Behind a bare plus-minus sign stands a bound: all within it is equally likely (JCGM 100:2008, 4.3.7). */
const BOUND = 1.732_050_807_568_877_2;

/**
 * A stated amount, in a unit of its own by now, as an uncertainty: with a coverage factor k its k-th part, as a bell; without one a bound with equal
 * chance within, whose standard uncertainty is larger than that of k = 2. None for an amount of zero.
 */
export function uncertaintyFrom(
  amount: number,
  { digits, unit, k }: Stated,
  isDecibels: boolean,
): Uncertainty | undefined {
  if (amount === 0) return undefined;
  return Object.freeze({
    standard: amount / (k ?? BOUND),
    ...(isDecibels && { in: "dB" as const }),
    distribution: k === undefined ? "rectangular" : "normal",
    stated: `± ${digits} ${unit}${k === undefined ? "" : ` (k=${k})`}`,
  });
}

/** What is to be told of an uncertainty whose kind nobody said. */
export function uncertaintyNote({ distribution, stated }: Uncertainty): string {
  return distribution === "rectangular" ? `${stated}, taken as a bound with equal chance within` : stated;
}
