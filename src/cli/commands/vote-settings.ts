import { parseNumeral, shown, VeladisError } from "../../core/index";
import type { ChannelSettings } from "../../device/index";
import { parseVote, type VotedCommand, type VotedTripSettings, type VoteText } from "../../trip/index";
import { parts, requireOption } from "../options/option-values";
import { thresholdsOf } from "../options/threshold-list";
import { commandsOf, delaysOf, type GivenHistory, settingsOf } from "./simulate-settings";

/** What the options say of a vote, all but the names of its channels. */
export interface VoteTold {
  readonly vote: VoteText;
  /** The columns as they were told. */
  readonly columns: readonly string[];
  readonly commands: readonly VotedCommand[];
  /** The settings with channels of these names. */
  readonly named: (names: readonly string[]) => VotedTripSettings;
}

/** A command, the channel of a bypass told apart. */
function votedCommand({ do: name, time }: ReturnType<typeof commandsOf>[number]): VotedCommand {
  const [, bypass, channel] = /^(bypass (?:on|off))\s+(.+)$/.exec(name) ?? [];
  if (bypass === undefined || channel === undefined) return { do: name, time };
  return { do: bypass as VotedCommand["do"], time, channel };
}

/** The one on-delay of a vote. */
function delayOf(given: GivenHistory): number {
  const [delay, ...more] = delaysOf(given);
  if (delay !== undefined && more.length === 0) return delay;
  throw new VeladisError("out-of-range", {
    expected: "--delay with one on-delay in s beside --vote",
    received: `${more.length === 0 ? 0 : more.length + 1}`,
  });
}

/** What a bad channel counts for; where no channel can be bad, on the safe side. */
function badChannelOf(given: GivenHistory): VotedTripSettings["badChannel"] {
  const { values } = given;
  const badChannel = values["sensor-fault"] === "bad" ? requireOption(given, "bad-channel") : values["bad-channel"];
  return (badChannel ?? "votes to trip") as VotedTripSettings["badChannel"];
}

/** The columns of the channels, as many as vote. */
function columnsOf(given: GivenHistory, vote: VoteText): string[] {
  const { of } = parseVote(vote);
  const columns = parts(requireOption(given, "column"));
  const twice = columns.find((one, i) => columns.indexOf(one) !== i);
  if (twice !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "--column with a column of its own for each channel",
      received: `${shown(twice)} twice`,
    });
  }
  if (columns.length === of) return columns;
  throw new VeladisError("length-mismatch", {
    expected: `--column with ${of} columns for ${vote}, such as 2,3; one whose name has a comma by its number`,
    received: `${columns.length}`,
  });
}

/** The settings of the alert, where there is one; threshold and delay are its own. */
function alertOf(given: GivenHistory, channel: ChannelSettings, isMixed: boolean): ChannelSettings | undefined {
  const name = isMixed ? undefined : (["alert", "alert-delay"] as const).find((one) => given.values[one] !== undefined);
  if (name !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: `--${name} with a vote that counts alerts, such as "1 danger and 1 alert of 3"`,
      received: given.values.vote as string,
    });
  }
  if (!isMixed) return undefined;
  return {
    ...channel,
    threshold: requireOption(given, "alert"),
    onDelay: parseNumeral(requireOption(given, "alert-delay"), "an on-delay of the alert in s"),
  };
}

/** What the options say of a vote. */
export function voteTold(given: GivenHistory): VoteTold {
  const vote = given.values.vote as VoteText;
  if (given.values.explain) {
    throw new VeladisError("unknown-option", {
      expected: "--explain for one channel: leave --vote out, with --column for that channel",
      received: "both",
    });
  }
  const drawn = (["plot", "chart", "replace"] as const).find((one) => given.values[one]);
  if (drawn !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: `--${drawn} for one channel: leave --vote out, with --column for that channel`,
      received: "both",
    });
  }
  if (given.values["skip-bad"]) {
    throw new VeladisError("out-of-range", {
      expected: "--sensor-fault beside --vote: a row in which one channel has no level has those of the others",
      received: "--skip-bad",
    });
  }
  const { alerts } = parseVote(vote);
  const columns = columnsOf(given, vote);
  const { latching, contact, coil, ...rest } = settingsOf(given);
  if (thresholdsOf(rest.threshold).length > 1) {
    throw new VeladisError("out-of-range", {
      expected: "--threshold with one setpoint beside --vote",
      received: shown(rest.threshold),
    });
  }
  const channel: ChannelSettings = { ...rest, onDelay: delayOf(given) };
  const alert = alertOf(given, channel, alerts !== undefined);
  const badChannel = badChannelOf(given);
  const each = (names: readonly string[], one: ChannelSettings) =>
    Object.fromEntries(names.map((name) => [name, one] as const));
  return {
    vote,
    columns,
    commands: commandsOf(given.values.commands).map(votedCommand),
    named: (names) => ({
      ...{ vote, badChannel, latching, contact, coil },
      channels: each(names, channel),
      ...(alert !== undefined && { alerts: each(names, alert) }),
    }),
  };
}
