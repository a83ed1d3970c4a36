import type { TripSettings } from "../device/index";
import type { Assumption } from "../reading/index";
import { levelConversion, type RunOptions, type TripEvent, TripLogic, type TripStatus } from "../trip/index";

/** A span of time in which nothing changes but the running of a delay. */
export interface TripSegment {
  readonly from: number;
  readonly to: number;
  readonly status: TripStatus;
}

/** What happened, and what the logic did from each change to the next. */
export interface TripPlayback {
  readonly logic: TripLogic;
  readonly events: readonly TripEvent[];
  readonly segments: readonly TripSegment[];
  /** Levels in the unit of the threshold. */
  readonly levels: readonly number[];
  /** When each level begins, and when the last ends; the last of levels with times is there for a moment. */
  readonly times: readonly number[];
  /** What was assumed in the settings and in bringing the levels to the unit of the threshold. */
  readonly assumed: readonly Assumption[];
}

/** When each level begins, and when the last ends. */
function timesOf(count: number, dt: number | ArrayLike<number>): number[] {
  if (typeof dt === "number") return Array.from({ length: count + 1 }, (_, i) => i * dt);
  const times = Array.from(dt);
  return [...times, times.at(-1) as number];
}

/** Times at which the logic is looked at: where a level begins, and where something happened. */
function moments(times: readonly number[], events: readonly TripEvent[]): number[] {
  const end = times.at(-1) as number;
  const all = [...times, ...events.map(({ time }) => time)].filter((time) => time <= end).sort((a, b) => a - b);
  return all.filter((time, i) => i === 0 || time - (all[i - 1] as number) > 1e-9 * Math.max(1, end));
}

/**
 * The history of a trip channel, told twice by the logic itself: once for its events, once step by step between them
 * for its states.
 */
export function tripPlayback(
  settings: TripSettings,
  levels: ArrayLike<number>,
  dt: number | ArrayLike<number>,
  options: RunOptions,
): TripPlayback {
  const whole = new TripLogic(settings);
  const events = whole.run(levels, dt, { ...options, excursions: true });
  const logic = new TripLogic(settings);
  const times = timesOf(levels.length, dt);
  const { factor } = levelConversion(logic.rules, options);
  const scaled = Array.from(levels, (level) => (factor === 1 ? level : level * factor));
  const commands = [...(options.commands ?? [])].sort((a, b) => a.time - b.time);
  const stops = moments(times, events);
  const segments: TripSegment[] = [];
  const beginsAt = beginnings(events);
  let index = 0;
  stops.slice(0, -1).forEach((from, i) => {
    while (commands[0] !== undefined && commands[0].time <= from + 1e-9) {
      const { do: name } = commands.shift() as (typeof commands)[number];
      if (name === "reset") logic.reset();
      else if (name === "start") logic.start();
      else if (name === "bypass on" || name === "bypass off") logic.bypass(name === "bypass on");
      else logic.power(name === "power back");
    }
    const to = stops[i + 1] as number;
    const soon = from + 1e-6 * (typeof dt === "number" ? dt : 1e-3);
    while (index < scaled.length - 1 && (times[index + 1] as number) <= soon) index++;
    const level = scaled[index] as number;
    const stands = Number.isNaN(level) ? "fault" : level;
    const status = logic.step(stands, 0);
    logic.step(stands, to - from);
    const last = segments.at(-1);
    const begins = beginsAt(from);
    if (last?.status.state === status.state && last.status.contact === status.contact && status.state !== "timing") {
      segments[segments.length - 1] = { ...last, to };
    } else if (last?.status.state === "timing" && status.state === "timing" && !begins) {
      segments[segments.length - 1] = { ...last, to };
    } else segments.push({ from, to, status });
  });
  return { logic, events, segments, levels: scaled, times, assumed: whole.assumed };
}

/** Whether an on-delay begins at a time; asked with times that never fall. */
function beginnings(events: readonly TripEvent[]): (time: number) => boolean {
  const starts = events.filter(({ event }) => event === "timing").map(({ time }) => time);
  let next = 0;
  return (time) => {
    const near = 1e-9 * Math.max(1, time);
    while ((starts[next] ?? Number.POSITIVE_INFINITY) < time - near) next++;
    return (starts[next] ?? Number.POSITIVE_INFINITY) <= time + near;
  };
}
