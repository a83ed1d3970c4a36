import { runOn, runOut, spanNoise, transition, untilChange } from "./trip-advance";
import { tick, timeOf } from "./trip-state";
import type { VotedChannel } from "./voted-channels";

/** Takes the votes of an instant, once all channels have changed. */
export interface Votes {
  /** At the beginning of a stretch: commands, levels and the ends of windows have been taken. */
  begun(time: number): void;
  /** At the end of a stretch: what has run out in it has run out. */
  ended(time: number): void;
}

/**
 * Lets the present signals of all channels last for some seconds, in step: from one moment at which any of them can
 * change to the next. Each channel does what `advance` would do with it alone.
 */
export function advanceTogether(channels: readonly VotedChannel[], seconds: number, votes: Votes): void {
  let time = timeOf((channels[0] as VotedChannel).state);
  let left = seconds;
  const noise = Math.max(...channels.map(({ rules }) => spanNoise(rules, seconds)));
  const begin = (): void => {
    for (const channel of channels) transition(channel, time);
    votes.begun(time);
  };
  begin();
  while (left > 0) {
    const span = channels.reduce((most, channel) => untilChange(channel, most), left);
    for (const channel of channels) runOn(channel, span);
    time += span;
    left = left - span > noise ? left - span : 0;
    for (const channel of channels) runOut(channel, time);
    votes.ended(time);
    if (left > 0) begin();
  }
  for (const { state } of channels) tick(state, seconds);
}
