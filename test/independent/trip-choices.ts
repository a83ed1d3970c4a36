import type { Seeded } from "./seeded";
import type { SlowChannelSettings, SlowCommand, SlowSignal } from "./slow-trip";

/** The settings of a channel as the library has them, and as the model has them. */
export interface Channel {
  readonly told: Readonly<Record<string, unknown>>;
  readonly slow: SlowChannelSettings;
  /** Levels worth a look: at the limits, beside them, and far away. */
  readonly levels: readonly number[];
}

/** Times that divide evenly in binary, and some that do not. */
export const spacings = [1, 1, 0.5, 0.25, 0.1, 0.3] as const;

/** Settings of every kind, with delays and windows that end on times and between them. */
export function channelOf(
  r: Seeded,
  dt: number,
  latching: boolean,
  threshold: number = r.oneOf([10, 7.6, 3]),
): Channel {
  const [hysteresis, resetLevel] = r.oneOf([
    ["20 %", threshold * 0.8],
    ["5 %", threshold * 0.95],
    ["0.5 mm/s rms", threshold - 0.5],
  ] as const);
  const some = (most: number): number => dt * r.whole(0, most) * r.oneOf([1, 1, 1, 0.5]);
  const [onDelay, offDelay] = [some(4), r.chance(0.5) ? some(4) : undefined];
  const startsOverBelow = r.oneOf(["threshold", "reset level"] as const);
  const sensorFault = r.oneOf(["alarm", "hold", "bad"] as const);
  const inhibit = r.chance(0.4) ? dt * r.whole(1, 6) * r.oneOf([1, 1, 0.5]) : undefined;
  const multiplier = r.chance(0.4)
    ? { factor: r.oneOf([1.5, 2, 3]), seconds: dt * r.whole(1, 8) * r.oneOf([1, 1, 0.5]) }
    : undefined;
  const factor = multiplier?.factor ?? 2;
  const limits = [threshold, resetLevel, threshold * factor, resetLevel * factor];
  return {
    told: {
      threshold: `${threshold} mm/s rms`,
      hysteresis,
      onDelay,
      timerResets: `below ${startsOverBelow}`,
      sensorFault,
      ...(offDelay !== undefined && { offDelay }),
      ...(inhibit !== undefined && { startInhibit: inhibit }),
      ...(multiplier !== undefined && { multiplier }),
    },
    slow: {
      ...{ threshold, resetLevel, onDelay, startsOverBelow, sensorFault, latching },
      offDelay: offDelay ?? 0,
      inhibit: inhibit ?? 0,
      multiplier: multiplier ?? { factor: 1, seconds: 0 },
    },
    levels: [
      0,
      ...limits,
      Math.fround(threshold),
      ...limits.map((limit) => limit * 0.999),
      ...limits.map((limit) => limit * 1.1),
    ],
  };
}

/** The alert of a channel, below it and with what it does on a fault; the channel is given levels about it, too. */
export function alertOf(r: Seeded, dt: number, channel: Channel): Channel {
  const { told, slow } = channelOf(r, dt, false, r.oneOf([2.5, 1.5]));
  const { sensorFault } = channel.slow;
  (channel.levels as number[]).push(slow.threshold, slow.resetLevel * 0.999);
  return { told: { ...told, sensorFault }, slow: { ...slow, sensorFault }, levels: [] };
}

/** Any level, the last one again, a fault; above the range of a loop where that can be told. */
export function signalOf(r: Seeded, channel: Channel, last: SlowSignal, withRange: boolean): SlowSignal {
  if (last !== "none" && r.chance(0.45)) return last;
  if (r.chance(0.15)) return "failed";
  if (withRange && r.chance(0.08)) return "above";
  return r.oneOf(channel.levels);
}

const commandNames = ["reset", "reset", "start", "bypass on", "bypass off", "power lost", "power back"] as const;
/** A command; a bypass of one of the channels. */
export const commandOf = (r: Seeded, names: readonly string[]): SlowCommand => {
  const name = r.oneOf(commandNames);
  return { do: name, ...(name.startsWith("bypass") && names.length > 0 && { channel: r.oneOf(names) }) };
};
