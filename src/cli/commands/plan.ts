import { parseNumeral, VeladisError } from "../../core/index";
import { bandOfText, frequency } from "../../frequency/index";
import {
  type BenchSettings,
  type BenchStep,
  benchPlan,
  type Injection,
  type InjectionStep,
  injectionPlan,
} from "../../verification/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { parts, requireOption } from "../options/option-values";
import { massOption, shakerOf } from "../options/shaker-given";
import { sheetFacts } from "../options/sheet-facts";
import { sheetText } from "../options/sheet-option";
import { signalSource, vibrationOf } from "../options/signal-options";
import { relayOption, switchSettings } from "../options/trip-options";
import { assumptionLines } from "../print/assumption-lines";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { planText } from "../print/plan-text";
import type { planPage } from "./plan-page";

type GivenPlan = ParsedOptions<typeof planPage.options>;

function settingsOf(given: GivenPlan): BenchSettings {
  const { values } = given;
  const source = signalSource(values);
  const [low, high] = values.band === undefined ? [] : bandOfText(values.band);
  const load = massOption(values.load);
  const relay = values.relay === undefined ? undefined : relayOption(values.relay);
  return {
    ...switchSettings(given),
    threshold: vibrationOf(requireOption(given, "threshold"), source),
    ...source,
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

/** Options of a shaker, and of a vibration, that play no part where a current is injected or a voltage is. */
const ofShaker = ["shaker", "stroke", "velocity", "acceleration", "force", "moving-mass", "payload", "load"] as const;

/** How a signal is injected; undefined where the plan is for a shaker. */
function injectionOf({ values }: GivenPlan): Injection | undefined {
  const { inject, resolution, uncertainty, "final-element": finalElement } = values;
  if (inject === undefined) {
    if (finalElement === undefined) return undefined;
    throw new VeladisError("missing-option", {
      expected: "--inject beside --final-element: on a shaker nothing but the device acts",
      received: "--final-element alone",
      option: "final-element",
    });
  }
  const stray = ofShaker.find((name) => values[name] !== undefined);
  if (stray !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: "--inject in the place of a shaker",
      received: `--${stray} too`,
      option: stray,
    });
  }
  return {
    inject,
    ...(resolution !== undefined && { resolution }),
    ...(uncertainty !== undefined && { uncertainty }),
    ...(finalElement !== undefined && { finalElement }),
  };
}

/** What a step of the plan asks for, to be explained. */
function explainedOf({ level, displacement, acceleration }: InjectionStep | BenchStep): Explained[] {
  return Object.entries({ level, displacement, acceleration }).flatMap(([name, one]) =>
    one === null ? [] : [[name, one] as const],
  );
}

/** Plans a bench test; refused where the shaker can do none of its steps. */
export async function printPlan(given: GivenPlan, io: Io): Promise<number> {
  const { values } = given;
  const proof = sheetFacts(
    values.fact,
    values.inject === undefined ? "reference shaker" : "signal source",
    values.sheet,
  );
  const settings = settingsOf(given);
  const injection = injectionOf(given);
  const plan = injection === undefined ? benchPlan(settings, shakerOf(given)) : injectionPlan(settings, injection);
  const { assumed, cautions } = plan;
  if (values.json) {
    for (const step of plan.steps) {
      const steps = explainedSteps(values.explain, ...explainedOf(step));
      const more = { assumed, cautions, ...steps };
      await io.out(
        injection === undefined
          ? jsonLine("bench step", step as BenchStep, more)
          : jsonLine("injection step", step as InjectionStep, more),
      );
    }
  } else if (values.sheet !== undefined) {
    await io.out(sheetText(values.sheet, { machine: values.name ?? "Machine", ...proof, plan }));
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
