import type { ConvertedAmplitude, ConvertOptions } from "../amplitude/index";
import {
  finiteResult,
  inPlace,
  requireFinite,
  requireGiven,
  requireKnownOptions,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import {
  type Assumption,
  parsedType,
  type ReadingType,
  type ReadingTypeText,
  type Step,
  worstState,
} from "../reading/index";
import { baselineReadings, type Readings } from "./baseline-readings";
import { baselineWarnings, ENOUGH } from "./baseline-warnings";
import { type BaselineMode, type ModesOptions, modesOf, ofMode, requireModes } from "./modes";
import { statisticAmplitude } from "./statistic-amplitude";
import { meanAndDeviation, quantile, robustSpread } from "./statistics";
import { type SteadyOptions, steadyOf } from "./steady";

/** What {@link baseline} is told besides the readings. */
export interface BaselineOptions extends SteadyOptions {
  /** What the baseline is stated in, and bare numbers are written in, e.g. `"mm/s rms"`. */
  readonly as: ReadingTypeText;
  /** Frequency, where readings are of another quantity. */
  readonly at?: ConvertOptions["at"];
  /** Readings below which a warning is given; 10 if not given. Fewer than 3 are refused. */
  readonly enough?: number;
  /** The operating mode, load or speed at each reading; readings of modes whose medians differ are told. */
  readonly modes?: ModesOptions;
  /** Share of steady readings below the stated percentile, in percent; 95 if not given. */
  readonly percentile?: number;
}

/** A reading far from the others. */
export interface Outlier {
  /** Its index among the readings as given. */
  readonly index: number;
  readonly value: number;
  /** Distance from the median in robust spreads. */
  readonly score: number;
}

/** Statistics of steady readings, all in `as`. */
export interface Baseline {
  readonly as: ReadingType;
  /** The median as an amplitude, with what was assumed for any of the readings. */
  readonly level: ConvertedAmplitude;
  /** Steady readings. */
  readonly count: number;
  /** Readings left out by mask, speed or time. */
  readonly excluded: number;
  readonly median: number;
  readonly mean: number;
  /** Of the sample (n - 1). */
  readonly standardDeviation: number;
  /** 1.4826 times the median distance from the median. */
  readonly spread: number;
  readonly lowest: number;
  readonly highest: number;
  readonly percentile: { readonly percent: number; readonly value: number };
  /** Readings more than 3.5 spreads from the median; flagged, not left out of the numbers above. */
  readonly outliers: readonly Outlier[];
  /** Mean and standard deviation without the outliers. */
  readonly withoutOutliers: { readonly count: number; readonly mean: number; readonly standardDeviation: number };
  /** The operating modes among the readings by rising median, each with three readings or more; left out where none were told. */
  readonly modes?: readonly BaselineMode[];
  /** Whether their medians differ by more than scatter explains, and by more than a tenth. */
  readonly modesDiffer?: boolean;
  readonly warnings: readonly string[];
  /** What was assumed for any of the readings. */
  readonly assumed: readonly Assumption[];
  /** The steps that led to the median: one, since thousands of readings would tell nobody anything. */
  readonly history: readonly Step[];
}

/**
 * Distance from the median, in robust spreads, beyond which a reading is flagged: the modified z-score of Iglewicz and
 * Hoaglin (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17; from memory).
 */
export const OUTLYING = 3.5;

const keys: Readonly<Record<keyof BaselineOptions, true>> = /* @__PURE__ */ Object.freeze({
  as: true,
  at: true,
  enough: true,
  percentile: true,
  modes: true,
  mask: true,
  speed: true,
  time: true,
});

const OPTIONS = { parameter: "options" };

/**
 * Robust statistics of the readings of a machine in steady running and known good state.
 *
 * @param readings - bare numbers in `as`, or readings with their units, which may be mixed
 * @param options - `as`, and how start-up is left out
 * @throws {@link VeladisError} `out-of-range` for fewer than three steady readings, `length-mismatch`, `negative`, and
 *   as {@link convertAmplitude}
 * @example
 * ```ts
 * import { baseline } from "veladis/protection";
 *
 * const pump = baseline(["2.0 mm/s rms", "2.2 mm/s rms", "0.118 in/s pk", "1.9 mm/s rms"], { as: "mm/s rms" });
 * pump.median.toFixed(2); // => "2.06"
 * pump.assumed; // => ["sine"]
 * pump.warnings; // => ["4 steady readings are few; take at least 10 over the usual range of load and temperature"]
 * const run = baseline([0.4, 6.3, 2.1, 2.0, 2.2], {
 *   as: "mm/s rms",
 *   speed: { readings: [300, 900, 1490, 1492, 1491], atLeast: "1450 r/min" },
 * });
 * run.excluded; // => 2
 * run.median; // => 2.1
 * ```
 */
export function baseline(readings: Readings, options: BaselineOptions): Baseline {
  return withParameters({ readings, options }, () => {
    const {
      at,
      enough = ENOUGH,
      percentile = 95,
    } = requireKnownOptions(options, keys, {
      what: "an option of a baseline",
      form: 'options such as { as: "mm/s rms" }',
    });
    requireGiven(readings, "a list of readings", { parameter: "readings" });
    const {
      type: as,
      unit,
      detector,
      reference,
    } = inPlace({ parameter: "options", option: "as" }, () => parsedType(options.as));
    if (reference !== 0) {
      throw new VeladisError("out-of-range", {
        expected: 'a linear unit for the baseline, such as "mm/s rms", since levels have no mean',
        received: shown(options.as),
        option: "as",
      });
    }
    requirePositive(enough, "how many readings are enough, above zero", { option: "enough" });
    if (
      !(requireFinite(percentile, "a percentile from 0 to 100", { option: "percentile" }) >= 0 && percentile <= 100)
    ) {
      throw new VeladisError("out-of-range", {
        expected: "a percentile from 0 to 100",
        received: shown(percentile),
        option: "percentile",
      });
    }
    const { values, assumed, crestFactor, hertz, states: all, uncertain } = baselineReadings(readings, as, at);
    const steady = inPlace(OPTIONS, () => steadyOf(values.length, options));
    const modes =
      options.modes === undefined
        ? undefined
        : inPlace(OPTIONS, () => requireModes(options.modes as ModesOptions, values.length));
    const isOfMode = inPlace({ ...OPTIONS, option: "modes" }, () => (modes === undefined ? () => true : ofMode(modes)));
    const kept = inPlace(OPTIONS, () => Array.from(values.keys()).filter((i) => steady(i) && isOfMode(i)));
    if (kept.length < 3) {
      throw new VeladisError("out-of-range", {
        expected: "at least 3 steady readings for a baseline",
        received: `${kept.length} of ${values.length}`,
        parameter: "readings",
      });
    }
    const used = Float64Array.from(kept, (i) => values[i] as number);
    const states = kept.flatMap((i) => all.get(i) ?? []);
    const state = worstState(states);
    const sorted = used.slice().sort();
    const median = quantile(sorted, 0.5);
    const spread = robustSpread(used, median);
    const outliers = kept
      .map((index) => {
        const value = values[index] as number;
        return { index, value, score: spread > 0 ? finiteResult(Math.abs(value - median) / spread) : 0 };
      })
      .filter(({ score }) => score > OUTLYING);
    const flagged = new Set(outliers.map(({ index }) => index));
    const good = Float64Array.from(
      kept.filter((i) => !flagged.has(i)),
      (i) => values[i] as number,
    );
    const found =
      modes === undefined
        ? { modes: Object.freeze([]), modesDiffer: false, unjudged: 0 }
        : inPlace(OPTIONS, () => modesOf(modes, values, kept));
    const warnings = baselineWarnings({
      ...{ median, spread, enough, uncertain, states, as, found },
      ...{ read: values.length, kept: kept.length, outliers: outliers.length },
    });
    const level = statisticAmplitude(median, `median of ${kept.length} readings`, {
      ...{ unit, detector, hertz, assumed },
      ...(crestFactor !== undefined && { crestFactor }),
      ...(state !== undefined && { state }),
    });
    return Object.freeze({
      as,
      level,
      count: used.length,
      excluded: values.length - used.length,
      median,
      ...meanAndDeviation(used),
      spread,
      lowest: sorted[0] as number,
      highest: sorted[sorted.length - 1] as number,
      percentile: Object.freeze({ percent: percentile, value: quantile(sorted, percentile / 100) }),
      outliers: Object.freeze(outliers),
      withoutOutliers: Object.freeze({ count: good.length, ...meanAndDeviation(good) }),
      ...(modes !== undefined && { modes: found.modes, modesDiffer: found.modesDiffer }),
      warnings: Object.freeze(warnings),
      assumed: level.assumed,
      history: level.history as readonly Step[],
    });
  });
}
