import { inPlace, requireBoolean, requireGiven, requireNonNegative, requirePositive, requireText } from "../core/index";
import type { RelaySettings } from "../device/index";
import { type Assumption, union } from "../reading/index";
import { votingChannels } from "./channel-votes";
import { eventsWithHistory } from "./events-with-history";
import { requireNames } from "./require-names";
import { type TakenLevel, type TripLevel, takenLevel } from "./taken-level";
import { applyCommand, type ResetOutcome } from "./trip-commands";
import type { TripEvent } from "./trip-events";
import { takeSignal } from "./trip-scan";
import type { BadChannel, VoteText } from "./vote";
import { advanceTogether } from "./voted-advance";
import type { VotedChannel } from "./voted-channels";
import { votedColumns } from "./voted-columns";
import type { VotedCommand } from "./voted-commands";
import { VotedOutput } from "./voted-output";
import { runVotedHistory } from "./voted-run";
import { type VotedRunOptions, votedRun } from "./voted-run-options";
import { checkedSettings } from "./voted-settings";
import { resumedOutput, type VotedState, votedState } from "./voted-state";
import { votedStatus } from "./voted-status";
import type { VotedEvent, VotedStatus, VotedTripSettings } from "./voted-types";

/**
 * Trip logic of several channels, each with its own threshold and delay, voted into one relay.
 *
 * @example
 * ```ts
 * import { VotedTrip } from "veladis/protection";
 *
 * const channel = {
 *   threshold: "7.1 mm/s rms",
 *   hysteresis: "5 %",
 *   onDelay: 3,
 *   timerResets: "below threshold",
 *   sensorFault: "bad",
 * } as const;
 * const pair = new VotedTrip({
 *   vote: "2oo2",
 *   badChannel: "votes to trip",
 *   channels: { "drive end": channel, "free end": channel },
 *   latching: true,
 *   contact: "normally open",
 *   coil: "normally energised",
 * });
 * pair.step({ "drive end": 9, "free end": 4 }, 5).output; // => "healthy"
 * const status = pair.step({ "drive end": 9, "free end": "fault" }, 1);
 * status.output; // => "trip"
 * status.firstOut; // => "drive end"
 * status.effective; // => "1oo1"
 * ```
 */
export class VotedTrip {
  readonly vote: VoteText;
  readonly badChannel: BadChannel;
  readonly relay: RelaySettings;
  readonly #channels: readonly VotedChannel[];
  readonly #output: VotedOutput;

  /**
   * @param settings - vote, what a bad channel counts for, channels and relay
   * @param state - a {@link VotedTrip.snapshot} to go on from; power-up at time 0 if not given
   * @throws {@link VeladisError} `missing-fact`, `length-mismatch`, and as {@link TripLogic}
   */
  constructor(settings: VotedTripSettings, state?: VotedState) {
    const take = (name: string, event: TripEvent): void => this.#output.take(name, event);
    const { vote, badChannel, relay, channels } = inPlace({ parameter: "settings" }, () =>
      checkedSettings(settings, take),
    );
    this.relay = relay;
    this.vote = vote;
    this.badChannel = badChannel;
    this.#channels = channels;
    this.#output = new VotedOutput(vote, badChannel, relay.latching, channels);
    if (state !== undefined) inPlace({ parameter: "state" }, () => this.resume(state));
  }

  /** What was assumed in thresholds, reset levels and all levels of any channel so far. */
  get assumed(): readonly Assumption[] {
    return this.#output.assumed;
  }

  /** State and contact now. */
  get status(): VotedStatus {
    return this.#status([]);
  }

  /** All that the logic remembers, as plain data. */
  snapshot(): VotedState {
    return votedState(this.#output.state, this.#channels);
  }

  /**
   * Goes on from a {@link VotedTrip.snapshot}.
   *
   * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `out-of-range` for a state that no run with these
   *   settings could have left; nothing has changed then
   */
  resume(snapshot: VotedState): void {
    const { vote } = this.#output;
    const { badChannel, relay } = this;
    const settings = { vote, badChannel, latching: relay.latching };
    this.#output.state = inPlace({ parameter: "snapshot" }, () => resumedOutput(snapshot, this.#channels, settings));
  }

  /**
   * Lets a level on every channel last for some seconds.
   *
   * @param levels - a level for every channel by name, as for {@link TripLogic}
   * @param seconds - 0 or more
   * @throws {@link VeladisError} `missing-fact` for a channel without a level, `unknown-option` for a name that is no
   *   channel, and as {@link TripLogic}; nothing has changed then
   */
  step(levels: { readonly [name: string]: TripLevel }, seconds: number): VotedStatus {
    const span = requireNonNegative(seconds, "a time of zero or more for the levels, in s", { parameter: "seconds" });
    const taken = inPlace({ parameter: "levels" }, () => {
      requireNames(this.#names, requireGiven(levels, "a level for every channel, by name"));
      return this.#channels.map(({ name, alertOf = name, rules }) =>
        inPlace({ option: alertOf }, () => takenLevel(levels[alertOf] as TripLevel, rules)),
      );
    });
    for (const [i, channel] of this.#channels.entries()) {
      const { value, above, reason, assumed } = taken[i] as TakenLevel;
      channel.state.assumed = union(channel.state.assumed, assumed);
      takeSignal(channel, value, above, reason);
    }
    advanceTogether(this.#channels, span, this.#output);
    return this.#status(this.#output.taken());
  }

  /**
   * Runs whole histories of levels, one column a channel.
   *
   * @param histories - levels of every channel by name, equally many, in unit and detector of its threshold or in
   *   `options.as`
   * @param dt - seconds that each row lasts; or the times of the rows, as for {@link TripLogic.run}
   * @param options - see {@link VotedRunOptions}
   * @returns what happened, in order
   * @throws {@link VeladisError} `length-mismatch`, `not-positive`, `unknown-option` for another option, and as
   *   {@link TripLogic.run}; nothing has changed then
   * @example
   * ```ts
   * import { VotedTrip } from "veladis/protection";
   *
   * const channel = {
   *   threshold: "8 mm/s rms",
   *   hysteresis: "5 %",
   *   onDelay: 2,
   *   timerResets: "below threshold",
   *   sensorFault: "bad",
   * } as const;
   * const pair = new VotedTrip({
   *   vote: "1oo2",
   *   badChannel: "votes to trip",
   *   channels: { "drive end": channel, "free end": channel },
   *   latching: true,
   *   contact: "normally open",
   *   coil: "normally energised",
   * });
   * const histories = { "drive end": [0.1, 0.5, 0.5, 0.5], "free end": [2, 3, 3, 3] };
   * const events = pair.run(histories, 1, {
   *   as: { "drive end": "in/s pk", "free end": "mm/s rms" },
   *   commands: [{ time: 0, do: "bypass on", channel: "free end" }],
   * });
   * events.map(({ time, channel, event, cost }) => `${time} s ${channel} ${event}${cost ? `: ${cost}` : ""}`);
   * // => ["0 s free end bypass on: with free end bypassed 1oo2 becomes 1oo1",
   * //   "3 s drive end trip", "3 s vote trip"]
   * ```
   */
  run(
    histories: { readonly [name: string]: ArrayLike<number> },
    dt: number | ArrayLike<number>,
    options: VotedRunOptions = {},
  ): VotedEvent[] {
    if (typeof dt === "number") requirePositive(dt, "a time between levels above zero, in s", { parameter: "dt" });
    requireGiven(dt, "a time between levels, or a list of their times, in s", { parameter: "dt" });
    const { faults, excursions, commands, written } = votedRun(options, this.#names);
    const columns = votedColumns(this.#channels, histories, written, faults);
    const channels = this.#channels;
    const work = { channels, votes: this.#output, apply: (command: VotedCommand) => this.#apply(command) };
    runVotedHistory(work, { columns: columns.map(({ levels }) => levels), dt, commands }, () => {
      for (const [i, { state }] of channels.entries()) state.assumed = union(state.assumed, columns[i]?.assumed ?? []);
    });
    const byName = new Map(channels.map(({ name }, i) => [name, columns[i]]));
    const events = eventsWithHistory(this.#output.taken(), ({ channel }) => byName.get(channel));
    return excursions ? events : events.filter(({ event }) => event !== "timing" && event !== "rode out");
  }

  /** Resets the latched output by hand; refused while the vote still calls for a trip. */
  reset(): ResetOutcome {
    const reason = this.#output.refusal;
    if (reason !== undefined) return Object.freeze({ accepted: false, reason });
    this.#output.reset();
    return Object.freeze({ accepted: true });
  }

  /** Tells that the machine was started: inhibit and multiplier of every channel begin anew. */
  start(): VotedStatus {
    return this.#command({ do: "start" });
  }

  /** Takes the power of the whole system away, or gives it back. */
  power(on: boolean): VotedStatus {
    return this.#command({
      do: requireBoolean(on, "whether the system has power", { parameter: "on" }) ? "power back" : "power lost",
    });
  }

  /**
   * Blocks new trips of one channel, or allows them again. While it is bypassed the channel votes healthy, whatever its
   * level, its output or a sensor fault says; what that costs is told as `bypass` of the status and `cost` of the event.
   */
  bypass(channel: string, on: boolean): VotedStatus {
    const blocked = requireBoolean(on, "whether new trips are blocked", { parameter: "on" });
    inPlace({ parameter: "channel" }, () =>
      requireNames(this.#names, { [requireText(channel, "the name of a channel")]: 0 }, false),
    );
    return this.#command({ do: blocked ? "bypass on" : "bypass off", channel });
  }

  get #names(): string[] {
    return votingChannels(this.#channels).map(({ name }) => name);
  }

  /** Carries out a command of a history. */
  #apply({ do: name, channel: bypassed }: Omit<VotedCommand, "time">): void {
    if (name === "reset") {
      const { accepted, reason } = this.reset();
      this.#output.note(this.#output.time, accepted ? "reset" : "reset refused", reason);
      return;
    }
    for (const channel of this.#channels) {
      if (bypassed === undefined || bypassed === (channel.alertOf ?? channel.name)) applyCommand(channel, name);
    }
  }

  /** Carries out a command that is an instant of its own. */
  #command(command: Omit<VotedCommand, "time">): VotedStatus {
    this.#apply(command);
    this.#output.begun(this.#output.time);
    return this.#status(this.#output.taken());
  }

  #status(events: readonly VotedEvent[]): VotedStatus {
    const { vote, relay } = this;
    return votedStatus({ output: this.#output, vote, relay, channels: this.#channels }, events);
  }
}
