import { multipliedAmplitude } from "../amplitude/index";
import {
  finiteResult,
  requireKnownOptions,
  requireList,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Amplitude, type Assumption, amplitudeIn, ownHistory, type Step } from "../reading/index";
import type { ImmunitySettings } from "./immunity-settings";
import { largestShock } from "./largest-shock";
import { longestBurst } from "./longest-burst";
import { runningDevice } from "./running-device";
import { type UnitPulse, unitPulse } from "./unit-pulse";

/** What {@link shockImmunity} may be told. */
export interface ImmunityOptions {
  /** Lengths of half-sine shocks in milliseconds; 1, 2, 5 and 11 if not given. */
  readonly milliseconds?: readonly number[];
  /** Levels of bursts as multiples of the threshold; 1.5, 2, 3, 5 and 10 if not given. */
  readonly multiples?: readonly number[];
}

/** The largest shock of one length that does not trip; null where it lies beyond 10 000 g. */
export interface ShockLimit {
  readonly milliseconds: number;
  readonly largest: Amplitude | null;
  /** The same with no on-delay: what the detector alone rides through. */
  readonly withoutDelay: Amplitude | null;
}

/** The longest burst at one level that does not trip, in seconds. */
export interface BurstLimit {
  readonly level: Amplitude;
  readonly timesThreshold: number;
  readonly longest: number;
  /** The same with no on-delay: what the detector alone rides through. */
  readonly withoutDelay: number;
}

/** What a device rides through. */
export interface Immunity {
  readonly shocks: readonly ShockLimit[];
  readonly bursts: readonly BurstLimit[];
  /** What was assumed in threshold, reset level and running vibration, and in what the detector makes of them. */
  readonly assumed: readonly Assumption[];
  /** What was taken for granted of machine, shock and sensor, in words. */
  readonly assumedFacts: readonly string[];
}

const MULTIPLE = "a multiple of the threshold above 1";

const assumedFacts: readonly string[] = /* @__PURE__ */ Object.freeze([
  "the running vibration is one sine at the stated frequency, and its level stands still",
  "a shock is a half-sine of acceleration, taken at the worst of twelve phases of the running vibration",
  "a burst is a steady level that begins and ends at once",
  "the sensor follows without clipping; a real one may overload and hold the device up for longer",
]);

/**
 * The largest shock and the longest burst that do not trip, for a device that runs at a level.
 *
 * An on-delay rides out what is short; RMS averaging rides out what is short and high. A peak detector with a slow
 * decay holds a shock up for longer than the on-delay, and then the delay does not help.
 *
 * @param settings - threshold (acceleration or velocity), hysteresis, on-delay, and the detector of the device
 * @param running - the running vibration with its frequency, below the threshold: `"2.6 mm/s rms at 1485 r/min"`
 * @throws {@link VeladisError} `missing-frequency`, `wrong-quantity`, `out-of-range`, and as {@link TripLogic}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { shockImmunity } from "veladis/protection";
 *
 * const settings = { threshold: "9 mm/s rms", hysteresis: "8 %", timerResets: "below threshold" } as const;
 * const running = "2.6 mm/s rms at 1485 r/min";
 * const slow = { ...settings, onDelay: 8, detector: { kind: "rms", averaging: 1 } } as const;
 * const [burst] = shockImmunity(slow, running, { multiples: [2] }).bursts;
 * burst?.longest.toFixed(1); // => "6.8"
 * burst?.withoutDelay.toFixed(2); // => "0.27"
 * const [shock] = shockImmunity({ ...slow, onDelay: 0 }, running, { milliseconds: [11] }).shocks;
 * shock?.largest && format(shock.largest); // => "1.88 g pk"
 * ```
 */
export function shockImmunity(
  settings: ImmunitySettings,
  running: string | Amplitude,
  options: ImmunityOptions = {},
): Immunity {
  return withParameters({ running, options, settings }, () => {
    const { milliseconds = [1, 2, 5, 11], multiples = [1.5, 2, 3, 5, 10] } = requireKnownOptions(
      options,
      { milliseconds: true, multiples: true },
      { what: "an option of the shocks and bursts", form: "options such as { milliseconds: [5] }" },
    );
    const found = runningDevice(settings, running);
    const { device, rules, hertz, corner, assumed } = found;
    const { threshold } = rules;
    const { set } = device;
    // all is held to sense before any of it is searched, which takes a while
    const pulses = requireList(milliseconds, "a list of lengths of shocks, in ms", { option: "milliseconds" }).map(
      (length, index) =>
        unitPulse(length, 40 * hertz, threshold.quantity === "velocity" ? corner : undefined, {
          place: { parameter: "options", option: "milliseconds", index },
        }),
    );
    const bursts = requireList(multiples, "a list of multiples of the threshold", { option: "multiples" }).map(
      (multiple, index) => {
        const place = { parameter: "options", option: "multiples", index };
        const high = finiteResult(set * requirePositive(multiple, MULTIPLE, place));
        if (multiple <= 1) {
          throw new VeladisError("out-of-range", {
            expected: MULTIPLE,
            received: shown(multiple),
            ...place,
          });
        }
        return Object.freeze({
          level: multipliedAmplitude(threshold, multiple, "a multiple of the threshold"),
          timesThreshold: multiple,
          longest: longestBurst(device, high, rules.onDelay),
          withoutDelay: longestBurst(device, high, 0),
        });
      },
    );
    const limit = (pulse: UnitPulse, delay: number): Amplitude | null => {
      const value = largestShock(device, pulse, delay);
      if (value === null) return null;
      const step: Step = Object.freeze({
        ...({ does: "overall", value, type: "g pk", assumed } as const),
        note: `the largest half-sine of ${pulse.milliseconds} ms that does not trip, found by trial`,
      });
      return Object.freeze({ ...amplitudeIn("g pk", value), assumed, history: ownHistory([step]) });
    };
    const shocks = pulses.map((pulse) => {
      const withoutDelay = limit(pulse, 0);
      const largest = rules.onDelay === 0 ? withoutDelay : limit(pulse, rules.onDelay);
      return Object.freeze({ milliseconds: pulse.milliseconds, largest, withoutDelay });
    });
    return Object.freeze({ shocks: Object.freeze(shocks), bursts: Object.freeze(bursts), assumed, assumedFacts });
  });
}
