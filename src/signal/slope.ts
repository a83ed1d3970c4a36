import { requireFinite, withParameters } from "../core/index";

const DECIBELS_OF_AN_OCTAVE = 3.010299956639812; // 10 lg(2)

/**
 * Slope of a density in decibels an octave, from its exponent: `10 lg(2) exponent`, 3.01 dB for an exponent of 1.
 *
 * Decibels of a density are `10 lg` of its ratio. `10 x exponent` is decibels a decade.
 *
 * @throws {@link VeladisError} `not-a-number`, `not-finite`
 * @example
 * ```ts
 * import { decibelsPerOctave } from "veladis/signal";
 *
 * decibelsPerOctave(1).toFixed(2); // => "3.01"
 * decibelsPerOctave(-2).toFixed(2); // => "-6.02"
 * ```
 */
export function decibelsPerOctave(exponent: number): number {
  return withParameters({ exponent }, () => {
    return requireFinite(
      DECIBELS_OF_AN_OCTAVE * requireFinite(exponent, "a finite exponent", { parameter: "exponent" }),
      "a slope below 1.8e308 dB an octave",
    );
  });
}

/**
 * Exponent of a density from its slope in decibels an octave: 3 dB an octave is 0.9966, not 1.
 *
 * @throws {@link VeladisError} `not-a-number`, `not-finite`
 * @example
 * ```ts
 * import { slopeExponent } from "veladis/signal";
 *
 * slopeExponent(3).toFixed(4); // => "0.9966"
 * ```
 */
export function slopeExponent(decibels: number): number {
  return withParameters({ decibels }, () => {
    return (
      requireFinite(decibels, "a finite slope, in dB an octave", { parameter: "decibels" }) / DECIBELS_OF_AN_OCTAVE
    );
  });
}
