import { convertAmplitude, derivedAmplitude, linearAmplitude, linearTypeOf, notedAmplitude } from "../amplitude/index";
import {
  cautions,
  finiteResult,
  requireChoice,
  requireGiven,
  requireKnownKeys,
  requirePositive,
  VeladisError,
} from "../core/index";
import {
  type Amplitude,
  type Assumption,
  amplitudeOf,
  isClipped,
  ownHistory,
  type Step,
  union,
} from "../reading/index";
import { type Decision, type DecisionRule, decisionOn, decisionRules } from "./decision";
import { marginsOf, type ToleranceText } from "./tolerance";

/** What {@link checkAgainstKnown} is told. */
export interface KnownCheck {
  /** The level of the reference shaker: `"8 mm/s rms at 2400 r/min"`. */
  readonly known: string | Amplitude;
  /** What the device shows; another unit or detector is converted, another quantity at the known frequency. */
  readonly indicated: string | Amplitude;
  /** The largest error allowed: `"5 %"`, `"0.5 dB"` or an amount such as `"0.4 mm/s rms"`. */
  readonly tolerance: ToleranceText;
  /** Expanded uncertainty (k = 2) of the known level, in the same forms. */
  readonly uncertainty?: ToleranceText;
  /** The decision rule; guard band with an uncertainty, else simple acceptance. */
  readonly rule?: DecisionRule;
}

/** The outcome of a check against a known vibration. */
export interface KnownCheckResult extends Decision {
  readonly known: Amplitude;
  /** As it was shown. */
  readonly shown: Amplitude;
  /** In unit and detector of the known level. */
  readonly indicated: Amplitude;
  /** Unit and detector of error, tolerance and uncertainty. */
  readonly unit: string;
  /** Indicated less known. */
  readonly error: number;
  readonly errorPercent: number;
  /** `20 lg(indicated / known)`; null when the device shows nothing. */
  readonly errorDecibels: number | null;
  /** The tolerance as an amount above the known level. */
  readonly tolerance: number;
  /** The expanded uncertainty as an amount; null without one. */
  readonly uncertainty: number | null;
  readonly rule: DecisionRule;
  /** The rule in words. */
  readonly ruleText: string;
  /** What was assumed in both levels, in bringing them to one unit, and in tolerance and uncertainty. */
  readonly assumed: readonly Assumption[];
  /** The steps that led to the error and to its share of the known level, in percent. */
  readonly history: readonly Step[];
  readonly cautions: readonly string[];
}

const keys: Readonly<Record<keyof KnownCheck, true>> = /* @__PURE__ */ Object.freeze({
  known: true,
  indicated: true,
  tolerance: true,
  uncertainty: true,
  rule: true,
});

function ruleOf({ rule, uncertainty }: KnownCheck): DecisionRule {
  if (rule === undefined) return uncertainty === undefined ? "simple acceptance" : "guard band";
  requireChoice(rule, Object.keys(decisionRules), "a decision rule");
  if (rule === "guard band" && uncertainty === undefined) {
    throw new VeladisError("missing-fact", {
      expected: 'the expanded uncertainty (k = 2) of the known level, such as "2 %", which the guard band is made of',
      received: "nothing",
    });
  }
  return rule;
}

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

/** The way to an error: indicated less known, and that in percent of the known level. */
function errorWay(indicated: Amplitude, known: Amplitude, percent: number) {
  const { assumed, history } = derivedAmplitude([indicated, known], indicated.value - known.value, {
    does: "difference",
    note: "error",
  });
  const steps = history as readonly Step[];
  const share: Step = Object.freeze({
    ...({ does: "scale", of: Object.freeze([steps.length - 1]) } as const),
    ...{ over: known.value / 100, value: percent, type: "%", note: "a percent of the known level" },
  });
  return { assumed, history: ownHistory([...steps, share]) };
}

/**
 * What a device shows, held against a known vibration.
 *
 * A level that was clipped by its loop passes nothing: the check is undecided, unless it fails whatever the true level is.
 *
 * @throws {@link VeladisError} `not-positive` for a known level of zero, `missing-unit` for a bare tolerance,
 *   `missing-fact`, `unknown-option` for a mistyped key, `not-finite`, and as {@link convertAmplitude}
 * @example
 * ```ts
 * import { explain } from "veladis";
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
 * checkAgainstKnown({ known, indicated: "7.7 mm/s rms", tolerance: "5 %", uncertainty: "2 %" }).verdict;
 * // => "undecided"
 * ```
 */
export function checkAgainstKnown(check: KnownCheck): KnownCheckResult {
  requireKnownKeys(
    requireGiven(check, "a check with known level, indicated level and tolerance"),
    keys,
    "a part of a check",
  );
  const known = notedAmplitude(
    amplitudeOf(requireGiven(check.known, 'the known level, such as "8 mm/s rms at 2400 r/min"')),
    "known level",
  );
  const shown = notedAmplitude(
    amplitudeOf(requireGiven(check.indicated, 'the level that the device shows, such as "7.3 mm/s rms"')),
    "as shown",
  );
  requirePositive(known.value, "a known level above zero");
  const unit = linearTypeOf(known);
  const indicated = convertAmplitude(shown, unit, known.hertz === undefined ? {} : { at: { hertz: known.hertz } });
  const rule = ruleOf(check);
  const tolerance = marginsOf(check.tolerance, known);
  const uncertainty = check.uncertainty === undefined ? null : marginsOf(check.uncertainty, known);
  const error = indicated.value - known.value;
  const errorPercent = finiteResult((100 * error) / known.value);
  const decision = decisionOn({ rule, error, tolerance, uncertainty, known: known.value });
  const { history, assumed } = errorWay(indicated, linearAmplitude(known), errorPercent);
  return Object.freeze({
    known,
    shown,
    indicated,
    unit,
    error,
    errorPercent,
    errorDecibels: indicated.value > 0 ? 20 * (Math.log10(indicated.value) - Math.log10(known.value)) : null,
    tolerance: tolerance.above,
    uncertainty: uncertainty?.above ?? null,
    ...withinLoop(decision, indicated, known, error),
    rule,
    ruleText: decisionRules[rule],
    assumed: union(union(assumed, tolerance.assumed), uncertainty?.assumed),
    history,
    cautions,
  });
}
