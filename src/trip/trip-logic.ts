import {
  inPlace,
  requireBoolean,
  requireGiven,
  requireKnownKeys,
  requireNonNegative,
  requirePositive,
  shown,
  VeladisError,
} from "../core/index";
import {
  deviceSettings,
  type RelaySettings,
  requireRelay,
  type TripRules,
  type TripSettings,
  tripRules,
} from "../device/index";
import { type Assumption, union } from "../reading/index";
import { keepFirstOut } from "./channel";
import { eventsWithHistory } from "./events-with-history";
import { levelConversion, scaledLevels } from "./level-conversion";
import { type RunOptions, requireRunOptions } from "./run-options";
import { requireState } from "./stored-state";
import { type TripLevel, takenLevel } from "./taken-level";
import { advance } from "./trip-advance";
import { applyCommand, type ResetOutcome, requireCommands, resetByHand, type TripCommand } from "./trip-commands";
import type { TripEvent } from "./trip-events";
import { runHistory } from "./trip-run";
import { takeSignal } from "./trip-scan";
import { initialState, type TripState, timeOf } from "./trip-state";
import { statusOf, type TripStatus } from "./trip-status";

const quiet: readonly TripEvent[] = /* @__PURE__ */ Object.freeze([]);

const SETTINGS = { parameter: "settings" };

/** The relay of settings of a whole device. */
function relayOf(settings: TripSettings): RelaySettings {
  if (typeof settings !== "object" || settings === null) {
    throw new VeladisError("wrong-type", {
      expected: "settings with threshold, hysteresis, delays and output",
      received: shown(settings),
    });
  }
  const known: Readonly<Record<keyof TripSettings, true>> = deviceSettings;
  return requireRelay(requireKnownKeys(settings, known, "a setting of a device"));
}

/**
 * The trip logic of one channel and its relay: a state machine without a clock of its own.
 *
 * Each level lasts for the seconds given with it. The output sets when the level has been at or above the threshold
 * for the on-delay, and clears when it has been below the reset level for the off-delay; a latching output waits for
 * {@link TripLogic.reset}. A delay that ends with a step has run; a step may be split anywhere without changing the
 * outcome. Comparisons allow for float noise towards the trip: one step of a 32-bit
 * float, 2^-23, of a level, and 1e-9 of a time. A latched output outlasts a loss of
 * power; timers and an output that does not latch do not.
 *
 * A model for choosing and proving settings, not a protection device: see {@link cautions}.
 *
 * @example
 * ```ts
 * import { TripLogic } from "veladis/protection";
 *
 * const logic = new TripLogic({
 *   threshold: "9 mm/s rms",
 *   hysteresis: "8 %",
 *   onDelay: 8,
 *   timerResets: "below threshold",
 *   sensorFault: "alarm",
 *   latching: true,
 *   contact: "normally open",
 *   coil: "normally energised",
 * });
 * logic.step(9.4, 7.9).state; // => "timing"
 * logic.step(9.4, 0.1).state; // => "tripped"
 * logic.step(9.4, 1).contact; // => "open"
 * logic.reset(); // => { accepted: false, reason: "the level is not below the reset level" }
 * logic.step("11.5 mm/s pk", 1).state; // => "latched"
 * logic.reset(); // => { accepted: true }
 * logic.step(2.6, 1).contact; // => "closed"
 * ```
 */
export class TripLogic {
  /** The settings as numbers, with the reset level. */
  readonly rules: TripRules;
  readonly relay: RelaySettings;
  #state: TripState;

  /**
   * @param settings - see {@link TripSettings}; what changes when a machine trips has no default
   * @param state - a {@link TripLogic.snapshot} to go on from; power-up at time 0 if not given
   * @throws {@link VeladisError} `missing-option`, `missing-unit`, `unknown-option`, `negative`, `out-of-range`
   */
  constructor(settings: TripSettings, state?: TripState) {
    this.relay = inPlace(SETTINGS, () => relayOf(settings));
    this.rules = inPlace(SETTINGS, () => tripRules(settings, this.relay.latching));
    this.#state = initialState(this.rules.assumed);
    if (state !== undefined) inPlace({ parameter: "state" }, () => this.resume(state));
  }

  /** What was assumed in threshold, reset level and all levels so far. */
  get assumed(): readonly Assumption[] {
    return this.#state.assumed;
  }

  /** Seconds on the clock. */
  get time(): number {
    return timeOf(this.#state);
  }

  /** The trip that set the present output, or null while it is not set. */
  get firstOut(): TripEvent | null {
    return this.#state.firstOut;
  }

  /** State and contact now. */
  get status(): TripStatus {
    return statusOf(this.rules, this.relay, this.#state, quiet);
  }

  /** All that the logic remembers, as plain data. */
  snapshot(): TripState {
    return { ...this.#state };
  }

  /**
   * Goes on from a {@link TripLogic.snapshot}.
   *
   * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `out-of-range` for a state that no run with these
   *   settings could have left; nothing has changed then
   */
  resume(snapshot: TripState): void {
    const state = inPlace({ parameter: "snapshot" }, () => requireState(snapshot, this.rules));
    state.assumed = union(this.rules.assumed, state.assumed);
    keepFirstOut(state);
    this.#state = state;
  }

  /**
   * Lets a level last for some seconds.
   *
   * @param level - a number in unit and detector of the threshold, a reading such as `"6.2 mm/s rms"`, or `"fault"`.
   *   A reading above the range of its loop counts as above every threshold, one below it as a sensor fault
   * @param seconds - 0 or more; at 0 the level is only looked at
   * @returns state and contact at the end of the step, and what happened in it
   * @throws {@link VeladisError} `negative`, `not-a-number`, `not-finite`, `wrong-type`, and as
   *   {@link convertAmplitude} for a reading
   */
  step(level: TripLevel, seconds: number): TripStatus {
    const span = requireNonNegative(seconds, "a time of zero or more for the level, in s", { parameter: "seconds" });
    const { value, above, reason, assumed } = takenLevel(level, this.rules);
    if (assumed.length > 0) this.#state.assumed = union(this.#state.assumed, assumed);
    let events: TripEvent[] | undefined;
    const emit = (event: TripEvent): void => {
      events ??= [];
      events.push(event);
    };
    const channel = { rules: this.rules, state: this.#state, emit };
    takeSignal(channel, value, above, reason);
    advance(channel, span);
    if (events !== undefined) keepFirstOut(this.#state);
    return statusOf(this.rules, this.relay, this.#state, events ?? quiet);
  }

  /**
   * Runs a whole history of levels, one after the other.
   *
   * @param levels - in unit and detector of the threshold, or in `options.as`
   * @param dt - seconds that each level lasts; or the times of the levels, never falling, where each lasts until
   *   the next and the last is only looked at. A fresh logic takes the first time as its own; one that has run goes
   *   on from its time, its last level lasting until the first
   * @returns what happened, in order
   * @throws {@link VeladisError} `negative`, `not-a-number`, `not-finite`, `length-mismatch`, `out-of-range`; nothing
   *   has changed then
   * @example
   * ```ts
   * import { TripLogic } from "veladis/protection";
   *
   * const settings = {
   *   threshold: "7.1 mm/s rms",
   *   hysteresis: "5 %",
   *   onDelay: 3,
   *   timerResets: "below threshold",
   *   sensorFault: "alarm",
   *   latching: false,
   *   contact: "normally closed",
   *   coil: "normally energised",
   * } as const;
   * const history = [4, 4, 9, 9, 4, 8, 8, 8, 8, 4];
   * new TripLogic(settings).run(history, 1).map(({ time, event }) => `${time} s ${event}`);
   * // => ["8 s trip", "9 s clear"]
   * ```
   */
  run(levels: ArrayLike<number>, dt: number | ArrayLike<number>, options: RunOptions = {}): TripEvent[] {
    if (typeof dt === "number") requirePositive(dt, "a time between levels above zero, in s", { parameter: "dt" });
    requireGiven(dt, "a time between levels, or a list of their times, in s", { parameter: "dt" });
    const faults = requireRunOptions(options).nan !== undefined;
    const scaled = scaledLevels(levels, levelConversion(this.rules, options), faults);
    const commands = requireCommands(options.commands);
    const state = { ...this.#state, assumed: union(this.#state.assumed, scaled.assumed) };
    const events = runHistory({ rules: this.rules, state }, { levels: scaled.levels, dt, commands, options });
    keepFirstOut(state);
    this.#state = state;
    return scaled.ofOne.length === 0 ? events : eventsWithHistory(events, () => scaled);
  }

  /** Resets a latched output by hand; refused while the level is not below the reset level. */
  reset(): ResetOutcome {
    return resetByHand({ rules: this.rules, state: this.#state, emit: () => {} });
  }

  /** Tells that the machine was started: inhibit and multiplier begin anew. */
  start(): TripStatus {
    return this.#command("start");
  }

  /** Blocks new trips, or allows them again. It does not clear a trip that is set. Who may do so is for the site to rule. */
  bypass(on: boolean): TripStatus {
    return this.#command(
      requireBoolean(on, "whether new trips are blocked", { parameter: "on" }) ? "bypass on" : "bypass off",
    );
  }

  /** Takes the device's power away, or gives it back, which begins the start-up windows anew. */
  power(on: boolean): TripStatus {
    return this.#command(
      requireBoolean(on, "whether the device has power", { parameter: "on" }) ? "power back" : "power lost",
    );
  }

  #command(name: TripCommand["do"]): TripStatus {
    const events: TripEvent[] = [];
    applyCommand({ rules: this.rules, state: this.#state, emit: (event) => events.push(event) }, name);
    return statusOf(this.rules, this.relay, this.#state, events);
  }
}
