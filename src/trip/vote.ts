import { requireChoice, requireList, shown, VeladisError, withParameters } from "../core/index";

/** M channels out of N, as the trade writes it: `"2oo3"`. */
export type VoteText = `${number}oo${number}`;

/** What one channel says. */
export type ChannelVote = "trip" | "healthy" | "bad";

/**
 * What a bad channel counts for.
 *
 * - `votes to trip`, at once and without a delay: 2oo3 becomes 1oo2 of the others; a second bad channel trips;
 * - `does not vote`: 2oo3 becomes 2oo2 of the others; with too few left there is no protection, which `unable` says.
 */
export const badChannels = /* @__PURE__ */ Object.freeze(["votes to trip", "does not vote"] as const);

/** What a bad channel counts for. */
export type BadChannel = (typeof badChannels)[number];

/** M and N of a vote. */
export interface Vote {
  readonly needed: number;
  readonly of: number;
}

/** The outcome of a vote. */
export interface VoteOutcome {
  readonly trip: boolean;
  /** Whether too few good channels are left for a trip to be possible. */
  readonly unable: boolean;
  /** The vote of the channels that are left, e.g. `"1oo2"`; `"0oo..."` means that the bad ones alone trip. */
  readonly effective: string;
}

/**
 * M and N of a vote.
 *
 * @throws {@link VeladisError} `syntax`, or `out-of-range` unless 1 <= M <= N
 * @example
 * ```ts
 * import { parseVote } from "veladis/protection";
 *
 * parseVote("2oo3"); // => { needed: 2, of: 3 }
 * parseVote("3oo2"); // throws out-of-range
 * ```
 */
export function parseVote(vote: VoteText): Vote {
  return withParameters({ vote }, () => {
    const parts = typeof vote === "string" ? /^(\d{1,2})oo(\d{1,2})$/.exec(vote.trim().toLowerCase()) : null;
    if (parts === null) {
      throw new VeladisError(vote === undefined ? "missing-option" : "syntax", {
        expected: 'a vote such as "2oo3"; there is no default',
        received: shown(vote),
        parameter: "vote",
      });
    }
    const parsed = { needed: Number(parts[1]), of: Number(parts[2]) };
    if (parsed.needed >= 1 && parsed.needed <= parsed.of) return Object.freeze(parsed);
    throw new VeladisError("out-of-range", {
      expected: "a vote of at least one channel and no more than there are",
      received: shown(vote),
      parameter: "vote",
    });
  });
}

/** How many of the channels say what; the others are healthy. */
export interface ChannelCounts {
  readonly trip: number;
  /** Bad ones that count towards a trip. */
  readonly badForTrip: number;
  /** Those that cannot call for a trip: bad ones that do not vote, and bypassed ones. */
  readonly silent: number;
}

/** The outcome of a vote with so many channels for a trip, bad, and silent. */
export function outcomeOf({ needed, of }: Vote, { trip, badForTrip, silent }: ChannelCounts): VoteOutcome {
  const good = of - badForTrip - silent;
  const left = Math.max(0, needed - badForTrip);
  return Object.freeze({ trip: trip >= left, unable: left > good, effective: `${left}oo${good}` });
}

/**
 * The outcome of a vote among channels.
 *
 * @param vote - M out of N, e.g. `"2oo3"`
 * @param channels - what each of the N channels says
 * @param badChannel - what a bad channel counts for
 * @throws {@link VeladisError} `length-mismatch` unless there are N channels; `missing-option`, `unknown-option`
 * @example
 * ```ts
 * import { voted } from "veladis/protection";
 *
 * voted("2oo3", ["trip", "healthy", "trip"], "votes to trip");
 * // => { trip: true, unable: false, effective: "2oo3" }
 * voted("2oo3", ["trip", "healthy", "bad"], "votes to trip");
 * // => { trip: true, unable: false, effective: "1oo2" }
 * voted("2oo3", ["trip", "healthy", "bad"], "does not vote");
 * // => { trip: false, unable: false, effective: "2oo2" }
 * voted("2oo2", ["trip", "bad"], "does not vote");
 * // => { trip: false, unable: true, effective: "2oo1" }
 * ```
 */
export function voted(vote: VoteText, channels: readonly ChannelVote[], badChannel: BadChannel): VoteOutcome {
  return withParameters({ vote, channels, badChannel }, () => {
    const parsed = parseVote(vote);
    const bad = requireChoice(badChannel, badChannels, "badChannel: what a bad channel counts for", {
      parameter: "badChannel",
    });
    if (requireList(channels, "a list of what the channels say", { parameter: "channels" }).length !== parsed.of) {
      throw new VeladisError("length-mismatch", {
        expected: `${parsed.of} channels for ${vote}`,
        received: `${channels.length}`,
      });
    }
    const count = { trip: 0, healthy: 0, bad: 0 };
    for (const channel of channels) count[requireChoice(channel, ["trip", "healthy", "bad"], "what a channel says")]++;
    const [badForTrip, silent] = bad === "votes to trip" ? [count.bad, 0] : [0, count.bad];
    return outcomeOf(parsed, { trip: count.trip, badForTrip, silent });
  });
}
