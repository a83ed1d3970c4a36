import { lazily, shown, VeladisError } from "../../core/index";
import type { TripSettings } from "../../device/index";
import { levelConversion, TripLogic, unmaskedTrips } from "../../trip/index";
import { columnsText } from "../input/column-read";
import type { Io } from "../input/io";
import { seriesData, seriesText } from "../input/series-told";
import { thresholdsOf } from "../options/threshold-list";
import { exitCodes } from "../print/exit-codes";
import { historyPlot } from "../print/history-plot";
import { plotText } from "../print/plot-text";
import { riddenOut } from "../print/ridden-out";
import { type SimulationAnswer, simulationLine, simulationText } from "../print/simulation-answer";
import type { Simulation } from "../print/simulation-text";
import { requireChart, writeChart } from "./chart-file";
import { gapsOf, hasFaults, historyFile, levelsText, writtenOf } from "./history-file";
import { plotWidth } from "./plot-width";
import {
  commandsOf,
  delaysOf,
  type GivenHistory,
  longestGapOf,
  requireInHistory,
  requireNoVote,
  settingsOf,
} from "./simulate-settings";

/** The settings with the lowest threshold: by them most levels before a gap are high. */
function lowestOf(all: readonly TripSettings[]): TripSettings {
  const thresholdOf = (one: TripSettings): number => new TripLogic(one).rules.threshold.value;
  return all.reduce((lowest, one) => (thresholdOf(one) < thresholdOf(lowest) ? one : lowest));
}

/** Carries a recorded history through the trip logic. */
export async function simulateHistory(given: GivenHistory, io: Io): Promise<number> {
  const { values } = given;
  if (values.vote !== undefined) return (await import("./simulate-vote")).simulateVote(given, io);
  requireNoVote(given);
  requireChart(values);
  const width = plotWidth(io, values);
  const settings = settingsOf(given);
  const thresholds = thresholdsOf(settings.threshold);
  const delays = delaysOf(given);
  const from = writtenOf(given).as;
  const commands = commandsOf(values.commands);
  const longest = longestGapOf(given);
  // Settings are read before the file, so that a slip in them shows at once.
  const [first, ...more] = thresholds.flatMap((threshold) =>
    delays.map((onDelay) => ({ ...settings, threshold, onDelay })),
  );
  if (first === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--delay with an on-delay in s",
      received: shown(values.delay),
    });
  }
  const drawn = (["plot", "chart", "excursions"] as const).find((one) => values[one]);
  if (drawn !== undefined && more.length > 0) {
    throw new VeladisError("out-of-range", {
      expected: `one --threshold and one --delay beside --${drawn}`,
      received: `${more.length + 1} settings`,
      option: drawn,
    });
  }
  for (const one of [first, ...more]) new TripLogic(one);
  const { name, history, dt } = await historyFile(given, io, { column: values.column });
  const { levels, times } = history;
  const faults = hasFaults(given);
  if (values.every === undefined) requireInHistory(commands, times, history.begins);
  const written = writtenOf(given);
  const simulate = (tried: TripSettings): Simulation => {
    const logic = new TripLogic(tried);
    const all = logic.run(levels, dt, { ...written, commands, excursions: true });
    const events = values.excursions ? all : all.filter(({ event }) => event !== "timing" && event !== "rode out");
    const unmasked = lazily(() => unmaskedTrips(tried, levels, dt, { ...written, commands }));
    const { onDelay } = tried;
    const { status } = logic;
    return {
      ...{ logic, settings: tried, onDelay, events, status },
      rodeOut: riddenOut(all, onDelay),
      get unmasked() {
        return unmasked();
      },
    };
  };
  const answer: SimulationAnswer = {
    file: name,
    history,
    read: seriesData(history.told),
    leftOut: history.told.leftOut?.rows ?? 0,
    from,
    settings,
    commands,
    simulations: [simulate(first), ...more.map(simulate)],
    hasRelay: values.relay !== undefined,
    hasSensorFault: faults,
    hasTimerResets: values["timer-resets"] !== undefined,
    columns: columnsText(history.told.columns),
    levels: levelsText(given),
    excursions: values.excursions,
    explain: values.explain,
    isGapGiven: longest !== undefined,
    gaps: gapsOf(given, lowestOf([first, ...more]), levels, times),
  };
  await writeChart(values, [values.file], async (theme) =>
    (await import("../../chart/index")).tripTimeline({
      ...{ settings: first, levels, dt, ...written, commands, theme },
      ...(longest !== undefined && { longestGap: longest }),
    }),
  );
  io.err(seriesText(history.told, values.json));
  if (!values.json) {
    const plotted = (): string => {
      const [simulation] = answer.simulations;
      const { factor } = levelConversion(simulation.logic.rules, written);
      const plot = historyPlot({
        ...{ simulation, settings: first, commands },
        levels: levels.map((level) => level * factor),
        times: typeof dt === "number" ? Float64Array.from(levels, (_, i) => i * dt) : times,
      });
      return `\n${plotText(plot, width)}`;
    };
    await io.out(simulationText(answer) + (values.plot ? plotted() : ""));
  } else {
    for (const one of answer.simulations) await io.out(simulationLine(answer, one));
  }
  return exitCodes.done;
}
