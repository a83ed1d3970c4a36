import type { TripLogic } from "./trip-logic";
import type { ChannelVote } from "./vote";
import type { VotedEvent } from "./voted-types";

/** What the channels of a vote say, at the moment that the events taken have come to: a channel may be past it already. */
export class ChannelVotes {
  readonly #channels: ReadonlyMap<string, TripLogic>;
  /** Those whose output is set. */
  readonly #set = new Set<string>();
  /** Those whose signal is bad. */
  readonly #bad = new Set<string>();

  constructor(channels: ReadonlyMap<string, TripLogic>) {
    this.#channels = channels;
  }

  /** Takes an event of a channel. */
  take({ channel, event }: VotedEvent): void {
    if (event === "fault" && this.#channels.get(channel)?.rules.sensorFault === "bad") this.#bad.add(channel);
    if (event === "fault over") this.#bad.delete(channel);
    if (event === "trip") this.#set.add(channel);
    if (event === "clear" || event === "power lost") this.#set.delete(channel);
  }

  /** The vote of every channel by its name. */
  get now(): Readonly<Record<string, ChannelVote>> {
    const vote = (name: string) => (this.#bad.has(name) ? "bad" : this.#set.has(name) ? "trip" : "healthy");
    return Object.fromEntries([...this.#channels.keys()].map((name) => [name, vote(name)]));
  }

  /** The first channel that calls for a trip, or null. */
  get calling(): string | null {
    return Object.entries(this.now).find(([, vote]) => vote === "trip")?.[0] ?? null;
  }
}
