import { format, significant } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";
import { type BenchPlan, type BenchSettings, benchPlan, type Shaker } from "../../verification/index";
import type { Io } from "../input/io";
import { parsedOptions } from "../options/arguments";
import { bandOption, ends, listed, needed, numberOption, relayOption } from "../options/option-values";
import { sheetText } from "../options/sheet-option";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { textTable } from "../print/text-table";
import { dashed } from "../print/wrapped";
import type { Command } from "./command";
import { help } from "./plan-help";

const options = {
  threshold: { type: "string" },
  hysteresis: { type: "string" },
  delay: { type: "string" },
  "off-delay": { type: "string", default: "0" },
  latching: { type: "boolean", default: false },
  "non-latching": { type: "boolean", default: false },
  relay: { type: "string" },
  "sensor-fault": { type: "string" },
  at: { type: "string" },
  band: { type: "string" },
  tolerance: { type: "string" },
  load: { type: "string" },
  shaker: { type: "string" },
  stroke: { type: "string" },
  velocity: { type: "string" },
  acceleration: { type: "string" },
  force: { type: "string" },
  "moving-mass": { type: "string" },
  payload: { type: "string" },
  uncertainty: { type: "string" },
  sheet: { type: "string" },
  name: { type: "string" },
  json: { type: "boolean", default: false },
} as const;

type Values = ReturnType<typeof parsedOptions<typeof options>>;

function kilograms(value: string | undefined): { kilograms: number } | undefined {
  return value === undefined ? undefined : { kilograms: numberOption(value, "a mass in kg") };
}

function settingsOf(values: Values): BenchSettings {
  if (values.latching === values["non-latching"]) {
    throw new VeladisError("missing-fact", {
      expected: "either --latching or --non-latching",
      received: values.latching ? "both" : "nothing",
    });
  }
  const [low, high] = values.band === undefined ? [] : bandOption(values.band);
  const load = kilograms(values.load);
  const relay = values.relay === undefined ? undefined : relayOption(values.relay);
  return {
    threshold: needed(values.threshold, "threshold", '"9 mm/s rms"'),
    hysteresis: needed(values.hysteresis, "hysteresis", '"8 %"; "0 %" for none'),
    onDelay: numberOption(needed(values.delay, "delay", "2, in s; 0 for none"), "an on-delay in s"),
    offDelay: numberOption(values["off-delay"], "an off-delay in s"),
    latching: values.latching,
    ...(relay as Pick<BenchSettings, "contact" | "coil"> | undefined),
    ...(values["sensor-fault"] !== undefined && { sensorFault: values["sensor-fault"] }),
    ...(values.at !== undefined && { frequencies: listed(values.at).map(frequency) }),
    ...(low !== undefined && high !== undefined && { band: { lowest: { hertz: low }, highest: { hertz: high } } }),
    ...(values.tolerance !== undefined && { tolerance: values.tolerance }),
    ...(load && { load }),
  };
}

function shakerOf(values: Values): Shaker {
  const { stroke, velocity, acceleration, force, uncertainty } = values;
  const form = '"8 Hz to 3 kHz", the frequencies of the shaker';
  const [lowest, highest] = ends(needed(values.shaker, "shaker", form), `--shaker such as ${form}`);
  const movingMass = kilograms(values["moving-mass"]);
  const payload = kilograms(values.payload);
  return {
    lowest: frequency(lowest),
    highest: frequency(highest),
    ...(stroke !== undefined && { displacement: stroke }),
    ...(velocity !== undefined && { velocity }),
    ...(acceleration !== undefined && { acceleration }),
    ...(force !== undefined && { force: { newtons: numberOption(force, "a force in N") } }),
    ...(movingMass && { movingMass }),
    ...(payload && { payload }),
    ...(uncertainty !== undefined && { uncertainty }),
  };
}

function planText({ threshold, reset, steps, notes, possible }: BenchPlan): string {
  const table = textTable(
    [
      { title: "", align: "right" },
      { title: "Hz", align: "right" },
      { title: "level", align: "right" },
      { title: "displacement", align: "right" },
      { title: "acceleration", align: "right" },
      { title: "shaker" },
      { title: "do" },
    ],
    steps.map(({ number, hertz, level, displacement, acceleration, limitedBy, what }) => [
      `${number}`,
      level === null ? "" : significant(hertz),
      level === null ? "-" : format(level),
      displacement === null ? "-" : format(displacement),
      acceleration === null ? "-" : format(acceleration),
      level === null ? "-" : limitedBy.length === 0 ? "can" : `CANNOT: ${limitedBy.join(", ")}`,
      what,
    ]),
  );
  return (
    `threshold ${format(threshold, { digits: 4 })}, clears below ${format(reset, { digits: 4 })}\n\n${table}\n` +
    `expect\n${steps.map(({ number, expect }) => `${`${number}`.padStart(2)}  ${expect}\n`).join("")}\n` +
    `${possible ? "" : "the shaker cannot do all of this\n\n"}notes\n${dashed(notes)}`
  );
}

async function run(args: readonly string[], io: Io): Promise<number> {
  const values = parsedOptions(args, options);
  const plan = benchPlan(settingsOf(values), shakerOf(values));
  if (values.json) {
    for (const step of plan.steps) await io.out(`${JSON.stringify({ ...step, cautions: plan.cautions })}\n`);
  } else if (values.sheet !== undefined) {
    await io.out(sheetText(values.sheet, { machine: values.name ?? "Machine", plan }));
  } else await io.out(planText(plan) + cautionsText());
  return exitCodes.done;
}

/** Plans a bench test. */
export const planCommand: Command = { help, run };
