import { format } from "../../reading/index";
import { frequencyTexts } from "../../report/index";
import { type BenchPlan, expectText, type InjectionPlan, levelTexts } from "../../verification/index";
import { dashed } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

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
    steps.map((step) => [
      [`${step.number}`],
      step.level === null ? [] : frequencyTexts(step.hertz),
      levelTexts(step),
      [step.what],
      [expectText(step)],
    ]),
  );
  const first = steps.find(({ signals = [] }) => signals.length > 0)?.signals ?? [];
  const by = first.map(({ type, by }) => `${type} by ${by}`).join("; ");
  return (
    `${dashed(before)}\nthreshold ${format(threshold, { digits: 4 })}, clears below ${format(reset, { digits: 4 })}\n` +
    `${by === "" ? "" : `signals: ${by}\n`}\n${table}\nnotes\n${dashed(notes)}`
  );
}
