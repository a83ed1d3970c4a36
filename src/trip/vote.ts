import { requireChoice, requireList, shown, VeladisError, withParameters } from "../core/index";

/**
 * M channels out of N, as the trade writes it: `"2oo3"`; or a mixed vote, `"1 danger and 1 alert of 2"`: so many channels
 * at their trip, and so many others at their alert or above.
 */
export type VoteText = `${number}oo${number}` | `${number} danger and ${number} alert of ${number}`;

/** What one channel says: `alert` where its alert is set and its trip is not, which counts in a mixed vote alone. */
export type ChannelVote = "trip" | "alert" | "healthy" | "bad";

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
  /** How many channels must be at their trip. */
  readonly needed: number;
  /** How many others must be at their alert or above, in a mixed vote; left out in one of trips alone. */
  readonly alerts?: number;
  readonly of: number;
}

/** The outcome of a vote. */
export interface VoteOutcome {
  readonly trip: boolean;
  /** Whether too few good channels are left for a trip to be possible. */
  readonly unable: boolean;
  /**
   * The vote of the channels that are left, e.g. `"1oo2"` or `"0 danger and 1 alert of 1"`; `"0oo..."` means that the bad
   * ones alone trip.
   */
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
 * parseVote("1 danger and 1 alert of 2"); // => { needed: 1, alerts: 1, of: 2 }
 * parseVote("3oo2"); // throws out-of-range
 * ```
 */
export function parseVote(vote: VoteText): Vote {
  return withParameters({ vote }, () => {
    const written = typeof vote === "string" ? vote.trim().toLowerCase() : "";
    const parts =
      /^(\d{1,2})()oo(\d{1,2})$/.exec(written) ??
      /^(\d{1,2}) danger and (\d{1,2}) alert of (\d{1,2})$/.exec(written.replace(/\s+/g, " "));
    if (parts === null) {
      throw new VeladisError(vote === undefined ? "missing-option" : "syntax", {
        expected: 'a vote such as "2oo3" or "1 danger and 1 alert of 2"; there is no default',
        received: shown(vote),
        parameter: "vote",
      });
    }
    const [needed, alerts, of] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
    const isMixed = parts[2] !== "";
    if (needed >= 1 && needed + alerts <= of && (alerts >= 1 || !isMixed)) {
      return Object.freeze({ needed, ...(isMixed && { alerts }), of });
    }
    throw new VeladisError("out-of-range", {
      expected: isMixed
        ? "a vote of at least one channel at danger, one at alert, and no more than there are"
        : "a vote of at least one channel and no more than there are",
      received: shown(vote),
      parameter: "vote",
    });
  });
}

/** How many of the channels say what; the others are healthy. */
export interface ChannelCounts {
  readonly trip: number;
  /** At their alert and not at their trip. */
  readonly alert: number;
  /** Bad ones that count towards a trip. */
  readonly badForTrip: number;
  /** Those that cannot call for a trip: bad ones that do not vote, and bypassed ones. */
  readonly silent: number;
}

/** A vote as it is written. */
export function voteText({ needed, alerts, of }: Vote): string {
  return alerts === undefined ? `${needed}oo${of}` : `${needed} danger and ${alerts} alert of ${of}`;
}

/**
 * The outcome of a vote with so many channels for a trip, at alert, bad, and silent. A bad one that counts does so as one
 * at danger: it lowers the number at danger first, then that at alert.
 */
export function outcomeOf(vote: Vote, { trip, alert, badForTrip, silent }: ChannelCounts): VoteOutcome {
  const { needed, alerts, of } = vote;
  const good = of - badForTrip - silent;
  const left = Math.max(0, needed - badForTrip);
  const all = Math.max(0, needed + (alerts ?? 0) - badForTrip);
  return Object.freeze({
    trip: trip >= left && (alerts === undefined || trip + alert >= all),
    unable: all > good,
    effective: voteText({ needed: left, ...(alerts !== undefined && { alerts: all - left }), of: good }),
  });
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
 * voted("1 danger and 1 alert of 3", ["trip", "alert", "healthy"], "votes to trip").trip; // => true
 * voted("1 danger and 1 alert of 3", ["trip", "healthy", "healthy"], "votes to trip").trip; // => false
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
    const count = { trip: 0, alert: 0, healthy: 0, bad: 0 };
    const words = ["trip", "alert", "healthy", "bad"] as const;
    for (const channel of channels) count[requireChoice(channel, words, "what a channel says")]++;
    const [badForTrip, silent] = bad === "votes to trip" ? [count.bad, 0] : [0, count.bad];
    return outcomeOf(parsed, { trip: count.trip, alert: count.alert, badForTrip, silent });
  });
}
