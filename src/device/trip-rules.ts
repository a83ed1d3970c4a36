import {
  amountAmplitude,
  type ConvertedAmplitude,
  derivedAmplitude,
  linearAmplitude,
  linearTypeOf,
  notedAmplitude,
} from "../amplitude/index";
import {
  FLOAT_NOISE,
  inPlace,
  requireChoice,
  requireGiven,
  requireKnownKeys,
  requireNonNegative,
  requirePositive,
  shown,
  VeladisError,
} from "../core/index";
import { type Amplitude, type Assumption, exactAmplitude, isClipped } from "../reading/index";
import { type ChannelSettings, sensorFaults, timerResets } from "./trip-settings";

/** Relative allowance for float noise on times, towards the trip; levels have that of {@link FLOAT_NOISE}. */
export const TIME_TOLERANCE = 1e-9;

/** Channel settings as numbers, in the unit and detector of the threshold. */
export interface TripRules {
  readonly threshold: Amplitude;
  /** The output clears below this. */
  readonly reset: Amplitude;
  /** Unit and detector of the threshold. */
  readonly type: string;
  /** What was assumed in threshold and reset level. */
  readonly assumed: readonly Assumption[];
  /** Threshold and reset level less float noise, 2^-23 of each. */
  readonly setAt: number;
  readonly resetAt: number;
  /** The on-delay starts over below this. */
  readonly startOverAt: number;
  /** Seconds. */
  readonly onDelay: number;
  /** Seconds. */
  readonly offDelay: number;
  readonly sensorFault: ChannelSettings["sensorFault"];
  readonly latching: boolean;
  /** Seconds from power-up and from each start in which no trip is set. */
  readonly inhibit: number;
  /** What threshold and reset level are multiplied with for the seconds that `multiplied` says. */
  readonly factor: number;
  readonly multiplied: number;
  /** The longer of the two start-up windows in seconds; once past, neither matters. */
  readonly windows: number;
}

const multiplierKeys: Readonly<Record<keyof NonNullable<ChannelSettings["multiplier"]>, true>> =
  /* @__PURE__ */ Object.freeze({ factor: true, seconds: true });

const THRESHOLD = { option: "threshold" };
const HYSTERESIS = { option: "hysteresis" };

/** The threshold of settings, above zero; a level in decibels goes on as its linear value. */
export function thresholdOf({ threshold }: Pick<ChannelSettings, "threshold">): Amplitude {
  if (typeof threshold === "string" || (typeof threshold === "object" && threshold !== null)) {
    const linear = inPlace(THRESHOLD, () => linearAmplitude(notedAmplitude(exactAmplitude(threshold), "threshold")));
    requirePositive(linear.value, "a threshold above zero", THRESHOLD);
    if (isClipped(linear.state)) {
      throw new VeladisError("out-of-range", {
        expected: "a threshold within the range of the loop that it came by",
        received: `one ${linear.state}`,
        ...THRESHOLD,
      });
    }
    return linear;
  }
  throw new VeladisError(typeof threshold === "number" ? "missing-unit" : "missing-option", {
    expected: 'a threshold with unit and detector, such as "9 mm/s rms"',
    received: shown(threshold),
    ...THRESHOLD,
  });
}

/** The level below which an output set at the threshold clears, in unit and detector of the threshold. */
export function resetLevel(threshold: Amplitude, hysteresis: string): ConvertedAmplitude {
  if (hysteresis === undefined) {
    throw new VeladisError("missing-option", {
      expected: 'a hysteresis such as "8 %" or "0.4 mm/s rms"; "0 %" for none',
      received: shown(hysteresis),
      ...HYSTERESIS,
    });
  }
  const below = inPlace(HYSTERESIS, () => amountAmplitude(hysteresis, threshold));
  const value = threshold.value - below.value;
  if (value > 0) return derivedAmplitude([threshold, below], value, { does: "difference", note: "hysteresis" });
  throw new VeladisError("out-of-range", {
    expected: "a hysteresis smaller than the threshold, or the output could never clear",
    received: shown(hysteresis),
    ...HYSTERESIS,
  });
}

/** A time in seconds that has no default. */
function requireSeconds(given: number, option: string): number {
  const expected = `${option}: a time of zero or more, in s`;
  if (given === undefined) throw new VeladisError("missing-option", { expected, received: shown(given), option });
  return requireNonNegative(given, expected, { option });
}

/**
 * The rules that settings state.
 *
 * @throws {@link VeladisError} `missing-option` for a setting without default that is absent, `missing-unit`,
 *   `unknown-option`, `out-of-range`, `negative`
 */
export function tripRules(settings: ChannelSettings, latching: boolean): TripRules {
  const threshold = thresholdOf(settings);
  const reset = resetLevel(threshold, settings.hysteresis);
  const { offDelay = 0, startInhibit = 0, multiplier } = settings;
  const startOver = requireChoice(settings.timerResets, timerResets, "timerResets: when the on-delay starts over", {
    option: "timerResets",
  });
  if (multiplier !== undefined) {
    requireGiven(multiplier, "a multiplier of the setpoint such as { factor: 2, seconds: 10 }", {
      option: "multiplier",
    });
    requireKnownKeys(multiplier, multiplierKeys, "a part of the multiplier");
  }
  const factor =
    multiplier === undefined
      ? 1
      : requirePositive(multiplier.factor, "a factor on the setpoint above 1", { option: "factor" });
  if (multiplier !== undefined && factor <= 1) {
    throw new VeladisError("out-of-range", {
      expected: "a factor on the setpoint above 1",
      received: shown(factor),
      option: "factor",
    });
  }
  const multiplied =
    multiplier === undefined
      ? 0
      : requirePositive(multiplier.seconds, "a time of the multiplied setpoint above zero, in s", {
          option: "seconds",
        });
  const inhibit = requireSeconds(startInhibit, "startInhibit");
  return Object.freeze({
    threshold,
    reset,
    type: linearTypeOf(threshold),
    assumed: reset.assumed,
    setAt: threshold.value * (1 - FLOAT_NOISE),
    resetAt: reset.value * (1 - FLOAT_NOISE),
    startOverAt: (startOver === "below threshold" ? threshold.value : reset.value) * (1 - FLOAT_NOISE),
    onDelay: requireSeconds(settings.onDelay, "onDelay"),
    offDelay: requireSeconds(offDelay, "offDelay"),
    sensorFault: requireChoice(settings.sensorFault, sensorFaults, "sensorFault: what a sensor fault does", {
      option: "sensorFault",
    }),
    latching,
    inhibit,
    factor,
    multiplied,
    windows: Math.max(inhibit, multiplied),
  });
}
