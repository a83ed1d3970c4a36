import { convertAmplitude, multipliedAmplitude } from "../amplitude/index";
import {
  finiteResult,
  inPlace,
  requireChoice,
  requireGiven,
  requireKnownKeys,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Amplitude, type Assumption, parseAmplitude, union } from "../reading/index";
import type { ImmunitySettings } from "./immunity-settings";
import { type PulseShape, pulseShapes } from "./pulse-shapes";
import { runningDevice } from "./running-device";
import { timeAbove } from "./time-above";
import { unitPulse } from "./unit-pulse";

/** A shock as {@link shockResponse} takes it. */
export interface Shock {
  /** Its peak as acceleration, e.g. `"20 g pk"`. */
  readonly peak: string;
  /** Its length in milliseconds. */
  readonly milliseconds: number;
  /** `"half-sine"` if not given. */
  readonly shape?: PulseShape;
}

/** What a device shows of a shock, and what its on-delay makes of it. */
export interface ShockResponse {
  readonly shape: PulseShape;
  readonly milliseconds: number;
  readonly peak: Amplitude;
  /** The highest level that the device shows, in unit and detector of the threshold. */
  readonly highest: Amplitude;
  readonly timesThreshold: number;
  /** For how long the level is up, in seconds; 0 where it does not reach the threshold. */
  readonly above: number;
  readonly trips: boolean;
  /** What the on-delay has left when the level is down again, in seconds; null where there is a trip. */
  readonly margin: number | null;
  readonly assumed: readonly Assumption[];
  /** What was taken for granted of machine, shock and sensor, in words. */
  readonly assumedFacts: readonly string[];
}

const assumedFacts: readonly string[] = /* @__PURE__ */ Object.freeze([
  "the running vibration is one sine at the stated frequency, and its level stands still",
  "the shock is taken at twelve phases of the running vibration, and the worst is told",
  "the sensor follows without clipping, and nothing rings at its mounting; a real one may overload and hold the device up for longer",
]);

const shockKeys: Readonly<Record<keyof Shock, true>> = /* @__PURE__ */ Object.freeze({
  peak: true,
  milliseconds: true,
  shape: true,
});

/** Phases of the running vibration at which a shock is tried. */
const PHASES = 12;

/**
 * What a device shows of one shock on top of its running vibration, and whether its on-delay rides it out.
 *
 * @param settings - as for {@link shockImmunity}
 * @param running - the running vibration with its frequency: `"2.6 mm/s rms at 1485 r/min"`
 * @param shock - peak, length and shape
 * @throws {@link VeladisError} `wrong-quantity` for a shock that is no peak of acceleration, and as {@link shockImmunity}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { shockResponse } from "veladis/protection";
 *
 * const settings = {
 *   threshold: "9 mm/s rms",
 *   hysteresis: "8 %",
 *   timerResets: "below threshold",
 *   onDelay: 8,
 *   detector: { kind: "rms", averaging: 1 },
 * } as const;
 * const knock = shockResponse(settings, "2.6 mm/s rms at 1485 r/min", { peak: "20 g pk", milliseconds: 11 });
 * format(knock.highest); // => "88.6 mm/s rms"
 * [knock.trips, knock.margin?.toFixed(1)]; // => [false, "3.3"]
 * ```
 */
export function shockResponse(settings: ImmunitySettings, running: string | Amplitude, shock: Shock): ShockResponse {
  return withParameters({ running, shock, settings }, () => {
    const { device, rules, hertz, corner, assumed } = runningDevice(settings, running);
    const place = { parameter: "shock" };
    const given = inPlace(place, () =>
      requireKnownKeys(
        requireGiven(shock, 'a shock such as { peak: "20 g pk", milliseconds: 11 }', place),
        shockKeys,
        "a part of a shock",
      ),
    );
    const peak = inPlace({ ...place, option: "peak" }, () => parseAmplitude(given.peak));
    if (peak.quantity !== "acceleration" || peak.detector !== "pk") {
      throw new VeladisError("wrong-quantity", {
        expected: 'the peak of a shock as acceleration, such as "20 g pk"',
        received: shown(given.peak),
        ...place,
        option: "peak",
      });
    }
    const shapes = Object.keys(pulseShapes) as PulseShape[];
    const shape = requireChoice(given.shape ?? "half-sine", shapes, "the shape of a shock", {
      ...place,
      option: "shape",
    });
    const isVelocity = rules.threshold.quantity === "velocity";
    const pulse = unitPulse(given.milliseconds, 40 * hertz, isVelocity ? corner : undefined, {
      ...{ place: { ...place, option: "milliseconds" }, shape },
    });
    const g = convertAmplitude(peak, "g pk").value;
    const amplitude = device.rms ? device.level * Math.SQRT2 : device.level;
    const all = Array.from({ length: PHASES }, (_, phase) => {
      const beneath = Float64Array.from(
        pulse.response,
        (_, i) => amplitude * Math.sin(2 * Math.PI * ((hertz * i) / pulse.rate + phase / PHASES)),
      );
      return timeAbove(device, pulse, g, beneath);
    });
    const times = finiteResult(Math.max(...all.map(({ highest }) => highest)) / device.set);
    const above = finiteResult(Math.max(...all.map((one) => one.above)));
    const trips = all.some(({ reached, above: up }) => reached && up >= rules.onDelay);
    const highest = multipliedAmplitude(rules.threshold, times, "the highest level shown, over the threshold");
    return Object.freeze({
      shape,
      milliseconds: given.milliseconds,
      peak,
      highest,
      timesThreshold: times,
      above,
      trips,
      margin: trips ? null : rules.onDelay - above,
      assumed: union(assumed, peak.assumed),
      assumedFacts,
    });
  });
}
