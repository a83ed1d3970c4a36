import { parseNumeral, requireNonNegative, shown, splitNumeral, VeladisError } from "../core/index";
import { PLUS_MINUS, type Uncertainty } from "../reading/index";
import { type Coverage, withoutCoverage } from "./coverage";

/** What a text says behind a plus-minus sign: an amount, what it is in, and a coverage factor. */
export interface Stated {
  readonly amount: number;
  /** The digits of the amount, as they were written. */
  readonly digits: string;
  /** `%`, `dB`, a unit and a detector, or empty for that of the number before it. */
  readonly unit: string;
  /** How it is meant; left out for a bound. */
  readonly coverage?: Coverage;
}

const FORM = 'an uncertainty such as "± 0.3", "± 5 %" or "± 0.5 dB (k=2)"';

const twoSided =
  /(?:^|[^e\d.])(?:\+\s*\d[\d.]*\s*(?:%|dB)?\s*[/,]?\s*[-−]\s*\d|[-−]\s*\d[\d.]*\s*(?:%|dB)?\s*[/,]?\s*\+\s*\d)/i;

/** True for a text that states one amount upwards and another downwards: `+0.3/-0.2`. */
export function isTwoSided(text: string): boolean {
  return twoSided.test(text);
}

/**
 * Refuses an uncertainty that is not the same on both sides.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireOneSided(text: string): void {
  if (!isTwoSided(text)) return;
  throw new VeladisError("syntax", {
    expected: "one ± for both sides; of two unequal sides take the larger, such as ± 0.3 for plus 0.3 and minus 0.2",
    received: shown(text),
  });
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
export function statedBehind(text: string, coverage: Coverage | undefined): Stated {
  const [digits, unit] = splitNumeral(text.trim());
  if (digits === "") throw new VeladisError("syntax", { expected: FORM, received: shown(text) });
  const amount = requireNonNegative(parseNumeral(digits, "an uncertainty"), "an uncertainty of zero or more");
  return { amount, digits, unit: unit.trim(), ...(coverage && { coverage }) };
}

/**
 * What a text says that is an uncertainty alone, with or without the sign before it: `± 2 %`, `2 % (k=2)`.
 *
 * @throws {@link VeladisError} as {@link statedBehind} and {@link withoutCoverage}
 */
export function statedAlone(text: string): Stated {
  const [rest, coverage] = withoutCoverage(text);
  return statedBehind(withoutSign(rest), coverage);
}

/** Behind a bare plus-minus sign stands a bound: all within it is equally likely (JCGM 100:2008, 4.3.7). */
const BOUND = 1.732_050_807_568_877_2;

/** What a stated amount is divided by for its standard uncertainty. */
export function divisorOf({ coverage }: Stated): number {
  return coverage?.k ?? BOUND;
}

/** As it was stated, in one form: `± 2 % (k=2)`. */
export function statedText({ digits, unit, coverage }: Stated): string {
  return `± ${digits} ${unit}${coverage === undefined ? "" : ` (${coverage.words})`}`;
}

/**
 * A stated amount, in a unit of its own by now, as an uncertainty: with a coverage factor k its k-th part, as a bell; without one a bound with equal
 * chance within, whose standard uncertainty is larger than that of k = 2. None for an amount of zero.
 */
export function uncertaintyFrom(amount: number, stated: Stated, isDecibels: boolean): Uncertainty | undefined {
  if (amount === 0) return undefined;
  return Object.freeze({
    standard: amount / divisorOf(stated),
    ...(isDecibels && { in: "dB" as const }),
    distribution: stated.coverage === undefined ? "rectangular" : "normal",
    stated: statedText(stated),
  });
}

/** What is to be told of an uncertainty whose kind nobody said. */
export function uncertaintyNote({ distribution, stated }: Uncertainty): string {
  return distribution === "rectangular" ? `${stated}, taken as a bound with equal chance within` : stated;
}
