import { convertedAt } from "../amplitude/index";
import { inPlace, requireNonNegative, shown, VeladisError } from "../core/index";
import type { TripRules } from "../device/index";
import { type Amplitude, type Assumption, exactAmplitude } from "../reading/index";

const LEVEL_FORM = 'a level: a number, a reading such as "6.2 mm/s rms", or "fault"';

/** A level as a trip channel takes it: a number in the unit of the threshold, a reading, or `"fault"`. */
export type TripLevel = number | string | Amplitude;

/** A level in the unit of the threshold. */
export interface TakenLevel {
  /** NaN for a sensor fault. */
  readonly value: number;
  /** Whether the signal was above the range of its loop, so that the true level is at least `value`. */
  readonly above: boolean;
  /** Why it is a sensor fault, where there is more than one way. */
  readonly reason?: string;
  readonly assumed: readonly Assumption[];
}

const FAULT: TakenLevel = /* @__PURE__ */ (() => Object.freeze({ value: Number.NaN, above: false, assumed: [] }))();

/**
 * A level as the channel goes on with it. A reading below the range of its loop is a sensor fault: the loop shows no
 * value of its own there.
 */
export function takenLevel(level: TripLevel, { threshold, type }: TripRules): TakenLevel {
  if (typeof level === "number") {
    return {
      value: requireNonNegative(level, `a level of zero or more, in ${type}`, { parameter: "level" }),
      above: false,
      assumed: [],
    };
  }
  if (level === "fault") return FAULT;
  if (typeof level !== "string" && (typeof level !== "object" || level === null)) {
    throw new VeladisError("wrong-type", { expected: LEVEL_FORM, received: shown(level), parameter: "level" });
  }
  const { value, state, assumed } = inPlace({ parameter: "level" }, () =>
    convertedAt(exactAmplitude(level), type, threshold.hertz),
  );
  if (state === "below range") return { ...FAULT, reason: "the signal is below the range of its loop" };
  return { value, above: state === "above range", assumed };
}
