import { format, significant } from "../../reading/index";
import {
  type BenchPlan,
  type BenchStep,
  type InjectionPlan,
  type InjectionStep,
  signalText,
} from "../../verification/index";
import { dashed } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

type AnyStep = BenchStep | InjectionStep;

/** What is expected of a step; of one that cannot be done, that. */
function expectText({ expect, limitedBy }: AnyStep): string {
  return limitedBy.length === 0 ? expect : `NOT POSSIBLE (${limitedBy.join(", ")})`;
}

/** Frequency and speed of a step, one below the other. */
function frequencyLines({ level, hertz, speed }: AnyStep): string[] {
  return level === null || hertz === null || speed === null
    ? []
    : [`${significant(hertz)} Hz`, `${significant(speed, 4)} r/min`];
}

/** What a step asks for: signals in front where they are injected. */
function levelLines({ level, displacement, acceleration, signals = [] }: AnyStep): string[] {
  return [
    ...(level === null ? [] : [format(level)]),
    ...[displacement, acceleration].flatMap((one) => (one === null ? [] : [format(one)])),
    ...signals.map(signalText),
  ];
}

/** A plan as a person works it off: a row a step, with what is expected of it. */
export function planText({ threshold, reset, before, steps, notes }: BenchPlan | InjectionPlan): string {
  const table = wrappedTable(
    [
      { title: "", align: "right" },
      { title: "at", align: "right" },
      { title: "level", align: "right" },
      { title: "do", wraps: true },
      { title: "expect", wraps: true },
    ],
    steps.map((step) => [[`${step.number}`], frequencyLines(step), levelLines(step), [step.what], [expectText(step)]]),
  );
  const first = steps.find(({ signals = [] }) => signals.length > 0)?.signals ?? [];
  const by = first.map(({ type, by }) => `${type} by ${by}`).join("; ");
  return (
    `${dashed(before)}\nthreshold ${format(threshold, { digits: 4 })}, clears below ${format(reset, { digits: 4 })}\n` +
    `${by === "" ? "" : `signals: ${by}\n`}\n${table}\nnotes\n${dashed(notes)}`
  );
}
