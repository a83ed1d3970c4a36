import { withParameters } from "../core/index";
import type { ChannelSettings, TripSettings } from "../device/index";
import { isMaskInForce, type TripMask, tripMasks, unmasked } from "./trip-masks";
import { parseVote, type VoteText } from "./vote";
import type { VotedCommand } from "./voted-commands";
import type { VotedRunOptions } from "./voted-run-options";
import { VotedTrip } from "./voted-trip";
import type { VotedTripSettings } from "./voted-types";

/** What a history of several channels came to, or would have with one thing otherwise. */
export interface VoteAlternative {
  /** `as set`, `without the bypass`, or another vote. */
  readonly what: string;
  /** The time of the first trip of the vote in seconds, or null if there was none. */
  readonly first: number | null;
  /** The first-out of that trip; null without one, and where bad channels alone have tripped. */
  readonly firstOut: string | null;
  /** How often the output set. */
  readonly trips: number;
}

/** Settings and commands without one mask. */
function withoutMask(settings: VotedTripSettings, commands: readonly VotedCommand[], mask: TripMask) {
  const { latching, contact, coil } = settings;
  const changed = (channel: ChannelSettings): ChannelSettings => {
    const {
      latching: _,
      contact: __,
      coil: ___,
      ...rest
    } = unmasked({ settings: { ...channel, latching, contact, coil }, commands: [] }, mask).settings;
    return rest;
  };
  const each = (channels: VotedTripSettings["channels"]): VotedTripSettings["channels"] =>
    Object.fromEntries(Object.entries(channels).map(([name, channel]) => [name, changed(channel)]));
  const any = Object.values(settings.channels)[0] as TripSettings;
  return {
    settings: {
      ...settings,
      channels: each(settings.channels),
      ...(settings.alerts && { alerts: each(settings.alerts) }),
    },
    // a mask takes commands away and adds none
    commands: unmasked({ settings: any, commands }, mask).commands as readonly VotedCommand[],
  };
}

/** The votes of trips alone that need as many channels or fewer, or one more, than a vote does. */
function otherVotes(vote: VoteText): VoteText[] {
  const { needed, alerts = 0, of } = parseVote(vote);
  return Array.from({ length: of }, (_, i): VoteText => `${i + 1}oo${of}`).filter(
    (_, i) => i + 1 <= needed + alerts + 1 && (alerts > 0 || i + 1 !== needed),
  );
}

/**
 * What a history of several channels came to, and what it would have come to without each of the masks in force, and
 * with other votes. A bypass is a mask: what it cost in this history is the difference.
 *
 * @param settings - as for {@link VotedTrip}
 * @param histories - as for {@link VotedTrip.run}
 * @param dt - as for {@link VotedTrip.run}
 * @param options - as for {@link VotedTrip.run}; `excursions` changes nothing
 * @throws {@link VeladisError} as {@link VotedTrip} and its `run`
 * @example
 * ```ts
 * import { voteAlternatives } from "veladis/protection";
 *
 * const channel = {
 *   threshold: "6 mm/s rms",
 *   hysteresis: "0.4 mm/s rms",
 *   onDelay: 2,
 *   timerResets: "below threshold",
 *   sensorFault: "bad",
 * } as const;
 * const settings = {
 *   vote: "2oo2",
 *   badChannel: "votes to trip",
 *   channels: { "drive end": channel, "free end": channel },
 *   latching: true,
 *   contact: "normally open",
 *   coil: "normally energised",
 * } as const;
 * const histories = { "drive end": [3, 7, 7, 7, 7], "free end": [3, 3, 3, 3, 3] };
 * voteAlternatives(settings, histories, 1).map(({ what, first }) => `${what}: ${first ?? "no trip"}`);
 * // => ["as set: no trip", "without the on-delay: no trip", "1oo2: 3"]
 * ```
 */
export function voteAlternatives(
  settings: VotedTripSettings,
  histories: { readonly [name: string]: ArrayLike<number> },
  dt: number | ArrayLike<number>,
  options: VotedRunOptions = {},
): readonly VoteAlternative[] {
  return withParameters({ histories, dt, options, settings }, () => {
    const alternative = (
      name: string,
      tried: VotedTripSettings,
      commands: readonly VotedCommand[] | undefined,
    ): VoteAlternative => {
      const run = commands === undefined ? {} : { commands };
      const events = new VotedTrip(tried).run(histories, dt, { ...options, ...run, excursions: false });
      const trips = events.filter(({ channel, event }) => channel === "vote" && event === "trip");
      return Object.freeze({
        what: name,
        first: trips[0]?.time ?? null,
        firstOut: trips[0]?.first ?? null,
        trips: trips.length,
      });
    };
    const asSet = alternative("as set", settings, options.commands);
    const commands = options.commands ?? [];
    const hasFaults =
      options.nan !== undefined &&
      Object.values(histories).some((levels) => Array.prototype.some.call(levels, Number.isNaN));
    const all = [...Object.values(settings.channels), ...Object.values(settings.alerts ?? {})];
    const masks = (Object.keys(tripMasks) as TripMask[]).filter((mask) =>
      all.some((channel) => isMaskInForce(mask, channel as TripSettings, commands, hasFaults)),
    );
    const without = masks.map((mask) => {
      const changed = withoutMask(settings, commands, mask);
      const what = mask === "sensor fault" ? "with a sensor fault as an alarm" : `without the ${mask}`;
      return alternative(what, changed.settings, changed.commands);
    });
    const { alerts: _, ...tripsAlone } = settings;
    const others = otherVotes(settings.vote).map((vote) =>
      alternative(vote, { ...tripsAlone, vote }, options.commands),
    );
    return Object.freeze([asSet, ...without, ...others]);
  });
}
