import { basename } from "node:path";
import { parseNumeral, shown, VeladisError } from "../../core/index";
import type { TripSettings } from "../../device/index";
import { frequency } from "../../frequency/index";
import { levelConversion, levelGaps, TripLogic, unmaskedTrips } from "../../trip/index";
import { columnsText } from "../input/column-read";
import { csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { inputStream, namedFile } from "../input/open-file";
import { seriesData, seriesText } from "../input/series-told";
import { requireOption } from "../options/option-values";
import { exitCodes } from "../print/exit-codes";
import { historyPlot } from "../print/history-plot";
import { plotText } from "../print/plot-text";
import { type SimulationAnswer, simulationLine, simulationText } from "../print/simulation-answer";
import type { Simulation } from "../print/simulation-text";
import { requireChart, writeChart } from "./chart-file";
import { plotWidth } from "./plot-width";
import {
  commandsOf,
  delaysOf,
  type GivenHistory,
  longestGapOf,
  requireInHistory,
  seriesSettings,
  settingsOf,
} from "./simulate-settings";

/** Carries a recorded history through the trip logic. */
export async function simulateHistory(given: GivenHistory, io: Io): Promise<number> {
  const { values } = given;
  requireChart(values);
  const width = plotWidth(io, values);
  const settings = settingsOf(given);
  const delays = delaysOf(given);
  const from = requireOption(given, "from");
  const commands = commandsOf(values.commands);
  const longest = longestGapOf(given);
  // Settings are read before the file, so that a slip in them shows at once.
  const [first, ...more] = delays.map((onDelay) => ({ ...settings, onDelay }));
  if (first === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--delay with an on-delay in s",
      received: shown(values.delay),
    });
  }
  const drawn = values.plot ? "plot" : values.chart === undefined ? undefined : "chart";
  if (drawn !== undefined && more.length > 0) {
    throw new VeladisError("out-of-range", {
      expected: `one --delay beside --${drawn}`,
      received: shown(values.delay),
      option: drawn,
    });
  }
  for (const one of [first, ...more]) new TripLogic(one);
  const every = values.every === undefined ? undefined : parseNumeral(values.every, "a time between levels in s");
  const file = namedFile(values.file);
  const stream = await inputStream(io, file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--file with a CSV of time and level, or piped CSV",
      received: "nothing",
    });
  }
  const name = file === undefined ? "standard input" : basename(file);
  const faults = values["sensor-fault"] !== undefined;
  const history = await csvLevels(stream, {
    file: name,
    from,
    ...seriesSettings(given),
    column: values.column,
    faults: !faults ? "none" : values["sensor-fault"] === "alarm" ? "said or over range" : "said",
    even: every === undefined ? undefined : { by: `--every ${values.every}`, seconds: every },
    timed: values.every === undefined,
    time: values.time,
  });
  const { levels, times } = history;
  if (every === undefined) requireInHistory(commands, times, history.begins);
  const dt = every ?? times;
  const written = {
    as: from,
    ...(values.at !== undefined && { at: frequency(values.at) }),
    ...(faults && { nan: "sensor fault" as const }),
  };
  const simulate = (tried: TripSettings): Simulation => {
    const logic = new TripLogic(tried);
    const events = logic.run(levels, dt, { ...written, commands, excursions: values.excursions });
    const unmasked = unmaskedTrips(tried, levels, dt, { ...written, commands });
    return { logic, onDelay: tried.onDelay, events, status: logic.status, unmasked };
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
    levels: `in ${from}${values.at === undefined ? "" : ` at ${values.at}`}; each stands ${values.every === undefined ? "until the next" : `for ${values.every} s`}`,
    excursions: values.excursions,
    explain: values.explain,
    isGapGiven: longest !== undefined,
    gaps:
      values.every === undefined
        ? levelGaps(first, levels, times, { ...written, ...(longest !== undefined && { longest }) })
        : undefined,
  };
  await writeChart(values, async (theme) =>
    (await import("../../chart/index")).tripTimeline({ settings: first, levels, dt, ...written, commands, theme }),
  );
  io.err(seriesText(history.told, values.json));
  if (!values.json) {
    const [simulation] = answer.simulations;
    const { factor } = levelConversion(simulation.logic.rules, written);
    const plot = values.plot
      ? historyPlot({
          ...{ simulation, settings: first, commands },
          levels: levels.map((level) => level * factor),
          times: every === undefined ? times : Float64Array.from(levels, (_, i) => i * every),
        })
      : undefined;
    await io.out(simulationText(answer) + (plot === undefined ? "" : `\n${plotText(plot, width)}`));
  } else {
    for (const one of answer.simulations) await io.out(simulationLine(answer, one));
  }
  return exitCodes.done;
}
