import { parseNumeral } from "../../core/index";
import { frequency } from "../../frequency/index";
import { format, significant } from "../../reading/index";
import { type BenchPlan, type BenchSettings, type BenchStep, benchPlan, type Shaker } from "../../verification/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { bandOption, parts, requireOption } from "../options/option-values";
import { shakerOption } from "../options/shaker-option";
import { sheetText } from "../options/sheet-option";
import { relayOption, switchSettings } from "../options/trip-options";
import { assumptionLines } from "../print/assumption-lines";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { textTable } from "../print/text-table";
import { dashed } from "../print/wrapped";
import type { planPage } from "./plan-page";

type GivenPlan = ParsedOptions<typeof planPage.options>;

/** A mass; a bare number is one of kilograms. */
function mass(value: string | undefined): string | undefined {
  return value === undefined || /[a-z]/i.test(value) ? value : `${parseNumeral(value, "a mass in kg")} kg`;
}

function settingsOf(given: GivenPlan): BenchSettings {
  const { values } = given;
  const [low, high] = values.band === undefined ? [] : bandOption(values.band);
  const load = mass(values.load);
  const relay = values.relay === undefined ? undefined : relayOption(values.relay);
  return {
    ...switchSettings(given),
    onDelay: parseNumeral(requireOption(given, "delay"), "an on-delay in s"),
    ...(relay as Pick<BenchSettings, "contact" | "coil"> | undefined),
    ...(values["sensor-fault"] !== undefined && {
      sensorFault: values["sensor-fault"] as NonNullable<BenchSettings["sensorFault"]>,
    }),
    ...(values.at !== undefined && { frequencies: parts(values.at).map((one) => frequency(one)) }),
    ...(low !== undefined && high !== undefined && { band: { lowest: { hertz: low }, highest: { hertz: high } } }),
    ...(values.tolerance !== undefined && { tolerance: values.tolerance }),
    ...(load !== undefined && { load }),
  };
}

function shakerOf(given: GivenPlan): Shaker {
  const { values } = given;
  const { stroke, velocity, acceleration, force, resolution, uncertainty } = values;
  const movingMass = mass(values["moving-mass"]);
  const payload = mass(values.payload);
  return {
    ...shakerOption(requireOption(given, "shaker")),
    ...(stroke !== undefined && { displacement: stroke }),
    ...(velocity !== undefined && { velocity }),
    ...(acceleration !== undefined && { acceleration }),
    ...(force !== undefined && { force: { newtons: parseNumeral(force, "a force in N") } }),
    ...(movingMass !== undefined && { movingMass }),
    ...(payload !== undefined && { payload }),
    ...(resolution !== undefined && { resolution }),
    ...(uncertainty !== undefined && { uncertainty }),
  };
}

/** What is expected of a step; of one that the shaker cannot do, that. */
function expectText({ expect, limitedBy }: BenchStep): string {
  return limitedBy.length === 0 ? expect : `NOT POSSIBLE (${limitedBy.join(", ")})`;
}

function planText({ threshold, reset, before, steps, notes }: BenchPlan): string {
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
    `${dashed(before)}\nthreshold ${format(threshold, { digits: 4 })}, clears below ${format(reset, { digits: 4 })}\n\n${table}\n` +
    `expect\n${steps.map((step) => `${`${step.number}`.padStart(2)}  ${expectText(step)}\n`).join("")}\nnotes\n${dashed(notes)}`
  );
}

/** What a step of the plan asks of the shaker, to be explained. */
function explainedOf({ level, displacement, acceleration }: BenchStep): Explained[] {
  return Object.entries({ level, displacement, acceleration }).flatMap(([name, one]) =>
    one === null ? [] : [[name, one] as const],
  );
}

/** Plans a bench test; refused where the shaker can do none of its steps. */
export async function printPlan(given: GivenPlan, io: Io): Promise<number> {
  const { values } = given;
  const plan = benchPlan(settingsOf(given), shakerOf(given));
  const { assumed, cautions } = plan;
  if (values.json) {
    for (const step of plan.steps) {
      const steps = explainedSteps(values.explain, ...explainedOf(step));
      await io.out(jsonLine("bench step", step, { assumed, cautions, ...steps }));
    }
  } else if (values.sheet !== undefined) {
    await io.out(sheetText(values.sheet, { machine: values.name ?? "Machine", plan }));
  } else {
    const explained = plan.steps.flatMap((step) =>
      explainedOf(step).map(([name, answer]) => [`step ${step.number}, ${name}`, answer] as const),
    );
    await io.out(
      planText(plan) + assumptionLines({ assumed }) + (values.explain ? explainedText(explained) : "") + cautionsText(),
    );
  }
  const isNone = plan.steps.every(({ level, limitedBy }) => level === null || limitedBy.length > 0);
  return isNone ? exitCodes.refused : exitCodes.done;
}
