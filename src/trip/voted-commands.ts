import { requireKnownKeys, shown, VeladisError } from "../core/index";
import { requireNames } from "./require-names";
import { requireCommand, type TripCommand } from "./trip-commands";

/** A command in a history of several channels: a bypass is of one channel, every other of all. */
export interface VotedCommand extends TripCommand {
  /** The channel that is bypassed or no longer so; no other command has one. */
  readonly channel?: string;
}

const keys: Readonly<Record<keyof VotedCommand, true>> = /* @__PURE__ */ Object.freeze({
  time: true,
  do: true,
  channel: true,
});

/** A command, with a channel where it needs one and nowhere else. */
export function requireVotedCommand(command: VotedCommand, names: readonly string[]): VotedCommand {
  requireKnownKeys(command, keys, "a part of a command");
  const { time, do: name, channel } = command;
  requireCommand({ time, do: name });
  if (name === "bypass on" || name === "bypass off") {
    if (typeof channel === "string") requireNames(names, { [channel]: 0 }, false);
    else {
      throw new VeladisError("wrong-type", {
        expected: `the channel of ${shown(name)}`,
        received: shown(channel),
        option: "channel",
        allowed: names,
      });
    }
  } else if (channel !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: `${shown(name)} for all channels, without a channel`,
      received: shown(channel),
      option: "channel",
    });
  }
  return command;
}
