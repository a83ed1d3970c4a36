import { amountOf, linearAmplitude } from "../amplitude/index";
import {
  finiteResult,
  inPlace,
  numeralAndUnit,
  parseNumeral,
  requireList,
  requireNonNegative,
  requirePositive,
  requireText,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Amplitude, format, isUncertain } from "../reading/index";
import { uncertainAmplitude, withoutCoverage, withoutSign } from "../uncertainty/index";

const FORM = 'an uncertainty such as "2 %", "0.1 mm/s rms" or "0.5 dB"';

/** The coverage factor of what is returned. */
const COVERAGE = 2;

/** One part as a share of the reading, and what it is divided by to be a standard uncertainty. */
function partOf(text: string, reading: Amplitude | undefined): { share: number; over: number } {
  const [rest, coverage] = withoutCoverage(requireText(text, FORM).trim());
  const bare = withoutSign(rest);
  // without a coverage factor it is a bound with equal chance within (JCGM 100:2008, 4.3.7)
  const over = coverage?.k ?? Math.sqrt(3);
  const [digits, unit] = numeralAndUnit(bare, FORM);
  const amount = requireNonNegative(parseNumeral(digits), "an uncertainty of zero or more");
  if (unit === "%") return { share: amount / 100, over };
  // upwards, where a decibel is more than downwards
  if (/^dB$/i.test(unit)) return { share: finiteResult(10 ** (amount / 20) - 1), over };
  if (reading === undefined) {
    throw new VeladisError("missing-option", {
      expected: "the reading that an uncertainty in a unit of its own is a share of, behind the list",
      received: shown(text),
    });
  }
  return { share: finiteResult(amountOf(bare, reading) / reading.value), over };
}

/**
 * Independent uncertainties combined by root sum of squares (JCGM 100:2008, 5.1.2, from memory), in percent, with
 * a coverage factor of 2.
 *
 * Parts in a unit of their own are brought to a share of the reading, decibels to the share that they are upwards. A part
 * that says `(k=2)` is divided by that; one that says nothing is a bound with equal chance within, with or without `±` before
 * it, as everywhere. The result has k = 2.
 *
 * @param parts - e.g. `["2 %", "5 %"]`, `["± 0.05 mm/s rms", "2 % (k=2)", "0.2 dB (k=2)"]`
 * @param reading - what amounts in a unit are a share of, e.g. `"4.9 mm/s rms"`; its frequency serves another quantity
 * @throws {@link VeladisError} `missing-option` for an amount in a unit without a reading and for no parts; `out-of-range` for a reading with a ± of its own, which would be lost; `missing-unit`, `not-positive` for a reading of zero, `syntax`, `negative`, and as `amountOf`
 * @example
 * ```ts
 * import { combinedUncertainty } from "veladis/protection";
 *
 * combinedUncertainty(["2 % (k=2)", "5 % (k=2)"]).toFixed(2); // => "5.39"
 * combinedUncertainty(["2 %", "5 %"]).toFixed(2); // => "6.22"
 * combinedUncertainty(["0.1 mm/s rms (k=2)", "5 % (k=2)"], "5 mm/s rms").toFixed(2); // => "5.39"
 * combinedUncertainty(["± 0.05 mm/s rms", "5 % (k=2)", "0.2 dB (k=2)"], "4.9 mm/s rms").toFixed(2); // => "5.64"
 * combinedUncertainty(["0.1 mm/s rms", "5 %"]); // throws missing-option
 * ```
 */
export function combinedUncertainty(parts: readonly string[], reading?: string | Amplitude): number {
  return withParameters({ reading, parts }, () => {
    const whole = reading === undefined ? undefined : linearAmplitude(uncertainAmplitude(reading));
    if (whole !== undefined)
      requirePositive(whole.value, "a reading above zero, which an uncertainty is a share of", { option: "value" });
    if (whole !== undefined && isUncertain(whole.history ?? [])) {
      throw new VeladisError("out-of-range", {
        expected: "the reading without a ± of its own; what is known of that is a part, in the list",
        received: shown(typeof reading === "string" ? reading : `${format(whole)} with its uncertainty`),
      });
    }
    const list = requireList(parts, "a list of uncertainties", { parameter: "parts" });
    if (list.length === 0) {
      throw new VeladisError("missing-option", {
        expected: 'at least one uncertainty, such as "2 %"',
        received: "an empty list",
      });
    }
    const told = list.map((part, index) => inPlace({ parameter: "parts", index }, () => partOf(part, whole)));
    const squares = told.map(({ share, over }) => (100 * share * (COVERAGE / over)) ** 2);
    return Math.sqrt(finiteResult(squares.reduce((sum, square) => sum + square, 0)));
  });
}
