import { convertAmplitude, derivedAmplitude, linearAmplitude, linearTypeOf, notedAmplitude } from "../amplitude/index";
import {
  cautions,
  finiteResult,
  inPlace,
  requireGiven,
  requireKnownOptions,
  requirePositive,
  withParameters,
} from "../core/index";
import {
  type Amplitude,
  type Assumption,
  isUncertain as hasUncertainty,
  isClipped,
  ownHistory,
  type Step,
  union,
} from "../reading/index";
import { type UncertaintyPart, uncertainAmplitude } from "../uncertainty/index";
import { decidingRule } from "./deciding-rule";
import { type Decision, type DecisionRule, decisionOn, decisionRules } from "./decision";
import { errorUncertainty } from "./error-uncertainty";
import { expectedReading } from "./expected-reading";
import { atKnownFrequency } from "./known-frequency";
import { showsNothing } from "./shows-nothing";
import { expandedMargins, marginsOf, requireUseful, type ToleranceText } from "./tolerance";

/** What {@link checkAgainstKnown} is told. */
export interface KnownCheck {
  /** The level of the reference shaker: `"8 mm/s rms at 2400 r/min"`, or with ±: `"8 ± 0.16 mm/s rms (k=2) at 2400 r/min"`. */
  readonly known: string | Amplitude;
  /** What the device shows; another unit or detector is converted, another quantity at the known frequency; with ± too. */
  readonly indicated: string | Amplitude;
  /** The largest error allowed: `"5 %"`, `"0.5 dB"` or an amount such as `"0.4 mm/s rms"`. */
  readonly tolerance: ToleranceText;
  /**
   * Uncertainty of the known level, beside those that the levels carry themselves: `"2 % (k=2)"`, `"0.2 dB (95 %)"`; as behind
   * a reading, one without a coverage factor is a bound with equal chance within.
   */
  readonly uncertainty?: ToleranceText;
  /** The decision rule; guard band with any uncertainty, else simple acceptance. */
  readonly rule?: DecisionRule;
}

/** The outcome of a check against a known vibration. */
export interface KnownCheckResult extends Decision {
  readonly known: Amplitude;
  /** As it was shown. */
  readonly shown: Amplitude;
  /** What it should show: the known level in unit and detector as shown; no key in texts of earlier releases. */
  readonly expected?: Amplitude;
  /** In unit and detector of the known level. */
  readonly indicated: Amplitude;
  /** Unit and detector of error, tolerance and uncertainty. */
  readonly as: string;
  /** Indicated less known. */
  readonly error: number;
  readonly errorPercent: number;
  /** `20 lg(indicated / known)`; null when the device shows nothing. */
  readonly errorDecibels: number | null;
  /** The tolerance as an amount above the known level. */
  readonly tolerance: number;
  /** The same below it; of a tolerance in decibels a little less; no key in texts of earlier releases. */
  readonly toleranceBelow?: number;
  /** The expanded uncertainty (k = 2) of the error as an amount, all that is stated put together; null without one. */
  readonly uncertainty: number | null;
  /** What it is made of, the largest in front; empty where no level has one of its own. */
  readonly parts: readonly UncertaintyPart[];
  /** How it was carried from the levels to the error: `"first order"`; null where no level has one of its own. */
  readonly method: string | null;
  readonly rule: DecisionRule;
  /** The rule in words. */
  readonly ruleText: string;
  /** What was assumed in both levels, in bringing them to one unit, and in tolerance and uncertainty. */
  readonly assumed: readonly Assumption[];
  /** The steps that led to the error and to its share of the known level, in percent. */
  readonly history: readonly Step[];
  readonly cautions: readonly string[];
}

/** All that a check may be told. */
export const checkKeys: Readonly<Record<keyof KnownCheck, true>> = /* @__PURE__ */ Object.freeze({
  known: true,
  indicated: true,
  tolerance: true,
  uncertainty: true,
  rule: true,
});

/** Uncertainties of a history that were stated without a coverage factor. */
function boundsOf(steps: readonly Step[]): string[] {
  return steps
    .flatMap(({ uncertainty, hertzUncertainty }) => [uncertainty, hertzUncertainty])
    .flatMap((one) => (one?.distribution === "rectangular" ? [one.stated] : []));
}

/** What to know of a check, with what was taken of bare uncertainties in front. */
function withBounds(bounds: readonly string[]): readonly string[] {
  if (bounds.length === 0) return cautions;
  const texts = [...new Set(bounds)].join(" and ");
  return Object.freeze([
    `${texts} without a coverage factor is taken as a bound with equal chance within; (k=2) says an expanded one`,
    ...cautions,
  ]);
}

const noParts: readonly UncertaintyPart[] = /* @__PURE__ */ Object.freeze([]);

/**
 * The decision as far as the loops allow: a clipped level may lie beyond what it says, so it passes nothing and fails only
 * where the true one is further off.
 */
function withinLoop(decision: Decision, { state }: Amplitude, known: Amplitude, error: number): Decision {
  if (!isClipped(state) && !isClipped(known.state)) return decision;
  const further = state === "above range" ? error > 0 : error < 0;
  if (decision.verdict === "fail" && !isClipped(known.state) && further) return decision;
  return { ...decision, verdict: "undecided", call: "conditional fail" };
}

/** The way to an error. */
function errorWay(indicated: Amplitude, known: Amplitude) {
  const isUncertain = [indicated, known].some(({ history }) => hasUncertainty(history ?? []));
  const { assumed, history } = derivedAmplitude([indicated, known], indicated.value - known.value, {
    does: "difference",
    note: isUncertain ? "error, the uncertainties taken as independent" : "error",
    ...(isUncertain && { assumed: ["independent"] }),
  });
  return { assumed, steps: history as readonly Step[] };
}

/** The way to an error goes on to its share of the known level, in percent. */
function shareOf(steps: readonly Step[], known: Amplitude, percent: number): readonly Step[] {
  const share: Step = Object.freeze({
    ...({ does: "scale", of: Object.freeze([steps.length - 1]) } as const),
    ...{ over: known.value / 100, value: percent, type: "%", note: "a percent of the known level" },
  });
  return ownHistory([...steps, share]);
}

/**
 * What a device shows, held against a known vibration.
 *
 * An uncertainty is what the levels carry with ± (`"8 ± 0.16 mm/s rms (k=2)"`) and what is stated beside them, put together
 * as independent ({@link uncertaintyOf} in `veladis/uncertainty`); `parts` names each.
 *
 * A level that was clipped by its loop passes nothing: the check is undecided, unless it fails whatever the true level is.
 * A device that shows zero, or no more than the 4 mA of its loop, at a higher level fails, as a dead one does.
 *
 * @throws {@link VeladisError} `not-positive` for a known level of zero, `missing-unit` for a bare tolerance,
 *   `out-of-range` for a tolerance as large as the known level, `missing-fact`, `unknown-option` for a mistyped key, `not-finite`, and as {@link parseUncertain},
 *   {@link uncertaintyOf} and {@link convertAmplitude}
 * @example
 * ```ts
 * import { explain } from "veladis/explain";
 * import { checkAgainstKnown } from "veladis/protection";
 *
 * const check = checkAgainstKnown({
 *   known: "8 mm/s rms at 2400 r/min",
 *   indicated: "7.3 mm/s rms",
 *   tolerance: "5 %",
 * });
 * check.error.toFixed(1); // => "-0.7"
 * check.errorPercent.toFixed(2); // => "-8.75"
 * check.errorDecibels?.toFixed(2); // => "-0.80"
 * check.verdict; // => "fail"
 * check.rule; // => "simple acceptance"
 * explain(check).text.split("\n")[2]; // => "7.3 mm/s rms - 8 mm/s rms = -0.7 mm/s rms  (error)"
 * const known = "8 mm/s rms at 2400 r/min";
 * checkAgainstKnown({ known, indicated: "7.7 mm/s rms", tolerance: "5 %", uncertainty: "2 % (k=2)" }).verdict;
 * // => "undecided"
 * const uncertain = { known: "8 ± 0.16 mm/s rms (k=2) at 2400 r/min", indicated: "7.7 ± 0.05 mm/s rms", tolerance: "5 %" };
 * const { uncertainty, parts, verdict } = checkAgainstKnown(uncertain);
 * uncertainty?.toFixed(3); // => "0.170"
 * parts.map(({ stated, share }) => `${stated}: ${(100 * share).toFixed(0)} %`); // => ["± 0.16 mm/s rms (k=2): 88 %", "± 0.05 mm/s rms: 12 %"]
 * verdict; // => "undecided"
 * ```
 */
export function checkAgainstKnown(check: KnownCheck): KnownCheckResult {
  return withParameters({ check }, () => {
    requireKnownOptions(check, checkKeys, {
      what: "a part of a check",
      form: "a check with known level, indicated level and tolerance",
      place: { parameter: "check" },
    });
    const known = inPlace({ option: "known" }, () =>
      notedAmplitude(
        uncertainAmplitude(requireGiven(check.known, 'the known level, such as "8 mm/s rms at 2400 r/min"')),
        "known level",
      ),
    );
    const shown = inPlace({ option: "indicated" }, () =>
      notedAmplitude(
        uncertainAmplitude(requireGiven(check.indicated, 'the level that the device shows, such as "7.3 mm/s rms"')),
        "as shown",
      ),
    );
    requirePositive(known.value, "a known level above zero", { option: "known" });
    const as = linearTypeOf(known);
    const indicated = inPlace({ option: "indicated" }, () =>
      convertAmplitude(
        atKnownFrequency(shown, known),
        as,
        known.hertz === undefined ? {} : { at: { hertz: known.hertz } },
      ),
    );
    const tolerance = inPlace({ option: "tolerance" }, () => marginsOf(check.tolerance, known));
    inPlace({ option: "tolerance" }, () => requireUseful(tolerance, linearAmplitude(known), check.tolerance));
    const stated = check.uncertainty;
    const beside =
      stated === undefined ? null : inPlace({ option: "uncertainty" }, () => expandedMargins(stated, known));
    const error = indicated.value - known.value;
    const errorPercent = finiteResult((100 * error) / known.value);
    const { steps, assumed } = errorWay(indicated, linearAmplitude(known));
    const uncertainty = errorUncertainty(steps, [indicated, known], beside);
    const rule = inPlace({ option: "rule" }, () => decidingRule(check.rule, uncertainty !== null));
    const within = decisionOn({ rule, error, tolerance, uncertainty, known: known.value });
    const decision = showsNothing({ shown, indicated, error })
      ? ({ ...within, verdict: "fail", call: "fail" } as const)
      : withinLoop(within, indicated, known, error);
    return Object.freeze({
      known,
      shown,
      expected: expectedReading({ known, shown }),
      indicated,
      as,
      error,
      errorPercent,
      errorDecibels: indicated.value > 0 ? 20 * (Math.log10(indicated.value) - Math.log10(known.value)) : null,
      tolerance: tolerance.above,
      toleranceBelow: tolerance.below,
      uncertainty: uncertainty?.above ?? null,
      parts: uncertainty?.parts ?? noParts,
      method: uncertainty?.method ?? null,
      ...decision,
      rule,
      ruleText: decisionRules[rule],
      assumed: union(union(assumed, tolerance.assumed), beside?.assumed),
      history: shareOf(steps, known, errorPercent),
      cautions: withBounds([...(beside?.isBound ? [beside.stated] : []), ...boundsOf(steps)]),
    });
  });
}
