import {
  cached,
  inPlace,
  type NumeralOptions,
  parseNumeral,
  plainNumerals,
  requirePositive,
  requireText,
  shown,
  splitNumeral,
  symbolsByName,
  unknownName,
  VeladisError,
  withParameters,
} from "../core/index";
import { type FrequencyUnit, type FrequencyUnitSpelling, type FrequencyUnitSymbol, frequencyUnits } from "./catalogue";
import { FREQUENCY_FORM } from "./form";

/** A frequency or shaft speed in words: `"25 Hz"`, `"1500 r/min"`, `"157 rad/s"`, `"2x 1500 r/min"`. */
export type FrequencyText = `${number} ${FrequencyUnitSpelling}` | `${number}x ${number} ${FrequencyUnitSpelling}`;

/** A frequency: in words, or as `{ hertz }`. */
export type Frequency = FrequencyText | { readonly hertz: number };

const UNIT = "a unit of frequency or shaft speed";

const bySpelling = /* @__PURE__ */ symbolsByName(frequencyUnits, true);

/**
 * The symbol of the unit of frequency that a text names.
 *
 * @throws {@link VeladisError} `unknown-frequency-unit` with the nearest units
 * @example
 * ```ts
 * import { frequencyUnitSymbol } from "veladis";
 *
 * frequencyUnitSymbol("rpm"); // => "r/min"
 * ```
 */
export function frequencyUnitSymbol(spelling: string): FrequencyUnitSymbol {
  const symbol = findFrequencyUnit(requireText(spelling, UNIT, { parameter: "spelling" }));
  if (symbol !== undefined) return symbol;
  throw unknownName("unknown-frequency-unit", UNIT, spelling, [bySpelling(), frequencyUnits]);
}

/** The symbol of the unit of frequency that a text names, if it names one. */
export function findFrequencyUnit(spelling: string): FrequencyUnitSymbol | undefined {
  const folded = spelling
    .trim()
    .toLowerCase()
    // min⁻¹ is min and a minus sign and 1
    .normalize("NFKC")
    .replace("^", "")
    .replace("\u2212", "-")
    .replace(/( per |\/)(s|min)[a-z]*/, "/$2");
  return bySpelling().get(folded);
}

/**
 * A text split behind the order of a shaft speed that it begins with, `"2x of "`: the order, none if it begins with no order,
 * and the rest.
 *
 * @throws {@link VeladisError} `not-positive`, `not-a-number` or `not-finite` for the order
 */
export function splitOrder(at: string): [order: number | undefined, rest: string] {
  const [digits, rest] = splitNumeral(at);
  const marked = /^[xX×]\s*(?:of\s+)?/.exec(rest)?.[0];
  if (digits === "" || marked === undefined) return [undefined, at];
  return [requirePositive(parseNumeral(digits), "an order of the shaft speed above zero"), rest.slice(marked.length)];
}

const read = /* @__PURE__ */ cached((at) => {
  const [order = 1, speed] = splitOrder(requireText(at, FREQUENCY_FORM).trim());
  const [value, rest] = splitNumeral(speed);
  if (!value || !rest) {
    throw new VeladisError("syntax", { expected: FREQUENCY_FORM, received: shown(at) });
  }
  const { num, den, radian }: FrequencyUnit = frequencyUnits[frequencyUnitSymbol(rest)];
  const cycles = (requirePositive(parseNumeral(value), FREQUENCY_FORM) * order * num) / den;
  return requirePositive(radian ? cycles / (2 * Math.PI) : cycles, FREQUENCY_FORM);
});

/**
 * The frequency in hertz.
 *
 * The only bridge between Hz, r/min, rad/s and orders of a shaft speed.
 *
 * @param at - words (`"1500 r/min"`, `"25 Hz"`, `"157 rad/s"`, `"2x 1500 r/min"`) or `{ hertz }`
 * @returns hertz, above zero
 * @throws {@link VeladisError} `syntax`, `unknown-frequency-unit`, `not-positive`, `not-finite`, `wrong-type`
 * @example
 * ```ts
 * import { hertz } from "veladis";
 *
 * hertz("1500 r/min"); // => 25
 * hertz("2x 1500 r/min"); // => 50
 * hertz({ hertz: 25 }); // => 25
 * ```
 */
export function hertz(at: Frequency): number {
  return inPlace({ parameter: "at" }, () => inHertz(at));
}

/** As {@link hertz}, for who says where the frequency stands. */
export function inHertz(at: Frequency): number {
  return typeof at === "object" ? requirePositive(at?.hertz, FREQUENCY_FORM) : read(at);
}

/**
 * The frequency that a text of unknown content names, checked at run time.
 *
 * The way through for a `string` that the types cannot know: `{ at: frequency(input) }`.
 *
 * @param options - `{ decimal: "," }` for numbers with a decimal comma, which is refused without it
 * @throws {@link VeladisError} as {@link hertz}
 * @example
 * ```ts
 * import { convert, frequency } from "veladis";
 *
 * const typed: string = "1500 rpm"; // from a form, a file
 * frequency(typed); // => { hertz: 25 }
 * frequency("1477,5 min⁻¹", { decimal: "," }); // => { hertz: 24.625 }
 * convert(1, "mm/s rms", "um pp", { at: frequency(typed) }).toFixed(2); // => "18.01"
 * ```
 */
export function frequency(at: string, options?: NumeralOptions): { hertz: number } {
  return withParameters({ options, at }, () => {
    return {
      hertz: hertz(plainNumerals(requireText(at, FREQUENCY_FORM), options) as FrequencyText),
    };
  });
}
