import { cached, requireChoice, requireKnownOptions, requireText, shown, VeladisError } from "../core/index";
import type { FormatOptions } from "./format-options";

const keys: Readonly<Record<keyof FormatOptions, true>> = /* @__PURE__ */ Object.freeze({
  digits: true,
  fixed: true,
  locale: true,
  symbols: true,
});

const FORM = "options such as { digits: 4 }";

const LOCALE = 'a language tag such as "de-DE"';

/** What stands before the decimals in a language, found when it is first asked for. */
const decimalMark = /* @__PURE__ */ cached((locale) => {
  try {
    // one that is not known would be written as the machine at hand is set
    if (Intl.NumberFormat.supportedLocalesOf(locale).length > 0) {
      const parts = new Intl.NumberFormat(locale, { numberingSystem: "latn" }).formatToParts(0.5);
      return parts.find(({ type }) => type === "decimal")?.value ?? ".";
    }
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  throw new VeladisError("unknown-option", {
    expected: LOCALE,
    received: shown(locale),
    parameter: "options",
    option: "locale",
  });
});

const superscript = (digits: string): string => digits.replace(/\d/g, (digit) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(digit)] as string);

/**
 * A text of readings in plain signs, with the decimal mark of a language and the signs of print, where they are asked for.
 *
 * @throws {@link VeladisError} `unknown-option` or `wrong-type` for the locale or the symbols
 */
export function localized(text: string, options: FormatOptions): string {
  const { locale, symbols } = requireKnownOptions(options, keys, { what: "an option of a format", form: FORM });
  const mark = locale === undefined ? "." : decimalMark(requireText(locale, LOCALE, { option: "locale" }));
  const written = mark === "." ? text : text.replace(/(?<=\d)\.(?=\d)/g, mark);
  if (
    symbols === undefined ||
    requireChoice(symbols, ["plain", "typographic"], "signs to write with", { option: "symbols" }) === "plain"
  )
    return written;
  return written
    .replace(/(?<=\d)e(-?)(\d+)/g, (_, sign, power) => ` × 10${sign && "⁻"}${superscript(power)}`)
    .replace(/(?<![^\s(])-(?=\d)/g, "\u2212")
    .replace(/\bu(?=(?:m|in)\b)/g, "µ")
    .replace(/(?<=\/s)2\b/g, "²");
}
