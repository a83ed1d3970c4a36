import { inPlace, requireGiven } from "../core/index";
import { votingChannels } from "./channel-votes";
import { levelConversion, scaledLevels } from "./level-conversion";
import { requireNames } from "./require-names";
import { sameLength } from "./same-length";
import type { VotedChannel } from "./voted-channels";
import type { VotedRun } from "./voted-run-options";

/** The histories of all channels, each in unit and detector of its threshold, in the order of the channels. */
export function votedColumns(
  channels: readonly VotedChannel[],
  histories: { readonly [name: string]: ArrayLike<number> },
  written: VotedRun["written"],
  faults: boolean,
): ReturnType<typeof scaledLevels>[] {
  const names = votingChannels(channels).map(({ name }) => name);
  const place = { parameter: "histories" };
  const columns = inPlace(place, () => {
    requireNames(names, requireGiven(histories, "levels of every channel, by name"));
    const all = names.map((name) => [name, histories[name] as ArrayLike<number>] as const);
    sameLength(all);
    return new Map(all);
  });
  return channels.map(({ name: own, alertOf, rules }) => {
    const name = alertOf ?? own;
    const levels = columns.get(name) as ArrayLike<number>;
    const conversion = levelConversion(rules, written.get(name) ?? {});
    return inPlace({ ...place, option: name }, () => scaledLevels(levels, conversion, faults));
  });
}
