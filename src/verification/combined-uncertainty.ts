import {
  finiteResult,
  numeralAndUnit,
  parseNumeral,
  requireList,
  requireNonNegative,
  shown,
  VeladisError,
} from "../core/index";

const FORM = 'a relative uncertainty such as "2 %"';

/**
 * Independent relative uncertainties combined by root sum of squares (JCGM 100:2008, 5.1.2, from memory), in percent.
 *
 * All must be stated with one coverage factor, which the result then has too.
 *
 * @param parts - e.g. `["2 %", "5 %"]`
 * @throws {@link VeladisError} `missing-fact`, `missing-unit`, `unknown-unit`, `syntax`, `negative`
 * @example
 * ```ts
 * import { combinedUncertainty } from "veladis/protection";
 *
 * combinedUncertainty(["2 %", "5 %"]).toFixed(2); // => "5.39"
 * ```
 */
export function combinedUncertainty(parts: readonly string[]): number {
  const squares = requireList(parts, "a list of uncertainties").map((part) => {
    const [digits, unit] = numeralAndUnit(part, FORM);
    if (unit !== "%") {
      throw new VeladisError("unknown-unit", { expected: FORM, received: shown(part), allowed: ["%"] });
    }
    return requireNonNegative(parseNumeral(digits), "an uncertainty of zero or more") ** 2;
  });
  return Math.sqrt(finiteResult(squares.reduce((sum, square) => sum + square, 0)));
}
