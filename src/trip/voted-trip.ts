import {
  requireChoice,
  requireGiven,
  requireKnownKeys,
  requireNonNegative,
  requirePositive,
  requireText,
} from "../core/index";
import { type RelaySettings, relayNow, requireBoolean, requireRelay } from "../device/index";
import { type Assumption, union } from "../reading/index";
import { ChannelVotes } from "./channel-votes";
import { requireLevels } from "./require-levels";
import { requireNames } from "./require-names";
import { type RunOptions, requireRunOptions } from "./run-options";
import { sameLength } from "./same-length";
import type { Level } from "./taken-level";
import type { ResetOutcome } from "./trip-commands";
import type { TripLogic } from "./trip-logic";
import type { TripStatus } from "./trip-status";
import { type BadChannel, badChannels, type VoteText, voted } from "./vote";
import { votedChannels } from "./voted-channels";
import { type VotedEvent, type VotedStatus, type VotedTripSettings, votedKeys, votedRunKeys } from "./voted-types";

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
  readonly #channels: ReadonlyMap<string, TripLogic>;
  readonly #votes: ChannelVotes;
  #set = false;
  #unable = false;
  #first: string | null = null;
  #powered = true;

  /** @throws {@link VeladisError} `missing-fact`, `length-mismatch`, and as {@link TripLogic} */
  constructor(settings: VotedTripSettings) {
    requireGiven(settings, "settings with vote, badChannel, channels and output");
    const { vote, badChannel, channels } = requireKnownKeys(settings, votedKeys, "a setting of a voted trip");
    this.relay = requireRelay(settings);
    this.vote = vote;
    this.badChannel = requireChoice(badChannel, badChannels, "badChannel: what a bad channel counts for");
    this.#channels = votedChannels(vote, channels);
    this.#votes = new ChannelVotes(this.#channels);
  }

  /** What was assumed in thresholds, reset levels and all levels of any channel so far. */
  get assumed(): readonly Assumption[] {
    return [...this.#channels.values()].reduce<readonly Assumption[]>((all, one) => union(all, one.assumed), []);
  }

  /** State and contact now. */
  get status(): VotedStatus {
    return this.#status([]);
  }

  /**
   * Lets a level on every channel last for some seconds.
   *
   * @param levels - a level for every channel by name, as for {@link TripLogic}
   * @param seconds - 0 or more
   * @throws {@link VeladisError} `missing-fact` for a channel without a level, `unknown-option` for a name that is no
   *   channel, and as {@link TripLogic}; nothing has changed then
   */
  step(levels: { readonly [name: string]: Level }, seconds: number): VotedStatus {
    const span = requireNonNegative(seconds, "a time of zero or more for the levels, in s");
    requireNames([...this.#channels.keys()], requireGiven(levels, "a level for every channel, by name"));
    const before = new Map([...this.#channels].map(([name, logic]) => [name, logic.snapshot()]));
    try {
      return this.#all((logic, name) => logic.step(levels[name] as Level, span));
    } catch (error) {
      for (const [name, logic] of this.#channels) logic.resume(before.get(name) ?? logic.snapshot());
      throw error;
    }
  }

  /**
   * Runs whole histories of levels, one column a channel.
   *
   * @param histories - levels of every channel by name, equally many, in unit and detector of its threshold
   * @param dt - seconds that each row lasts
   * @param options - `nan: "sensor fault"` if NaN among the levels stands for one; else it is refused
   * @returns what happened, in order, without excursions that rode the delay out
   * @throws {@link VeladisError} `length-mismatch`, `not-positive`, `unknown-option` for another option, and as {@link VotedTrip.step}; nothing has changed
   *   then
   */
  run(
    histories: { readonly [name: string]: ArrayLike<number> },
    dt: number,
    options: Pick<RunOptions, "nan"> = {},
  ): VotedEvent[] {
    requirePositive(dt, "a time between levels above zero, in s");
    const faults = requireRunOptions(options, votedRunKeys).nan !== undefined;
    requireNames([...this.#channels.keys()], requireGiven(histories, "levels of every channel, by name"));
    const length = sameLength(Object.entries(histories));
    const columns = new Map(Object.entries(histories).map(([name, levels]) => [name, requireLevels(levels, faults)]));
    const events: VotedEvent[] = [];
    for (let i = 0; i < length; i++) {
      const now = this.#eventsOf((logic, name) => {
        const level = columns.get(name)?.[i] as number;
        return logic.step(Number.isNaN(level) ? "fault" : level, dt);
      });
      events.push(...now.filter(({ event }) => event !== "timing" && event !== "rode out"));
    }
    return events;
  }

  /** Resets the latched output by hand; refused while the vote still calls for a trip. */
  reset(): ResetOutcome {
    const { trip } = this.#outcome();
    const refused = this.#refusal(trip);
    if (refused !== undefined) return Object.freeze({ accepted: false, reason: refused });
    this.#set = false;
    this.#first = this.#votes.calling;
    return Object.freeze({ accepted: true });
  }

  /** Tells that the machine was started: inhibit and multiplier of every channel begin anew. */
  start(): VotedStatus {
    return this.#all((logic) => logic.start());
  }

  /** Takes the power of the whole system away, or gives it back. */
  power(on: boolean): VotedStatus {
    this.#powered = requireBoolean(on, "whether the system has power");
    return this.#all((logic) => logic.power(on));
  }

  /** Blocks new trips of one channel, or allows them again; it then votes healthy. */
  bypass(channel: string, on: boolean): VotedStatus {
    const blocked = requireBoolean(on, "whether new trips are blocked");
    requireNames([...this.#channels.keys()], { [requireText(channel, "the name of a channel")]: 0 }, false);
    return this.#all((logic, name) => (name === channel ? logic.bypass(blocked) : logic.status));
  }

  #refusal(trip: boolean): string | undefined {
    if (!this.#set) return "there is nothing to reset";
    if (!this.#powered) return "the device has no power";
    if (!this.relay.latching) return "the output does not latch; it clears by itself";
    return trip ? "the vote still calls for a trip" : undefined;
  }

  #all(change: (logic: TripLogic, name: string) => TripStatus): VotedStatus {
    return this.#status(this.#eventsOf(change));
  }

  /** What happens when every channel is changed, with what the vote makes of it. */
  #eventsOf(change: (logic: TripLogic, name: string) => TripStatus): VotedEvent[] {
    const happened: VotedEvent[] = [];
    for (const [channel, logic] of this.#channels) {
      for (const event of change(logic, channel).events) happened.push({ ...event, channel });
    }
    return this.#voteThrough(happened);
  }

  #outcome() {
    return voted(this.vote, Object.values(this.#votes.now), this.badChannel);
  }

  /** Takes the events of the channels in order of time, and adds those of the vote and the first-out. */
  #voteThrough(happened: readonly VotedEvent[]): VotedEvent[] {
    const noted: VotedEvent[] = [];
    for (const event of [...happened].sort((a, b) => a.time - b.time)) {
      const first = event.event === "trip" && this.#first === null && !this.#set;
      noted.push(Object.freeze(first ? { ...event, firstOut: true } : event));
      if (first) this.#first = event.channel;
      this.#votes.take(event);
      this.#count(event.time, noted);
    }
    return noted;
  }

  #count(time: number, noted: VotedEvent[]): void {
    const { trip, unable } = this.#outcome();
    const add = (event: VotedEvent["event"]) => {
      const { assumed } = this;
      noted.push(Object.freeze({ time, event, channel: "vote", level: null, ...(assumed.length > 0 && { assumed }) }));
    };
    if (unable !== this.#unable) add(unable ? "protection lost" : "protection back");
    this.#unable = unable;
    if (trip && !this.#set && this.#powered) {
      this.#set = true;
      add("trip");
    } else if (!trip && this.#set && !this.relay.latching) {
      this.#set = false;
      // a loss of power ends an output that does not latch without its clearing, as in a channel of its own
      if (this.#powered) add("clear");
    }
    if (!trip && !this.#set) this.#first = this.#votes.calling;
  }

  #status(events: readonly VotedEvent[]): VotedStatus {
    const { trip, unable, effective } = this.#outcome();
    const [any] = this.#channels.values();
    return Object.freeze({
      time: any?.time ?? 0,
      ...relayNow(this.relay, this.#set, this.#powered),
      voting: trip,
      latched: this.#set && !trip,
      unable,
      effective,
      firstOut: this.#first,
      channels: Object.freeze(this.#votes.now),
      events: Object.freeze(events),
      assumed: this.assumed,
    });
  }
}
