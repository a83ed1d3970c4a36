import { shown, VeladisError } from "./error";
import { requireChoice } from "./require-choice";
import { requireKnownOptions } from "./require-known-options";

/** How the numbers of a text are written. */
export interface NumeralOptions {
  /** What stands before the decimals, `"."` if not given. Told `","`, a text with a point in a number is refused. */
  readonly decimal?: "." | ",";
}

const NONE: NumeralOptions = {};

/** Beyond any text with a reading; keeps junk from being searched. */
const LONGEST = 200;

/** Digits in groups of three, parted by thin or no-break spaces: no reader takes those for decimals. */
const GROUPED = /(?<![\d.,])\d{1,3}(?:[\u00a0\u2009\u202f]\d{3})+(?!\d)/g;

/** Signs of print as they are typed: the minus sign, groups of digits, a power of ten. */
function typed(text: string): string {
  return text
    .replace(/(?<=^|[\s(]|\de)\u2212(?=[\d.])/gi, "-")
    .replace(GROUPED, (digits) => digits.replace(/\D/g, ""))
    .replace(/(?<=\d)\s*[×·]\s*10([⁺⁻]?[⁰¹²³⁴-⁹]+)/g, (_, power: string) =>
      `e${power.normalize("NFKC")}`.replace("\u2212", "-"),
    );
}

/** The numbers that someone may have meant by one with commas; both, where three digits behind it may be thousands. */
function meantBy(number: string): string[] {
  const grouped = /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(number) || /^\d{1,3}(\.\d{3})+,\d+$/.test(number);
  const pointed = number.split(/[.,]/).length === 2 ? [number.replace(",", ".")] : [];
  const whole = number.replace(/[.,](?=.*[.,]|\d{3}$)/g, "").replace(",", ".");
  return grouped ? [...pointed, whole] : pointed;
}

/**
 * A text with its numbers as {@link parseNumeral} takes them: with a minus sign, thin or no-break spaces between thousands,
 * or a power of ten (`4 × 10⁻⁵`) read as they are typed, and a decimal comma where it is told.
 *
 * @throws {@link VeladisError} `not-a-number` for a comma that was not told, with what it may mean, and for a point beside one
 *   that was; `syntax` for junk of any length, `unknown-option`, `wrong-type`
 */
export function plainNumerals(text: string, options: NumeralOptions = NONE): string {
  // nearly every text is plain, and options are seldom given
  if (options === NONE && !/[^ -+\--~]/.test(text)) return text;
  if (text.length > LONGEST) {
    throw new VeladisError("syntax", { expected: `a text of at most ${LONGEST} characters`, received: shown(text) });
  }
  const { decimal = "." } = requireKnownOptions(
    options,
    { decimal: true },
    { what: "an option of reading numbers", form: 'options such as { decimal: "," }' },
  );
  const plain = /[^ -~]/.test(text) ? typed(text) : text;
  const told =
    requireChoice(decimal, [".", ","], "what stands before the decimals", {
      parameter: "options",
      option: "decimal",
    }) === ",";
  if (!told && !plain.includes(",")) return plain;
  const [wrong] = plain.match(told ? /\d+(?:[.,]\d+)*\.\d[\d.,]*|\d+,\d+,[\d,]*/ : /\d+(?:\.\d+)*,\d[\d.,]*/) ?? [];
  if (wrong === undefined) return told ? plain.replace(/(?<=\d),(?=\d)/g, ".") : plain;
  throw new VeladisError("not-a-number", {
    expected: told
      ? "numbers with one comma, before the decimals, and no point"
      : "numbers with a point for decimals and no comma",
    received: shown(wrong),
    didYouMean: told ? [] : meantBy(wrong),
  });
}
