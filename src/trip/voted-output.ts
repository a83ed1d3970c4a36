import type { Assumption } from "../reading/index";
import { union } from "../reading/index";
import { bypassCost } from "./bypass-cost";
import { channelsOutcome, inhibitedOf, voteOf, votingChannels } from "./channel-votes";
import type { TripEvent } from "./trip-events";
import { timeOf } from "./trip-state";
import { type BadChannel, parseVote, type Vote, type VoteOutcome, type VoteText } from "./vote";
import type { Votes } from "./voted-advance";
import type { VotedChannel } from "./voted-channels";
import type { VotedEvent } from "./voted-types";

/** What the output behind a vote remembers. */
export interface OutputState {
  /** Whether it calls for a trip. */
  set: boolean;
  /** Whether the last vote found that no trip was possible. */
  unable: boolean;
  /** The first-out. */
  first: string | null;
  /** The channels whose output is set, the one that has been set longest first. */
  calls: readonly string[];
  /** The channels that a start inhibited at the last vote: one whose inhibit ends with a step is inhibited to its end. */
  inhibited: readonly string[];
}

/** What is told of an alert itself. */
const alertEvents: readonly TripEvent["event"][] = /* @__PURE__ */ Object.freeze([
  "timing",
  "rode out",
  "trip",
  "clear",
]);

/** The output behind a vote: takes what happens to the channels, and votes once all of them have changed. */
export class VotedOutput implements Votes {
  readonly vote: Vote;
  readonly #text: VoteText;
  readonly #badChannel: BadChannel;
  readonly #latching: boolean;
  readonly #channels: readonly VotedChannel[];
  #state: OutputState;
  /** What has happened since the last vote. */
  #pending: VotedEvent[] = [];
  #events: VotedEvent[] = [];

  constructor(vote: VoteText, badChannel: BadChannel, latching: boolean, channels: readonly VotedChannel[]) {
    this.vote = parseVote(vote);
    this.#text = vote;
    this.#badChannel = badChannel;
    this.#latching = latching;
    this.#channels = channels;
    this.#state = { set: false, unable: false, first: null, calls: [], inhibited: inhibitedOf(channels) };
  }

  get state(): OutputState {
    const { calls, inhibited } = this.#state;
    return { ...this.#state, calls: [...calls], inhibited: [...inhibited] };
  }

  set state(state: OutputState) {
    this.#state = state;
  }

  get isPowered(): boolean {
    return this.#channels.every(({ state }) => state.powered);
  }

  /** The last vote. Without power, when none is taken, what it would be. */
  get outcome(): VoteOutcome {
    return this.#outcome(this.#state.inhibited);
  }

  /** The channels that are bypassed. */
  get bypassed(): readonly string[] {
    return votingChannels(this.#channels)
      .filter(({ state }) => state.bypassed)
      .map(({ name }) => name);
  }

  /** Takes an event of a channel; it waits for the vote. */
  take(channel: string, event: TripEvent): void {
    const { calls } = this.#state;
    const isAlert = this.#channels.some(({ name, alertOf }) => name === channel && alertOf !== undefined);
    if (isAlert) {
      // commands and signal are those of its channel, which tells them
      if (alertEvents.includes(event.event)) this.#pending.push({ ...event, channel });
      return;
    }
    const isBypass = event.event === "bypass on" || event.event === "bypass off";
    const { bypassed } = this;
    const cost = isBypass && bypassed.length > 0 ? { cost: bypassCost(this.#text, bypassed).text } : {};
    this.#pending.push({ ...event, channel, ...cost });
    if (event.event === "trip") this.#state.calls = [...calls, channel];
    else if (event.event === "clear" || event.event === "power lost") {
      this.#state.calls = calls.filter((name) => name !== channel);
    }
    // at once, and not at the vote: power may be back by then
    if (event.event === "power lost" && !this.#latching) this.#state.set = false;
  }

  begun(time: number): void {
    this.#state.inhibited = inhibitedOf(this.#channels);
    this.#count(time);
  }

  ended(time: number): void {
    this.#count(time);
  }

  /** Why a reset by hand is refused at present, or undefined when it is not. */
  get refusal(): string | undefined {
    if (!this.#state.set) return "there is nothing to reset";
    if (!this.isPowered) return "the device has no power";
    if (!this.#latching) return "the output does not latch; it clears by itself";
    // a reset belongs to the beginning of what comes: an inhibit that is over is no longer in force for it
    return this.#outcome(inhibitedOf(this.#channels)).trip ? "the vote still calls for a trip" : undefined;
  }

  /** Takes the set output back, since a reset by hand was accepted. */
  reset(): void {
    this.#state.set = false;
    this.#state.first = this.#firstCalling;
  }

  /** Adds an event of the vote; it stands behind what has happened so far. */
  note(time: number, event: VotedEvent["event"], reason?: string): void {
    const { assumed } = this;
    this.#pending.push({
      time,
      event,
      channel: "vote",
      level: null,
      ...(reason !== undefined && { reason }),
      ...(event === "trip" && { first: this.#state.first }),
      ...(assumed.length > 0 && { assumed }),
    });
  }

  /** What has happened since this was last asked for. */
  taken(): VotedEvent[] {
    this.#flush();
    const events = this.#events;
    this.#events = [];
    return events;
  }

  /** What was assumed in thresholds, reset levels and all levels of any channel so far. */
  get assumed(): readonly Assumption[] {
    return this.#channels.reduce<readonly Assumption[]>((all, { state }) => union(all, state.assumed), []);
  }

  /** The time on the clock of all channels. */
  get time(): number {
    const [any] = this.#channels;
    return any === undefined ? 0 : timeOf(any.state);
  }

  get #firstCalling(): string | null {
    const channels = this.#channels;
    const calls = votingChannels(channels).filter((channel) => voteOf(channel, channels) === "trip");
    const calling = new Set(calls.map(({ name }) => name));
    return this.#state.calls.find((name) => calling.has(name)) ?? null;
  }

  #outcome(inhibited: readonly string[]): VoteOutcome {
    return channelsOutcome(this.vote, this.#badChannel, this.#channels, inhibited);
  }

  #flush(): void {
    for (const event of this.#pending) this.#events.push(Object.freeze(event));
    this.#pending = [];
  }

  /** Marks the trip of the channel that is first to call. */
  #markFirst(): void {
    const { first } = this.#state;
    this.#pending = this.#pending.map((event) =>
      event.event === "trip" && event.channel === first ? { ...event, firstOut: true } : event,
    );
  }

  #count(time: number): void {
    const state = this.#state;
    if (!this.isPowered) {
      // a loss of power ends an output that does not latch without its clearing, as in a channel of its own
      if (!this.#latching) state.set = false;
      if (!state.set) state.first = null;
      this.#flush();
      return;
    }
    const { trip, unable } = this.outcome;
    if (!state.set) {
      state.first = this.#firstCalling;
      this.#markFirst();
    }
    if (unable !== state.unable) this.note(time, unable ? "protection lost" : "protection back");
    state.unable = unable;
    if (trip && !state.set) {
      state.set = true;
      this.note(time, "trip");
    } else if (!trip && state.set && !this.#latching) {
      state.set = false;
      state.first = this.#firstCalling;
      this.note(time, "clear");
    }
    this.#flush();
  }
}
