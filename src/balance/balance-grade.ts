import {
  finiteResult,
  parseNumeral,
  requirePositive,
  shown,
  splitNumeral,
  VeladisError,
  withParameters,
} from "../core/index";
import type { Frequency } from "../frequency/index";
import { angularSpeed } from "./unbalance";

/** The balance quality grades of ISO 21940-11, in mm/s: the product of eccentricity and angular speed. */
export const balanceGrades = /* @__PURE__ */ Object.freeze([
  0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000,
] as const);

/**
 * The grade in mm/s of `"G 6.3"`, `"G6.3"` or a number.
 *
 * @throws {@link VeladisError} `syntax`, `not-positive`
 * @example
 * ```ts
 * import { balanceGrade } from "veladis/protection";
 *
 * balanceGrade("G 6.3"); // => 6.3
 * ```
 */
export function balanceGrade(grade: string | number): number {
  return withParameters({ grade }, () => {
    if (typeof grade === "number")
      return requirePositive(grade, "a balance grade above zero, in mm/s", { parameter: "grade" });
    const [, rest] = (typeof grade === "string" && /^G\s*(.+)$/i.exec(grade.trim())) || [];
    const [digits, unit] = (rest !== undefined && splitNumeral(rest)) || [];
    if (!digits || !(unit === "" || unit === "mm/s")) {
      throw new VeladisError(typeof grade === "string" ? "syntax" : "wrong-type", {
        expected: 'a balance grade such as "G 6.3"',
        received: shown(grade),
        parameter: "grade",
        allowed: balanceGrades.map((one) => `G ${one}`),
      });
    }
    return requirePositive(parseNumeral(digits), "a balance grade above zero, in mm/s");
  });
}

/**
 * The permissible eccentricity of a grade at a speed, in um (the same number is g·mm per kg of rotor).
 *
 * `e = 1000 G / omega`; the workshop's 10 000 G / n is 4.7 % lenient and not used.
 *
 * @throws {@link VeladisError} `syntax`, `not-positive`
 * @example
 * ```ts
 * import { permissibleEccentricity } from "veladis/protection";
 *
 * permissibleEccentricity("G 2.5", "3000 r/min").toFixed(2); // => "7.96"
 * permissibleEccentricity("G 6.3", "1500 r/min").toFixed(1); // => "40.1"
 * ```
 */
export function permissibleEccentricity(grade: string | number, speed: Frequency): number {
  return withParameters({ grade, speed }, () => {
    return finiteResult((1000 * balanceGrade(grade)) / angularSpeed(speed));
  });
}
