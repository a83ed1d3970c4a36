import { basename } from "node:path";
import { cautions, parseNumeral, shown, VeladisError } from "../../core/index";
import type { TripSettings } from "../../device/index";
import { frequency } from "../../frequency/index";
import { significant } from "../../reading/index";
import { type TripCommand, type TripCommandName, TripLogic } from "../../trip/index";
import { csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { openFile } from "../input/open-file";
import type { Given } from "../options/option-row";
import { needed, parts } from "../options/option-values";
import { relayOption, switchSettings } from "../options/trip-options";
import { assumptionLines } from "../print/assumption-lines";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { eventTable, runTable, type Simulation } from "../print/simulation-text";
import type { simulatePage } from "./simulate-page";

type GivenHistory = Given<typeof simulatePage.options>;

function commandsOf(list: string | undefined): TripCommand[] {
  return (list === undefined ? [] : parts(list)).map((one) => {
    const [, name, at] = /^(.+?)\s+at\s+(\S+?)(?:\s*s)?$/.exec(one) ?? [];
    if (name === undefined || at === undefined) {
      throw new VeladisError("syntax", { expected: 'commands such as "reset at 900"', received: shown(one) });
    }
    return { do: name as TripCommandName, at: parseNumeral(at, "a time of a command in s") };
  });
}

function multiplierOf(written: string | undefined): Pick<TripSettings, "multiplier"> {
  if (written === undefined) return {};
  const [factor, seconds, ...more] = written.split(/\s+for\s+/);
  if (factor === undefined || seconds === undefined || more.length > 0) {
    throw new VeladisError("syntax", {
      expected: 'a factor and a time in s, such as "2 for 30"',
      received: shown(written),
    });
  }
  return {
    multiplier: {
      factor: parseNumeral(factor, "a factor"),
      seconds: parseNumeral(seconds.replace(/\s*s$/, ""), "a time in s"),
    },
  };
}

const resets = { threshold: "below threshold", "reset-level": "below reset level" } as const;

/** The settings that the options state, without the delay. */
function settingsOf(given: GivenHistory): Omit<TripSettings, "onDelay"> {
  const { values } = given;
  const relay = relayOption(values.relay ?? "normally open, normally energised");
  return {
    ...switchSettings(given),
    timerResets: resets[needed(given, "timer-resets")],
    sensorFault: (values["sensor-fault"] ?? "alarm") as TripSettings["sensorFault"],
    startInhibit: parseNumeral(values.inhibit, "an inhibit time in s"),
    ...multiplierOf(values.multiplier),
    contact: relay.contact as TripSettings["contact"],
    coil: relay.coil as TripSettings["coil"],
  };
}

/** Carries a recorded history through the trip logic. */
export async function simulateHistory(given: GivenHistory, io: Io): Promise<number> {
  const { values } = given;
  const settings = settingsOf(given);
  const delays = parts(needed(given, "delay")).map((one) => parseNumeral(one, "an on-delay in s"));
  const from = needed(given, "from");
  const commands = commandsOf(values.commands);
  // Settings are read before the file, so that a slip in them shows at once.
  for (const onDelay of delays) new TripLogic({ ...settings, onDelay });
  const stream = values.file === undefined ? io.piped : await openFile(values.file);
  if (stream === undefined) {
    throw new VeladisError("missing-fact", {
      expected: "--file with a CSV of time and level, or piped CSV",
      received: "nothing",
    });
  }
  const name = values.file === undefined ? "standard input" : basename(values.file);
  const faults = values["sensor-fault"] !== undefined;
  const history = await csvLevels(stream, {
    file: name,
    column: values.column,
    faults,
    ...(values.every === undefined && { time: values.time }),
  });
  const dt = values.every === undefined ? history.times : parseNumeral(values.every, "a time between levels in s");
  const simulations = delays.map((onDelay): Simulation => {
    const logic = new TripLogic({ ...settings, onDelay });
    const events = logic.run(history.levels, dt, {
      as: from,
      commands,
      excursions: values.excursions,
      ...(values.at !== undefined && { at: frequency(values.at) }),
      ...(faults && { nan: "sensor fault" as const }),
    });
    return { logic, onDelay, events, status: logic.status };
  });
  if (values.json) {
    for (const { logic, onDelay, events, status } of simulations) {
      const { time, state, output, coil, contact } = status;
      const end = { time, state, output, ...(values.relay !== undefined && { coil, contact }) };
      const { threshold, reset } = logic.rules;
      await io.out(
        `${JSON.stringify({ file: name, levels: history.levels.length, onDelay, threshold, reset, settings: { ...settings, onDelay }, events, end, assumed: logic.assumed, cautions })}\n`,
      );
    }
    return exitCodes.done;
  }
  const [first] = simulations as [Simulation, ...Simulation[]];
  const good = history.levels.filter((level) => !Number.isNaN(level));
  const { threshold, reset, type } = first.logic.rules;
  await io.out(
    `${name}: ${history.levels.length} levels over ${significant(first.status.time, 4)} s, highest ${significant(good.reduce((a, b) => Math.max(a, b), 0))} ${from}\n` +
      `threshold ${significant(threshold.value, 4)} ${type}, clears below ${significant(reset.value, 4)}, ${settings.latching ? "latching" : "non-latching"}, on-delay starts over ${settings.timerResets}\n\n` +
      (simulations.length > 1 || first.events.length === 0 ? runTable(simulations) : "") +
      (simulations.length === 1 ? eventTable(first, values.relay !== undefined) : "") +
      assumptionLines(first.logic) +
      cautionsText(),
  );
  return exitCodes.done;
}
