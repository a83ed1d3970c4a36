import { inPlace, requireKnownOptions, requirePositive, shown, VeladisError, withParameters } from "../core/index";
import {
  type Amplitude,
  type AmplitudeType,
  type Assumption,
  amplitudeIn,
  linearType,
  madeOf,
  typeOf,
} from "../reading/index";
import { derivativeOrder, unitFactor } from "../units/index";
import type { Band } from "./band";
import { type BreakPoint, requireBreakPoints } from "./break-points";
import { type DensityUnit, densityText, densityUnit } from "./density-unit";
import { finiteLevel } from "./finite-level";
import { gaussianWithin } from "./gaussian";
import { bandNote, measured } from "./measured";

/** What the level of a profile needs to be told. */
export interface ProfileOptions {
  /** Unit of the densities, e.g. `"g2/Hz"`. */
  readonly unit: DensityUnit;
  /** What to answer in, an RMS value of any quantity, e.g. `"g rms"`, `"mm/s rms"`. */
  readonly as: AmplitudeType;
  /** Of which multiple of the RMS value to give the peak; 3 if not given. */
  readonly sigmas?: number;
}

/** A peak that is a multiple of an RMS value, for a vibration that is Gaussian. */
export interface GaussianPeak extends Amplitude {
  readonly sigmas: number;
  /** Part of the time spent within the peak. */
  readonly within: number;
  readonly assumed: readonly Assumption[];
}

/** The RMS level of a profile. */
export interface ProfileOverall extends Amplitude {
  readonly band: Band;
  /** Unit of the densities it was computed from. */
  readonly densityUnit: DensityUnit;
  /** What the RMS value times `sigmas` is, if the vibration is Gaussian; real peaks exceed it now and then. */
  readonly peak: GaussianPeak;
}

/** `(exp(x) - 1) / x`, 1 at 0. */
function growth(x: number): number {
  return Math.abs(x) < 1e-300 ? 1 : Math.expm1(x) / x;
}

/**
 * Integral over a segment of its density divided by `(2 pi f)^(2 integrations)`.
 *
 * The integrand is a power of the frequency, so it is an exponential in its logarithm: `y1 ln(r) (e^x - 1) / x` with
 * `x = ln(y2 / y1)` and y the integrand times f. There is no case to tell apart at a slope of -1 (x = 0), and starting
 * from the larger end, nothing overflows however steep the segment.
 */
function segmentIntegral([f1, s1]: BreakPoint, [f2, s2]: BreakPoint, integrations: number): number {
  const span = Math.log(f2 / f1);
  const x = Math.log(s2) - Math.log(s1) + (1 - 2 * integrations) * span;
  const [f, s] = x > 0 ? [f2, s2] : [f1, s1];
  return s * f * (2 * Math.PI * f) ** (-2 * integrations) * span * growth(-Math.abs(x));
}

/** A peak as a multiple of an RMS value, with what it assumes. */
function gaussianPeak(rms: Amplitude, sigmas: number): GaussianPeak {
  const as = typeOf(rms.unit, "pk");
  const value = finiteLevel(sigmas * rms.value);
  const note = `${sigmas} standard deviations`;
  return Object.freeze({
    ...amplitudeIn(as, value),
    ...madeOf([rms], { does: "scale", value, type: as.type, by: sigmas, note, assumed: ["gaussian"] }),
    sigmas,
    within: gaussianWithin(sigmas),
  }) as GaussianPeak;
}

const keys: Readonly<Record<keyof ProfileOptions, true>> = /* @__PURE__ */ Object.freeze({
  unit: true,
  as: true,
  sigmas: true,
});

/**
 * The RMS level of a profile of break points, straight lines between them on double logarithmic paper.
 *
 * Exact for any slope. Velocity and displacement are integrals of the density over `(2 pi f)^2` and `(2 pi f)^4`, not
 * conversions at one frequency. Outside the break points there is nothing.
 *
 * @param points - `[[hertz, density], ...]`, frequencies rising
 * @returns the RMS value, and the peak of three times it, which holds for a Gaussian vibration 99.73 % of the time
 * @throws {@link VeladisError} `missing-fact` for fewer than two points, `not-positive`, `not-a-number`,
 *   `out-of-range` when frequencies do not rise, `unknown-detector` for anything but RMS, and all of
 *   {@link densityUnit}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { profileOverall } from "veladis/signal";
 *
 * // the screening profile of NAVMAT P-9492, with end points as usually quoted
 * const level = profileOverall([[20, 0.01], [80, 0.04], [350, 0.04], [2000, 0.007]], { unit: "g2/Hz", as: "g rms" });
 * format(level); // => "6.06 g rms"
 * format(level.peak); // => "18.2 g pk"
 * level.peak.assumed; // => ["gaussian"]
 * ```
 */
export function profileOverall(points: readonly BreakPoint[], options: ProfileOptions): ProfileOverall {
  return withParameters({ points, options }, () => {
    const checked = requireBreakPoints(points);
    requireKnownOptions(options, keys, { what: "an option of a profile", form: "options with unit and as" });
    const unit = inPlace({ option: "unit" }, () => densityUnit(options.unit));
    const answer = linearType(options.as, { parameter: "options", option: "as" });
    if (answer.detector !== "rms") {
      throw new VeladisError("unknown-detector", {
        expected: "an RMS value; its peak is given beside it",
        received: shown(options.as),
        option: "as",
        allowed: ["rms"],
      });
    }
    const sigmas = requirePositive(options.sigmas ?? 3, "a number of standard deviations above zero", {
      option: "sigmas",
    });
    const integrations = -derivativeOrder(unit, answer.unit);
    const square = checked
      .slice(1)
      .reduce((sum, point, i) => sum + segmentIntegral(checked[i] as BreakPoint, point, integrations), 0);
    const band = [(checked[0] as BreakPoint)[0], (checked[checked.length - 1] as BreakPoint)[0]] as const;
    const rms = measured(finiteLevel(unitFactor(unit, answer.unit) * Math.sqrt(square)), answer, bandNote(band));
    return Object.freeze({
      ...rms,
      band,
      densityUnit: densityText(unit),
      peak: gaussianPeak(rms, sigmas),
    });
  });
}
