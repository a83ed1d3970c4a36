import { withParameters } from "../core/index";
import type { TripSettings } from "../device/index";
import { type Assumption, union } from "../reading/index";
import { type RunOptions, requireRunOptions } from "./run-options";
import { requireCommands } from "./trip-commands";
import type { TripEvent } from "./trip-events";
import { TripLogic } from "./trip-logic";
import { isMaskInForce, type TripMask, tripMasks, unmasked } from "./trip-masks";
import type { TripStateName } from "./trip-status";

/** What a history came to. */
export interface TripOutcome {
  /** The first trip, or null if there was none. */
  readonly first: TripEvent | null;
  /** How often the output set. */
  readonly trips: number;
  /** The state at the end of the history. */
  readonly end: TripStateName;
}

/** What masks hid in a history. */
export interface UnmaskedTrips {
  /** With all settings and commands as they are. */
  readonly asSet: TripOutcome;
  /** The same without one mask, for each that is in force. */
  readonly without: readonly (TripOutcome & { readonly mask: TripMask })[];
  /** Without any of them but the on-delay. */
  readonly onDelayAlone: TripOutcome;
  /** Without any of them. */
  readonly withoutAny: TripOutcome;
  /** With the latch the other way: not latching where the settings latch, latching where they do not. */
  readonly otherLatch: TripOutcome & { readonly latching: boolean };
  /** What was assumed in the threshold and in the levels. */
  readonly assumed: readonly Assumption[];
}

/**
 * What would have happened in a history without the masks: without the on-delay, the start inhibit, the multiplier, each
 * alone and all together. A history that shows no trip may owe that to a mask.
 *
 * The masks are the keys of {@link tripMasks}; only those in force are told. Each is tried on a fresh logic.
 *
 * @param settings - as for {@link TripLogic}
 * @param levels - as for {@link TripLogic.run}
 * @param dt - as for {@link TripLogic.run}
 * @param options - as for {@link TripLogic.run}; `excursions` changes nothing
 * @returns times in seconds, levels in the unit of the threshold
 * @throws {@link VeladisError} as {@link TripLogic} and its `run`
 * @example
 * ```ts
 * import { unmaskedTrips } from "veladis/protection";
 *
 * const settings = {
 *   threshold: "9 mm/s rms",
 *   hysteresis: "8 %",
 *   onDelay: 3,
 *   timerResets: "below threshold",
 *   sensorFault: "alarm",
 *   latching: true,
 *   contact: "normally open",
 *   coil: "normally energised",
 *   multiplier: { factor: 2, seconds: 300 },
 * } as const;
 * const { asSet, without, withoutAny } = unmaskedTrips(settings, [3, 12, 12, 12, 12, 3], 1);
 * asSet.first; // => null
 * without.map(({ mask, first }) => `${mask}: ${first?.time ?? "no trip"}`);
 * // => ["on-delay: no trip", "multiplier: 4"]
 * withoutAny.first?.time; // => 1
 * ```
 */
export function unmaskedTrips(
  settings: TripSettings,
  levels: ArrayLike<number>,
  dt: number | ArrayLike<number>,
  options: RunOptions = {},
): UnmaskedTrips {
  return withParameters({ levels, dt, options, settings }, () => {
    const { excursions: _, ...run } = requireRunOptions(options);
    let assumed: readonly Assumption[] = [];
    const outcome = (tried: TripSettings, masks: readonly TripMask[] = []): TripOutcome => {
      const changed = masks.reduce(unmasked, { settings: tried, commands: run.commands ?? [] });
      const logic = new TripLogic(changed.settings);
      const events = logic.run(levels, dt, { ...run, commands: changed.commands });
      assumed = union(assumed, logic.assumed);
      const trips = events.filter(({ event }) => event === "trip");
      return { first: trips[0] ?? null, trips: trips.length, end: logic.status.state };
    };
    const asSet = outcome(settings);
    const commands = requireCommands(run.commands);
    const hasFaults = run.nan !== undefined && Array.prototype.some.call(levels, Number.isNaN);
    const masks = (Object.keys(tripMasks) as TripMask[]).filter((mask) =>
      isMaskInForce(mask, settings, commands, hasFaults),
    );
    const each = masks.map((mask) => outcome(settings, [mask]));
    const without = masks.map((mask, i) => Object.freeze({ mask, ...(each[i] as TripOutcome) }));
    const alone = masks.filter((mask) => mask !== "on-delay");
    return Object.freeze({
      asSet: Object.freeze(asSet),
      without: Object.freeze(without),
      onDelayAlone: Object.freeze(alone.length === 0 ? asSet : outcome(settings, alone)),
      withoutAny: Object.freeze(masks.length > 1 ? outcome(settings, masks) : (each[0] ?? asSet)),
      otherLatch: Object.freeze({
        latching: !settings.latching,
        ...outcome({ ...settings, latching: !settings.latching }),
      }),
      assumed,
    });
  });
}
