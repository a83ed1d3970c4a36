import { amountOf, linearAmplitude } from "../amplitude/index";
import {
  finiteResult,
  numeralAndUnit,
  parseNumeral,
  requireList,
  requireNonNegative,
  requirePositive,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { type Amplitude, format, isUncertain, PLUS_MINUS } from "../reading/index";
import { uncertainAmplitude, withoutCoverage, withoutSign } from "../uncertainty/index";

const FORM = 'an uncertainty such as "2 %", "0.1 mm/s rms" or "0.5 dB"';

/** The coverage factor of what is returned where the parts say their own. */
const COVERAGE = 2;

/** One part as a share of the reading, and what it is divided by to be a standard uncertainty; none if it says nothing. */
function partOf(text: string, reading: Amplitude | undefined): { share: number; over: number | undefined } {
  const [rest, coverage] = withoutCoverage(requireText(text, FORM).trim());
  const bare = withoutSign(rest);
  // a bare ± is a bound with equal chance within (JCGM 100:2008, 4.3.7)
  const over = coverage?.k ?? (rest.search(PLUS_MINUS) === 0 ? Math.sqrt(3) : undefined);
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

/** Refuses parts of which only some say what they are. */
function requireAlike(parts: readonly string[], overs: readonly (number | undefined)[]): void {
  const silent = overs.indexOf(undefined);
  if (silent < 0 || overs.every((over) => over === undefined)) return;
  throw new VeladisError("missing-fact", {
    expected: "a coverage factor such as (k=2), or ± for a bound, with every part where one has it",
    received: shown(parts[silent]),
  });
}

/**
 * Independent uncertainties combined by root sum of squares (JCGM 100:2008, 5.1.2, from memory), in percent.
 *
 * Parts in a unit of their own are brought to a share of the reading, decibels to the share that they are upwards. Parts
 * without more are taken as stated with one coverage factor, which the result then has too. Where they say `(k=2)`, or
 * `±` alone for a bound with equal chance within, each is divided by its own, and the result has k = 2.
 *
 * @param parts - e.g. `["2 %", "5 %"]`, `["± 0.05 mm/s rms", "2 % (k=2)", "0.2 dB (k=2)"]`
 * @param reading - what amounts in a unit are a share of, e.g. `"4.9 mm/s rms"`; its frequency serves another quantity
 * @throws {@link VeladisError} `missing-fact` for an amount in a unit without a reading, for no parts, and for parts of
 *   which only some say their coverage; `out-of-range` for a reading with a ± of its own, which would be lost; `missing-unit`, `not-positive` for a reading of zero, `syntax`, `negative`, and as `amountOf`
 * @example
 * ```ts
 * import { combinedUncertainty } from "veladis/protection";
 *
 * combinedUncertainty(["2 %", "5 %"]).toFixed(2); // => "5.39"
 * combinedUncertainty(["0.1 mm/s rms", "5 %"], "5 mm/s rms").toFixed(2); // => "5.39"
 * combinedUncertainty(["± 0.05 mm/s rms", "5 % (k=2)", "0.2 dB (k=2)"], "4.9 mm/s rms").toFixed(2); // => "5.64"
 * combinedUncertainty(["0.1 mm/s rms", "5 %"]); // throws missing-fact
 * ```
 */
export function combinedUncertainty(parts: readonly string[], reading?: string | Amplitude): number {
  const whole = reading === undefined ? undefined : linearAmplitude(uncertainAmplitude(reading));
  if (whole !== undefined) requirePositive(whole.value, "a reading above zero, which an uncertainty is a share of");
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
  const told = list.map((part) => partOf(part, whole));
  requireAlike(
    list,
    told.map(({ over }) => over),
  );
  const squares = told.map(({ share, over }) => (100 * share * (over === undefined ? 1 : COVERAGE / over)) ** 2);
  return Math.sqrt(finiteResult(squares.reduce((sum, square) => sum + square, 0)));
}
