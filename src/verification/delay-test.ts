import {
  finiteResult,
  numeralAndUnit,
  parseNumeral,
  requireList,
  requireNonNegative,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";

const DELAY_TOLERANCE = 'a tolerance such as "5 %" or "0.2 s"';

/** A measured delay against the delay that is set. */
export interface DelayTest {
  /** Seconds. */
  readonly set: number;
  /** Seconds. */
  readonly measured: readonly number[];
  /** The measured delay that is furthest off, less the set one, in seconds. */
  readonly worstError: number;
  /** Its error in percent of the set delay; null for a set delay of 0. */
  readonly worstPercent: number | null;
  /** Seconds. */
  readonly tolerance: number;
  readonly verdict: "pass" | "fail";
}

/**
 * Measured delays against the delay that is set, all in seconds.
 *
 * @param tolerance - `"5 %"` of the set delay, or `"0.2 s"`
 * @throws {@link VeladisError} `missing-unit`, `unknown-unit`, `syntax`, `negative`, `missing-option` without a measurement
 * @example
 * ```ts
 * import { delayTest } from "veladis/protection";
 *
 * delayTest(8, [8.1, 7.9, 8.2], "5 %").verdict; // => "pass"
 * delayTest(8, [8.1, 7.9, 8.2], "0.1 s").worstError.toFixed(1); // => "0.2"
 * ```
 */
export function delayTest(set: number, measured: readonly number[], tolerance: string): DelayTest {
  return withParameters({ set, measured, tolerance }, () => {
    requireNonNegative(set, "a set delay of zero or more, in s", { parameter: "set" });
    if (requireList(measured, "a list of measured delays, in s", { parameter: "measured" }).length === 0) {
      throw new VeladisError("missing-option", {
        expected: "at least one measured delay, in s",
        received: "nothing",
        parameter: "measured",
      });
    }
    const [digits, unit] = numeralAndUnit(tolerance, DELAY_TOLERANCE, { parameter: "tolerance" });
    if (unit !== "%" && unit !== "s") {
      const allowed = ["%", "s"];
      throw new VeladisError("unknown-unit", {
        expected: DELAY_TOLERANCE,
        received: shown(tolerance),
        parameter: "tolerance",
        allowed,
      });
    }
    const number = requirePositive(parseNumeral(digits), "a tolerance above zero");
    const allowed = unit === "%" ? finiteResult((set * number) / 100) : number;
    const errors = measured.map((one, index) => {
      const place = { parameter: "measured", index };
      return requireNonNegative(one, "a measured delay of zero or more, in s", place) - set;
    });
    const worstError = errors.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
    return Object.freeze({
      set,
      measured: Object.freeze([...measured]),
      worstError,
      worstPercent: set === 0 ? null : finiteResult((100 * worstError) / set),
      tolerance: allowed,
      verdict: Math.abs(worstError) <= allowed * (1 + 1e-9) + 1e-12 ? "pass" : "fail",
    });
  });
}
