import { type Amplitude, amplitudeOf, convertAmplitude } from "../amplitude/index";
import { cautions, choice, given, held, knownKeys, positive, VeladisError } from "../core/index";
import { type Decision, type DecisionRule, decided, decisionRules } from "./decision";
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
  readonly assumed: readonly string[];
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
  choice(rule, Object.keys(decisionRules), "a decision rule");
  if (rule === "guard band" && uncertainty === undefined) {
    throw new VeladisError("missing-fact", {
      expected: 'the expanded uncertainty (k = 2) of the known level, such as "2 %", which the guard band is made of',
      received: "nothing",
    });
  }
  return rule;
}

/**
 * What a device shows, held against a known vibration.
 *
 * @throws {@link VeladisError} `not-positive` for a known level of zero, `missing-unit` for a bare tolerance,
 *   `missing-fact`, `unknown-option` for a mistyped key, `not-finite`, and as {@link convertAmplitude}
 * @example
 * ```ts
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
 * const known = "8 mm/s rms at 2400 r/min";
 * checkAgainstKnown({ known, indicated: "7.7 mm/s rms", tolerance: "5 %", uncertainty: "2 %" }).verdict;
 * // => "undecided"
 * ```
 */
export function checkAgainstKnown(check: KnownCheck): KnownCheckResult {
  knownKeys(given(check, "a check with known level, indicated level and tolerance"), keys, "a part of a check");
  const read = (reading: string | Amplitude, what: string): Amplitude => amplitudeOf(given(reading, what));
  const known = read(check.known, 'the known level, such as "8 mm/s rms at 2400 r/min"');
  const seen = read(check.indicated, 'the level that the device shows, such as "7.3 mm/s rms"');
  positive(known.value, "a known level above zero");
  const hertz = known.hertz ?? seen.hertz;
  const unit = `${known.unit} ${known.detector}`;
  const indicated = convertAmplitude(seen, unit, hertz === undefined ? {} : { at: { hertz } });
  const rule = ruleOf(check);
  const tolerance = marginsOf(check.tolerance, known);
  const uncertainty = check.uncertainty === undefined ? null : marginsOf(check.uncertainty, known);
  const error = indicated.value - known.value;
  return Object.freeze({
    known,
    shown: seen,
    indicated,
    unit,
    error,
    errorPercent: held((100 * error) / known.value),
    errorDecibels: indicated.value > 0 ? 20 * (Math.log10(indicated.value) - Math.log10(known.value)) : null,
    tolerance: tolerance.above,
    uncertainty: uncertainty?.above ?? null,
    ...decided(rule, error, tolerance, uncertainty, known.value),
    rule,
    ruleText: decisionRules[rule],
    assumed: indicated.assumed,
    cautions,
  });
}
