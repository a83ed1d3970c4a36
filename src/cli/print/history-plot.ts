import type { TripSettings } from "../../device/index";
import { significant } from "../../reading/index";
import type { TripCommand, TripCommandName } from "../../trip/index";
import type { Plot } from "./plot-text";
import type { Simulation } from "./simulation-text";

type Spans = Plot["lanes"][number]["spans"];

/** Spans from what begins one to what ends it, the last up to the end. */
function spansBetween(moments: readonly { readonly at: number; readonly begins: boolean }[], end: number): Spans {
  const spans: { from: number; to: number }[] = [];
  let from: number | undefined;
  for (const { at, begins } of moments) {
    if (begins) from ??= at;
    else if (from !== undefined) {
      spans.push({ from, to: at });
      from = undefined;
    }
  }
  return from === undefined ? spans : [...spans, { from, to: end }];
}

/** Spans of commands that switch something on and off. */
function switched(
  commands: readonly TripCommand[],
  [on, off]: readonly [TripCommandName, TripCommandName],
  end: number,
): Spans {
  const moments = commands.flatMap(({ time, do: name }) =>
    name === on || name === off ? [{ at: time, begins: name === on }] : [],
  );
  return spansBetween(moments, end);
}

/** What a history is drawn of. */
export interface DrawnHistory {
  readonly simulation: Simulation;
  readonly settings: Pick<TripSettings, "startInhibit" | "multiplier">;
  readonly commands: readonly TripCommand[];
  /** Levels in unit and detector of the threshold, and when each begins, in s. */
  readonly levels: ArrayLike<number>;
  readonly times: ArrayLike<number>;
}

/** A history with threshold and reset level; below it when the output was set, and the masks. */
export function historyPlot({ simulation, settings, commands: given, levels, times }: DrawnHistory): Plot {
  const { logic, events, status } = simulation;
  const { threshold, reset, type } = logic.rules;
  const commands = [...given].sort((a, b) => a.time - b.time);
  const [from, end] = [times[0] as number, status.time];
  const starts = [from, ...commands.filter(({ do: name }) => name === "start").map(({ time }) => time)];
  const afterStarts = (seconds: number | undefined): Spans =>
    seconds === undefined || seconds === 0
      ? []
      : starts.map((start) => ({ from: start, to: Math.min(end, start + seconds) }));
  const set = events.flatMap(({ time, event }) =>
    event === "trip" || event === "clear" || event === "reset" ? [{ at: time, begins: event === "trip" }] : [],
  );
  const lanes = [
    { text: "output set", spans: spansBetween(set, end), always: true },
    { text: "inhibited", spans: afterStarts(settings.startInhibit) },
    { text: "multiplied", spans: afterStarts(settings.multiplier?.seconds) },
    { text: "bypassed", spans: switched(commands, ["bypass on", "bypass off"], end) },
    { text: "no power", spans: switched(commands, ["power lost", "power back"], end) },
  ];
  return {
    ...{ unit: type, x: times, y: levels, from, to: end, xUnit: "s", holds: true, marks: [] },
    levels: [
      { text: `threshold ${significant(threshold.value)}`, value: threshold.value },
      { text: `reset level ${significant(reset.value)}`, value: reset.value },
    ],
    lanes: lanes.filter(({ spans, always }) => always || spans.length > 0),
  };
}
