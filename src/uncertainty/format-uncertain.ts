import { requireGiven } from "../core/index";
import { type Amplitude, significant } from "../reading/index";
import { uncertaintyOf } from "./uncertainty-of";

/** The place of the last digit that says something: two digits of an uncertainty, as JCGM 100:2008, 7.2.6, has it. */
function decimalsFor(expanded: number): number {
  return Math.max(0, 1 - Math.floor(Math.log10(Number(expanded.toPrecision(2)))));
}

/**
 * A reading as an engineer writes it with its uncertainty: two digits of that, the value to the same place. Without an
 * uncertainty as {@link format}.
 *
 * @param reading - an amplitude; words as for {@link parseUncertain}
 * @throws {@link VeladisError} as {@link uncertaintyOf}
 * @example
 * ```ts
 * import { formatUncertain, parseUncertain } from "veladis/uncertainty";
 *
 * formatUncertain("0.25 in/s pk ± 5 % (k=2)"); // => "0.250 ± 0.013 in/s pk (k=2)"
 * formatUncertain("95 ± 0.5 dB re 1e-9 m/s"); // => "95.00 ± 0.58 dB re 1 nm/s (k=2)"
 * ```
 */
export function formatUncertain(reading: string | Amplitude): string {
  const { value, expanded, type } = uncertaintyOf(requireGiven(reading, "a reading"));
  if (expanded === 0) return `${significant(value, 3)} ${type}`;
  const decimals = decimalsFor(expanded);
  return `${value.toFixed(decimals)} ± ${expanded.toFixed(decimals)} ${type} (k=2)`;
}
