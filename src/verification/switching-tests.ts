import {
  type ConvertedAmplitude,
  convertAmplitude,
  derivedAmplitude,
  linearAmplitude,
  linearTypeOf,
  notedAmplitude,
} from "../amplitude/index";
import { inPlace, requireGiven, requireList, VeladisError, withParameters } from "../core/index";
import { type Amplitude, type Assumption, exactAmplitude, union } from "../reading/index";
import { checkAgainstKnown, type KnownCheck, type KnownCheckResult } from "./check-against-known";
import { requireRest } from "./require-rest";

/** One step of a slow rise or fall: the level of the shaker, and whether the output was then set. */
export interface SwitchingStep {
  readonly level: string | Amplitude;
  readonly set: boolean;
}

/** The point at which an output changed, between two steps. */
export interface SwitchingPoint extends Omit<KnownCheckResult, "shown" | "expected" | "toleranceBelow"> {
  /** The last level without the change and the first with it, in the unit of the setting. */
  readonly between: readonly [number, number];
}

type Rest = Pick<KnownCheck, "tolerance" | "uncertainty" | "rule">;

/** The change that a slow rise or fall shows, held against the setting. */
function switchingPoint(
  parameter: "threshold" | "reset",
  setting: string | Amplitude,
  steps: readonly SwitchingStep[],
  rest: Rest,
) {
  const rising = parameter === "threshold";
  requireRest(rest);
  const known = inPlace({ parameter }, () =>
    linearAmplitude(notedAmplitude(exactAmplitude(requireGiven(setting, "a setting with its unit")), "setting")),
  );
  const type = linearTypeOf(known);
  const at = known.hertz === undefined ? {} : { at: { hertz: known.hertz } };
  const readings = requireList(steps, "a list of steps, each with level and output", { parameter: "steps" }).map(
    ({ level }, index) =>
      inPlace({ parameter: "steps", option: "level", index }, () =>
        convertAmplitude(requireGiven(level, "a level for every step"), type, at),
      ),
  );
  const levels = readings.map(({ value }) => value);
  const wrong = levels.findIndex(
    (level, i) => i > 0 && (rising ? level <= (levels[i - 1] as number) : level >= (levels[i - 1] as number)),
  );
  const change = steps.findIndex(({ set }) => set === rising);
  if (wrong >= 0 || change < 1 || steps.slice(change).some(({ set }) => set !== rising)) {
    throw new VeladisError("out-of-range", {
      expected: rising
        ? "rising levels, the output clear at the first ones and set at the others"
        : "falling levels, the output set at the first ones and clear at the others",
      received:
        wrong >= 0
          ? `${levels[wrong]} ${type} after ${levels[wrong - 1]} ${type}`
          : "an output that does not change so",
      parameter: "steps",
    });
  }
  const [before, after] = [readings[change - 1], readings[change]] as [ConvertedAmplitude, ConvertedAmplitude];
  const {
    shown: _,
    expected: __,
    toleranceBelow: ___,
    ...check
  } = inPlace({ parameter: "rest" }, () => checkAgainstKnown({ known, indicated: midway(before, after), ...rest }));
  return Object.freeze({
    ...check,
    between: Object.freeze([before.value, after.value] as const),
    assumed: readings.reduce<readonly Assumption[]>((all, one) => union(all, one.assumed), check.assumed),
  });
}

/** The level midway between two. */
function midway(one: Amplitude, other: Amplitude): Amplitude {
  const both = derivedAmplitude([one, other], one.value + other.value, { does: "sum" });
  return derivedAmplitude([both], both.value / 2, { does: "scale", over: 2, note: "midway" });
}

/**
 * A trip-point test: the level is raised slowly, waiting out the on-delay at each step, until the output sets.
 *
 * The trip point is taken midway between the last level that did not trip and the first that did.
 *
 * @param threshold - the setpoint as stored: `"9 mm/s rms"`
 * @param steps - levels that rise, each with whether the output was set
 * @throws {@link VeladisError} `out-of-range` unless the levels rise through one change
 * @example
 * ```ts
 * import { tripPointTest } from "veladis/protection";
 *
 * const { between, verdict } = tripPointTest(
 *   "9 mm/s rms",
 *   [
 *     { level: "8.7 mm/s rms", set: false },
 *     { level: "8.9 mm/s rms", set: false },
 *     { level: "9.1 mm/s rms", set: true },
 *   ],
 *   { tolerance: "5 %" },
 * );
 * between; // => [8.9, 9.1]
 * verdict; // => "pass"
 * ```
 */
export function tripPointTest(
  threshold: string | Amplitude,
  steps: readonly SwitchingStep[],
  rest: Rest,
): SwitchingPoint {
  return withParameters({ threshold, steps, rest }, () => {
    return switchingPoint("threshold", threshold, steps, rest);
  });
}

/**
 * A reset-point test: the level is lowered slowly until the output clears, or for a latching one, until a reset by
 * hand is accepted.
 *
 * @param reset - the reset level: threshold less hysteresis, `"8.28 mm/s rms"`
 * @param steps - levels that fall, each with whether the output was still set
 * @throws {@link VeladisError} `out-of-range` unless the levels fall through one change
 * @example
 * ```ts
 * import { resetPointTest } from "veladis/protection";
 *
 * const steps = [
 *   { level: "8.4 mm/s rms", set: true },
 *   { level: "8.3 mm/s rms", set: true },
 *   { level: "8.2 mm/s rms", set: false },
 * ];
 * resetPointTest("8.28 mm/s rms", steps, { tolerance: "2 %" }).verdict; // => "pass"
 * ```
 */
export function resetPointTest(reset: string | Amplitude, steps: readonly SwitchingStep[], rest: Rest): SwitchingPoint {
  return withParameters({ reset, steps, rest }, () => {
    return switchingPoint("reset", reset, steps, rest);
  });
}
