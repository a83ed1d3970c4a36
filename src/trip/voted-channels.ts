import { inPlace, requireGiven, shown, VeladisError } from "../core/index";
import type { ChannelSettings } from "../device/index";
import type { Channel } from "./channel";
import { requireNames } from "./require-names";
import type { TripEvent } from "./trip-events";
import { TripLogic } from "./trip-logic";
import { parseVote } from "./vote";
import type { VotedTripSettings } from "./voted-types";

/** A channel of a voted trip, or the alert of one. */
export interface VotedChannel extends Channel {
  readonly name: string;
  /** The channel that it is the alert of; left out for a channel. */
  readonly alertOf?: string;
}

type Emit = (name: string, event: TripEvent) => void;

const ALERT = "the settings of the alert";

/** The relay stands behind the vote: a channel only says whether it calls for a trip. */
const noRelay = { latching: false, contact: "normally open", coil: "normally energised" } as const;

/** A channel of its settings, at power-up. */
function channelOf(name: string, settings: ChannelSettings, emit: Emit): VotedChannel {
  const logic = inPlace(
    { option: name },
    () => new TripLogic({ ...requireGiven(settings, `settings of channel ${shown(name)}`), ...noRelay }),
  );
  return { name, rules: logic.rules, state: logic.snapshot(), emit: (event) => emit(name, event) };
}

/** The alert of a channel, refused where it is not below the trip or where the two could not be told as one. */
function alertOf({ name: channel, rules }: VotedChannel, settings: ChannelSettings, emit: Emit): VotedChannel {
  const alert = channelOf(`${channel} alert`, settings, emit);
  const { threshold, type, sensorFault } = alert.rules;
  const refuse = (expected: string, received: string, option: string): never => {
    throw new VeladisError("out-of-range", { expected, received, option });
  };
  if (type !== rules.type) refuse(`an alert in ${rules.type}, as the trip of the channel is`, type, "threshold");
  if (threshold.value >= rules.threshold.value) {
    refuse(`an alert below the trip of ${rules.threshold.value} ${type}`, `${threshold.value} ${type}`, "threshold");
  }
  if (sensorFault !== rules.sensorFault) {
    refuse(`the sensorFault of the channel, ${shown(rules.sensorFault)}`, shown(sensorFault), "sensorFault");
  }
  return { ...alert, alertOf: channel };
}

/** Refuses alerts that are not one a channel, where the vote counts them, and no alerts where it does not. */
function requireAlerts(isMixed: boolean, names: readonly string[], alerts: VotedTripSettings["alerts"]): void {
  if (!isMixed && alerts === undefined) return;
  const place = { option: "alerts" };
  if (!isMixed) {
    throw new VeladisError("out-of-range", {
      expected: 'no alerts with a vote of trips alone; they count in one such as "1 danger and 1 alert of 2"',
      received: "alerts",
      ...place,
    });
  }
  inPlace(place, () =>
    requireNames(names, requireGiven(alerts, "settings of the alert of every channel, by name"), ALERT),
  );
  const twice = names.find((name) => names.includes(`${name} alert`));
  if (twice === undefined) return;
  throw new VeladisError("out-of-range", {
    expected: "channels that are not named as the alert of another",
    received: shown(`${twice} alert`),
    option: "channels",
  });
}

/**
 * The channels in the order of the settings, as many as the vote counts, at power-up; behind them their alerts, in the
 * same order, where the vote is mixed.
 *
 * @param emit - takes what happens to a channel
 * @throws {@link VeladisError} `missing-fact`, `length-mismatch`, and as {@link TripLogic}
 */
export function votedChannels(
  { vote, channels, alerts }: Pick<VotedTripSettings, "vote" | "channels" | "alerts">,
  emit: Emit,
): readonly VotedChannel[] {
  const parsed = inPlace({ option: "vote" }, () => parseVote(vote));
  const entries = Object.entries(requireGiven(channels, "settings of the channels by name", { option: "channels" }));
  if (entries.length !== parsed.of) {
    throw new VeladisError("length-mismatch", {
      expected: `${parsed.of} channels for ${vote}`,
      received: `${entries.length}`,
      option: "channels",
    });
  }
  const made = entries.map(([name, channel]) => channelOf(name, channel, emit));
  requireAlerts(
    parsed.alerts !== undefined,
    made.map(({ name }) => name),
    alerts,
  );
  if (alerts === undefined) return made;
  return [...made, ...made.map((one) => alertOf(one, alerts[one.name] as ChannelSettings, emit))];
}
