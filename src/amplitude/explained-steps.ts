import { shown, VeladisError } from "../core/index";
import { assumedText, type Step, stepWords, wholeSteps } from "../reading/index";
import { conversionSteps, type ExplainedStep, type Operation, type PlannedStep } from "./conversion-steps";
import { vectorDistance } from "./vector-distance";

/** What each operation makes of the values it starts from, and of `by`. */
const arithmetic: Readonly<Record<Exclude<Operation, "given">, (x: readonly number[], by: number) => number>> = {
  times: ([x = 0], by) => x * by,
  over: ([x = 0, y], by) => x / (y ?? by),
  plus: ([x = 0], by) => x + by,
  sum: (x) => x.reduce((sum, one) => sum + one, 0),
  difference: ([x = 0, ...less]) => less.reduce((rest, one) => rest - one, x),
  rss: (x) => Math.hypot(...x),
  "vector difference": ([x = 0, y = 0], by) => vectorDistance(x, y, by),
  "rss difference": ([x = 0, y = 0]) => Math.sqrt((x - y) * (x + y)),
  largest: (x) => Math.max(...x),
  smallest: (x) => Math.min(...x),
  "steps down": ([x = 0], by) => wholeSteps(x, by, "down"),
  "nearest step": ([x = 0], by) => wholeSteps(x, by, "nearest"),
  "steps up": ([x = 0], by) => wholeSteps(x, by, "up"),
  linear: ([x = 0], by) => by * 10 ** (x / 20),
  decibels: ([x = 0], by) => 20 * Math.log10(x / by),
  "limit over": ([x = 0], by) => by / x,
};

const roundings = { down: "steps down", nearest: "nearest step", up: "steps up" } as const;

/** The lines that one step of a history is made of, but for a conversion. */
function linesOf(step: Step): PlannedStep[] {
  const { does, type, by = 1, over = 1, plus = 0, rounds = "nearest", note, assumed } = step;
  const reason = note ?? assumedText({ ...step, history: [] }).slice(1, -1);
  const because = reason === "" ? {} : { because: reason };
  switch (does) {
    case "scale":
      return [
        ...(by === 1 && over !== 1 ? [] : [{ operation: "times", by, type, ...because } as const]),
        ...(over === 1 ? [] : [{ operation: "over", by: over, type, ...because } as const]),
      ];
    case "line":
      return [
        { operation: "times", by, type, ...because },
        ...(plus === 0 ? [] : [{ operation: "plus", by: plus, type } as const]),
      ];
    case "sum":
    case "difference":
    case "rss":
    case "rss difference":
    case "largest":
    case "smallest":
      return [{ operation: does, type, ...because, ...(assumed !== undefined && { assumed }) }];
    case "ratio":
      return [{ operation: "over", type, ...because }];
    case "vector difference":
      return [{ operation: does, by, type, ...because, ...(assumed !== undefined && { assumed }) }];
    case "round":
      return [{ operation: roundings[rounds], by, type, ...because }];
    case "compare":
      return [{ operation: "limit over", by, type, ...because }];
    default:
      return [];
  }
}

/** Refuses a step whose arithmetic does not come to the value that it says. */
function requireReckoned(
  { value, does }: Step,
  { value: reckoned, by = 0, of }: ExplainedStep,
  steps: readonly ExplainedStep[],
): void {
  const size = Math.max(Math.abs(value), Math.abs(by), ...of.map((at) => Math.abs((steps[at] as ExplainedStep).value)));
  if (value === reckoned || Math.abs(value - reckoned) <= 1e-9 * size) return;
  throw new VeladisError("out-of-range", {
    expected: `a step ${shown(does)} that comes to ${reckoned}`,
    received: `${value}`,
  });
}

/** The lines of arithmetic of a history, the last of which comes to its end. */
export function explainedSteps(history: readonly Step[]): ExplainedStep[] {
  const steps: ExplainedStep[] = [];
  const ends: number[] = [];
  for (const step of history) {
    const from = (step.of ?? []).map((at) => ends[at] as number);
    const before = history[step.of?.[0] ?? -1];
    const lines = step.does === "convert" && before !== undefined ? conversionSteps(before.type, step) : linesOf(step);
    // a conversion from one spelling to the same is no line; whatever else has no arithmetic is told with its value
    const isTold = lines.length === 0 && (step.does !== "convert" || from.length === 0);
    if (isTold) {
      const note = step.note ?? (step.does === "given" ? undefined : stepWords[step.does]);
      const { value, type, assumed } = step;
      const told = { ...(note !== undefined && { because: note }), ...(assumed !== undefined && { assumed }) };
      steps.push({ operation: "given", of: [], value, type, ...told });
    }
    let of = from;
    for (const line of lines) {
      const operation = line.operation as Exclude<Operation, "given">;
      const value = arithmetic[operation](
        of.map((at) => (steps[at] as ExplainedStep).value),
        line.by ?? 1,
      );
      steps.push({ ...line, of, value });
      of = [steps.length - 1];
    }
    const last = steps.at(-1) as ExplainedStep;
    if (lines.length > 0) {
      requireReckoned(step, last, steps);
      // the value itself goes on, so that the noise of two ways of reckoning does not grow, and no rounding turns over
      steps[steps.length - 1] = { ...last, value: step.value };
    }
    ends.push(lines.length === 0 && !isTold ? (from[0] as number) : steps.length - 1);
  }
  return steps;
}
