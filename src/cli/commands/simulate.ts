import { basename } from "node:path";
import { significant } from "../../amplitude/index";
import { cautions, choice, shown, VeladisError } from "../../core/index";
import type { TripSettings } from "../../device/index";
import { frequency } from "../../frequency/index";
import { type TripCommand, type TripCommandName, TripLogic } from "../../trip/index";
import { csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { openFile } from "../input/open-file";
import { parsedOptions } from "../options/arguments";
import { listed, needed, numberOption, relayOption } from "../options/option-values";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { eventTable, runTable, type Simulation } from "../print/simulation-text";
import type { Command } from "./command";
import { help } from "./simulate-help";

const options = {
  file: { type: "string" },
  time: { type: "string", default: "1" },
  column: { type: "string", default: "2" },
  every: { type: "string" },
  from: { type: "string" },
  at: { type: "string" },
  threshold: { type: "string" },
  hysteresis: { type: "string" },
  delay: { type: "string" },
  "off-delay": { type: "string", default: "0" },
  "timer-resets": { type: "string" },
  latching: { type: "boolean", default: false },
  "non-latching": { type: "boolean", default: false },
  "sensor-fault": { type: "string" },
  inhibit: { type: "string", default: "0" },
  multiplier: { type: "string" },
  relay: { type: "string" },
  commands: { type: "string" },
  excursions: { type: "boolean", default: false },
  json: { type: "boolean", default: false },
} as const;

type Values = ReturnType<typeof parsedOptions<typeof options>>;

function commandsOf(list: string | undefined): TripCommand[] {
  return (list === undefined ? [] : listed(list)).map((one) => {
    const [, name, at] = /^(.+?)\s+at\s+(\S+?)(?:\s*s)?$/.exec(one) ?? [];
    if (name === undefined || at === undefined) {
      throw new VeladisError("syntax", { expected: 'commands such as "reset at 900"', received: shown(one) });
    }
    return { do: name as TripCommandName, at: numberOption(at, "a time of a command in s") };
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
      factor: numberOption(factor, "a factor"),
      seconds: numberOption(seconds.replace(/\s*s$/, ""), "a time in s"),
    },
  };
}

const resets = { threshold: "below threshold", "reset-level": "below reset level" } as const;

/** The settings that the options state, without the delay. */
function settingsOf(values: Values): Omit<TripSettings, "onDelay"> {
  const when = needed(values["timer-resets"], "timer-resets", "threshold or reset-level");
  if (values.latching === values["non-latching"]) {
    throw new VeladisError("missing-fact", {
      expected: "either --latching or --non-latching",
      received: values.latching ? "both" : "nothing",
    });
  }
  choice(when, Object.keys(resets), "--timer-resets with the level below which the on-delay starts over");
  const relay = relayOption(values.relay ?? "normally open, normally energised");
  return {
    threshold: needed(values.threshold, "threshold", '"9 mm/s rms"'),
    hysteresis: needed(values.hysteresis, "hysteresis", '"8 %"; "0 %" for none'),
    offDelay: numberOption(values["off-delay"], "an off-delay in s"),
    timerResets: resets[when as keyof typeof resets],
    sensorFault: (values["sensor-fault"] ?? "alarm") as TripSettings["sensorFault"],
    startInhibit: numberOption(values.inhibit, "an inhibit time in s"),
    ...multiplierOf(values.multiplier),
    latching: values.latching,
    contact: relay.contact as TripSettings["contact"],
    coil: relay.coil as TripSettings["coil"],
  };
}

async function run(args: readonly string[], io: Io): Promise<number> {
  const values = parsedOptions(args, options);
  const settings = settingsOf(values);
  const delays = listed(needed(values.delay, "delay", "2, in s; 0 for none")).map((one) =>
    numberOption(one, "an on-delay in s"),
  );
  const from = needed(values.from, "from", '"g rms", what the levels are written in');
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
  const dt = values.every === undefined ? history.times : numberOption(values.every, "a time between levels in s");
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
        `${JSON.stringify({ file: name, levels: history.levels.length, onDelay, threshold, reset, settings: { ...settings, onDelay }, events, end, cautions })}\n`,
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
      cautionsText(),
  );
  return exitCodes.done;
}

/** Carries a recorded history through the trip logic. */
export const simulateCommand: Command = { help, run };
