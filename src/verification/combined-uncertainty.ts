import { list, nonNegative, numeral, shown, splitNumeral, VeladisError } from "../core/index";

/**
 * Independent relative uncertainties combined by root sum of squares (JCGM 100:2008, 5.1.2, from memory), in percent.
 *
 * All must be stated with one coverage factor, which the result then has too.
 *
 * @param parts - e.g. `["3 %", "5 %"]`
 * @throws {@link VeladisError} `missing-unit`, `syntax`, `negative`
 * @example
 * ```ts
 * import { combinedUncertainty } from "veladis/protection";
 *
 * combinedUncertainty(["3 %", "5 %"]).toFixed(2); // => "5.83"
 * ```
 */
export function combinedUncertainty(parts: readonly string[]): number {
  const squares = list(parts, "uncertainties as a list").map((part) => {
    const [digits, unit] = (typeof part === "string" && splitNumeral(part.trim())) || [];
    if (!digits || unit !== "%") {
      throw new VeladisError(unit === "" || typeof part === "number" ? "missing-unit" : "syntax", {
        expected: 'a relative uncertainty such as "3 %"',
        received: shown(part),
      });
    }
    return nonNegative(numeral(digits), "an uncertainty of zero or more") ** 2;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
}
