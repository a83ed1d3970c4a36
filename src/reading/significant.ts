import { requireFinite, shown, VeladisError } from "../core/index";

/**
 * A number rounded to significant digits, written plainly: no exponent between 0.0001 and a million.
 *
 * @param digits - significant digits, 1 to 17; 3 if not given
 * @throws {@link VeladisError} `not-a-number`, `not-finite`, or `out-of-range` for the digits
 * @example
 * ```ts
 * import { significant } from "veladis";
 *
 * significant(7.184205000001); // => "7.18"
 * significant(0.04); // => "0.0400"
 * significant(1234.5, 4); // => "1235"
 * ```
 */
export function significant(value: number, digits = 3): string {
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 17)) {
    throw new VeladisError("out-of-range", {
      expected: "1 to 17 significant digits",
      received: shown(digits),
      parameter: "digits",
    });
  }
  if (requireFinite(value, "a finite number", { parameter: "value" }) === 0) return "0";
  const rounded = value.toPrecision(digits);
  const size = Math.abs(Number(rounded));
  if (size >= 1e6 || size < 1e-4) return value.toExponential(digits - 1).replace("e+", "e");
  // a number of more places than digits comes with an exponent
  return rounded.includes("e") ? Number(rounded).toFixed(0) : rounded;
}
