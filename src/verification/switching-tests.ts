import { type Amplitude, amplitudeOf, convertAmplitude } from "../amplitude/index";
import { given, held, list, nonNegative, numeral, positive, shown, VeladisError, withUnit } from "../core/index";
import { checkAgainstKnown, type KnownCheck, type KnownCheckResult } from "./check-against-known";

const DELAY_TOLERANCE = 'a tolerance such as "5 %" or "0.2 s"';

/** One step of a slow rise or fall: the level of the shaker, and whether the output was then set. */
export interface SwitchingStep {
  readonly level: string | Amplitude;
  readonly set: boolean;
}

/** The point at which an output changed, between two steps. */
export interface SwitchingPoint extends Omit<KnownCheckResult, "shown"> {
  /** The last level without the change and the first with it, in the unit of the setting. */
  readonly between: readonly [number, number];
}

type Rest = Pick<KnownCheck, "tolerance" | "uncertainty" | "rule">;

/** The change that a slow rise or fall shows, held against the setting. */
function switchingPoint(setting: string | Amplitude, steps: readonly SwitchingStep[], rest: Rest, rising: boolean) {
  const { level: _level, ...known } = amplitudeOf(given(setting, "a setting with its unit"));
  const type = `${known.unit} ${known.detector}`;
  const at = known.hertz === undefined ? {} : { at: { hertz: known.hertz } };
  const levels = list(steps, "a list of steps, each with level and output").map(
    ({ level }) => convertAmplitude(given(level, "a level for every step"), type, at).value,
  );
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
    });
  }
  const between = [levels[change - 1] as number, levels[change] as number] as const;
  const { shown: _, ...check } = checkAgainstKnown({
    known,
    indicated: { ...known, value: (between[0] + between[1]) / 2 },
    ...rest,
  });
  return Object.freeze({ ...check, between: Object.freeze(between) });
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
  return switchingPoint(threshold, steps, rest, true);
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
  return switchingPoint(reset, steps, rest, false);
}

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
 * @throws {@link VeladisError} `missing-unit`, `unknown-unit`, `syntax`, `negative`, `missing-fact` without a measurement
 * @example
 * ```ts
 * import { delayTest } from "veladis/protection";
 *
 * delayTest(8, [8.1, 7.9, 8.2], "5 %").verdict; // => "pass"
 * delayTest(8, [8.1, 7.9, 8.2], "0.1 s").worstError.toFixed(1); // => "0.2"
 * ```
 */
export function delayTest(set: number, measured: readonly number[], tolerance: string): DelayTest {
  nonNegative(set, "a set delay of zero or more, in s");
  if (list(measured, "a list of measured delays, in s").length === 0) {
    throw new VeladisError("missing-fact", { expected: "at least one measured delay, in s", received: "nothing" });
  }
  const [digits, unit] = withUnit(tolerance, DELAY_TOLERANCE);
  if (unit !== "%" && unit !== "s") {
    const allowed = ["%", "s"];
    throw new VeladisError("unknown-unit", { expected: DELAY_TOLERANCE, received: shown(tolerance), allowed });
  }
  const number = positive(numeral(digits), "a tolerance above zero");
  const allowed = unit === "%" ? held((set * number) / 100) : number;
  const errors = measured.map((one) => nonNegative(one, "a measured delay of zero or more, in s") - set);
  const worstError = errors.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
  return Object.freeze({
    set,
    measured: Object.freeze([...measured]),
    worstError,
    worstPercent: set === 0 ? null : held((100 * worstError) / set),
    tolerance: allowed,
    verdict: Math.abs(worstError) <= allowed * (1 + 1e-9) + 1e-12 ? "pass" : "fail",
  });
}
