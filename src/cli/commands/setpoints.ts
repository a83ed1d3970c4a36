import { shown, VeladisError } from "../../core/index";
import { type Device, storedSetpoint } from "../../device/index";
import { type Frequency, hertz } from "../../frequency/index";
import { type Baseline, baseline, proposeSetpoints } from "../../setpoints/index";
import { parseMachine } from "../../severity/index";
import { csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { openFile } from "../input/open-file";
import { parsedOptions } from "../options/arguments";
import { bandOption, listed, needed, numberOption } from "../options/option-values";
import { choiceOf } from "../options/scheme-choice";
import { sheetText } from "../options/sheet-option";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { baselineText, proposalText, storedText } from "../print/proposal-text";
import type { Command } from "./command";
import { help } from "./setpoints-help";

const options = {
  baseline: { type: "string" },
  file: { type: "string" },
  from: { type: "string" },
  column: { type: "string", default: "2" },
  time: { type: "string", default: "1" },
  "start-up": { type: "string" },
  scheme: { type: "string" },
  limits: { type: "string" },
  machine: { type: "string" },
  k: { type: "string", default: "3" },
  "noise-floor": { type: "string" },
  "full-scale": { type: "string" },
  loop: { type: "string" },
  step: { type: "string" },
  lowest: { type: "string" },
  highest: { type: "string" },
  band: { type: "string" },
  rounds: { type: "string" },
  asked: { type: "string" },
  delay: { type: "string" },
  sheet: { type: "string" },
  name: { type: "string" },
  json: { type: "boolean", default: false },
} as const;

type Values = ReturnType<typeof parsedOptions<typeof options>>;

async function baselineFrom(values: Values): Promise<Baseline | string> {
  if (values.file === undefined) return needed(values.baseline, "baseline", '"2 mm/s rms", or --file with readings');
  const as = needed(values.from, "from", '"mm/s rms", what the readings are written in');
  const first = values["start-up"];
  const { levels, times } = await csvLevels(await openFile(values.file), {
    file: values.file,
    column: values.column,
    faults: false,
    ...(first !== undefined && { time: values.time }),
  });
  return baseline(levels, {
    as,
    ...(first !== undefined && {
      time: { readings: times, from: numberOption(first, "the end of start-up in s") },
    }),
  });
}

function deviceOf(values: Values): Device {
  const { step, lowest, highest, band, rounds } = values;
  const [low, high] = band === undefined ? [] : bandOption(band);
  return {
    ...(step !== undefined && { step }),
    ...(lowest !== undefined && { lowest }),
    ...(highest !== undefined && { highest }),
    ...(rounds !== undefined && { rounds: rounds as "nearest" }),
    ...(low !== undefined && high !== undefined && { band: { lowest: { hertz: low }, highest: { hertz: high } } }),
  };
}

function limitsOf(values: Values) {
  if (values.limits === undefined) return {};
  const [lower, upper] = listed(values.limits);
  if (lower === undefined || upper === undefined) {
    throw new VeladisError("syntax", {
      expected: '--limits with B/C and C/D, such as "4.5 mm/s rms, 7.1 mm/s rms"',
      received: shown(values.limits),
    });
  }
  return { limits: { "B/C": lower, "C/D": upper, source: "limits given by the user" } };
}

async function run(args: readonly string[], io: Io): Promise<number> {
  const values = parsedOptions(args, options);
  const given = await baselineFrom(values);
  const machine = values.machine === undefined ? undefined : parseMachine(values.machine);
  const device = deviceOf(values);
  const at: Frequency | undefined = machine?.speed === undefined ? undefined : { hertz: hertz(machine.speed) };
  const proposal = proposeSetpoints({
    baseline: given,
    ...(values.scheme !== undefined && { scheme: (await choiceOf(values.scheme, values.machine ?? "")).scheme }),
    ...limitsOf(values),
    ...(machine !== undefined && { machine }),
    sensor: {
      ...(values["noise-floor"] !== undefined && { noiseFloor: values["noise-floor"] }),
      ...(values["full-scale"] !== undefined && { fullScale: values["full-scale"] }),
      ...(values.loop !== undefined && { loop: values.loop }),
    },
    device,
    k: numberOption(values.k, "a number of standard deviations"),
    ...(values.delay !== undefined && { onDelay: numberOption(values.delay, "a delay in s") }),
  });
  const asked = values.asked === undefined ? undefined : storedSetpoint(values.asked, device, at);
  const statistics = typeof given === "string" ? undefined : given;
  if (values.json) {
    await io.out(`${JSON.stringify({ ...proposal, ...(statistics && { statistics }), ...(asked && { asked }) })}\n`);
    return exitCodes.done;
  }
  if (values.sheet !== undefined) {
    await io.out(
      sheetText(values.sheet, {
        machine: values.name ?? values.machine ?? "Machine",
        ...(statistics && { baseline: statistics }),
        proposal,
        ...(asked && { remarks: [asked.effect] }),
      }),
    );
    return exitCodes.done;
  }
  await io.out(
    (statistics === undefined ? "" : baselineText(statistics)) +
      (asked === undefined ? "" : `${storedText(asked)}\n`) +
      proposalText(proposal) +
      cautionsText(),
  );
  return exitCodes.done;
}

/** Proposes setpoints for a machine. */
export const setpointsCommand: Command = { help, run };
