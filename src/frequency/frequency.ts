import { memo, nearest, numeral, positive, shown, splitNumeral, text, VeladisError } from "../core/index";
import { type FrequencyUnit, type FrequencyUnitSpelling, type FrequencyUnitSymbol, frequencyUnits } from "./catalogue";

/** A frequency or shaft speed in words: `"25 Hz"`, `"1500 r/min"`, `"157 rad/s"`, `"2x 1500 r/min"`. */
export type FrequencyText = `${number} ${FrequencyUnitSpelling}` | `${number}x ${number} ${FrequencyUnitSpelling}`;

/** A frequency: in words, or as `{ hertz }`. */
export type Frequency = FrequencyText | { readonly hertz: number };

const WHAT = "a frequency above zero";
const FORM = 'a frequency such as "25 Hz", "1500 r/min" or "2x 1500 r/min"';

const bySpelling: ReadonlyMap<string, FrequencyUnitSymbol> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.entries(frequencyUnits) as [FrequencyUnitSymbol, FrequencyUnit][]).flatMap(([symbol, unit]) =>
    [symbol, ...unit.written, ...unit.spoken].map((spelling) => [spelling.toLowerCase(), symbol] as const),
  ),
);

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
  const symbol = bySpelling.get(text(spelling, "a unit of frequency").trim().toLowerCase());
  if (symbol !== undefined) return symbol;
  throw new VeladisError("unknown-frequency-unit", {
    expected: "a unit of frequency or shaft speed",
    received: shown(spelling),
    didYouMean: nearest(spelling, bySpelling.keys()),
    allowed: Object.keys(frequencyUnits),
  });
}

/** The order and the rest of `"2x 1500 r/min"`; order 1 for a text without one. */
function splitOrder(at: string): [order: number, rest: string] {
  const [digits, rest] = splitNumeral(at) ?? [];
  const marked = rest === undefined ? null : /^[xX×]\s*(?:of\s+)?/.exec(rest);
  if (digits === undefined || rest === undefined || marked === null) return [1, at];
  return [positive(numeral(digits), "an order of the shaft speed above zero"), rest.slice(marked[0].length)];
}

const read = /* @__PURE__ */ memo((at) => {
  const written = at.trim();
  const [order, rest] = written.length <= 80 ? splitOrder(written) : [1, ""];
  const [digits, spelling] = splitNumeral(rest) ?? [];
  if (digits === undefined || spelling === undefined || spelling === "") {
    throw new VeladisError("syntax", { expected: FORM, received: shown(at) });
  }
  const value = positive(numeral(digits), WHAT);
  const unit = frequencyUnits[frequencyUnitSymbol(spelling)];
  const cycles = (value * order * unit.num) / unit.den;
  return positive(unit.radian ? cycles / (2 * Math.PI) : cycles, WHAT);
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
  if (typeof at === "string") return read(at);
  if (typeof at === "object" && at !== null) return positive(at.hertz, WHAT);
  throw new VeladisError("wrong-type", { expected: FORM, received: shown(at) });
}

/**
 * The frequency that a text of unknown content names, checked at run time.
 *
 * The way through for a `string` that the types cannot know: `{ at: frequency(input) }`.
 *
 * @throws {@link VeladisError} as {@link hertz}
 * @example
 * ```ts
 * import { convert, frequency } from "veladis";
 *
 * const typed: string = "1500 rpm"; // from a form, a file
 * frequency(typed); // => { hertz: 25 }
 * convert(1, "mm/s rms", "um pp", { at: frequency(typed) }).toFixed(2); // => "18.01"
 * ```
 */
export function frequency(at: string): { hertz: number } {
  return { hertz: hertz(text(at, FORM) as FrequencyText) };
}
