import { requireGiven, shown, VeladisError, visibleText } from "../core/index";
import {
  type Amplitude,
  amplitudeOf,
  assumedText,
  checkedSteps,
  historyOf,
  type Step,
  significant,
  stepWords,
  wholeSteps,
} from "../reading/index";
import { conversionSteps, type ExplainedStep, type Operation, type PlannedStep } from "./conversion-steps";
import { vectorDistance } from "./vector-distance";

/** The arithmetic that led to an answer, line by line. */
export interface Explanation {
  readonly steps: readonly ExplainedStep[];
  /** The same as text, one line a step. */
  readonly text: string;
}

/** An answer that keeps its history: an amplitude, or what was made of some. */
export interface WithHistory {
  readonly history: readonly Step[];
}

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

/** A number in four digits at the most, without zeros that say nothing. */
function short(value: number): string {
  // a limit over a reading of zero
  if (value === Number.POSITIVE_INFINITY) return "infinite";
  const digits = significant(value, 4);
  return digits.includes(".") ? digits.replace(/\.?0+(?=e|$)/, "") : digits;
}

/** A value with what it is written in. */
function withType(number: string, type: string): string {
  return type === "" ? number : `${number} ${type}`;
}

/** The signs of the operations that are written between their values. */
const signs: Partial<Record<Operation, string>> = { times: "x", over: "/", plus: "+", sum: "+", difference: "-" };

const roundingWords = {
  "steps down": "down to a whole number of steps",
  "nearest step": "to the nearest whole number of steps",
  "steps up": "up to a whole number of steps",
} as const;

/** One line of an explanation as text. */
function lineText(line: ExplainedStep, steps: readonly ExplainedStep[]): string {
  const { operation, of, by = 1, value, type, because } = line;
  const tail = because === undefined ? "" : `  (${because})`;
  const starts = of.map((at) => steps[at] as ExplainedStep);
  const from = starts.map((one) => withType(short(one.value), one.type));
  const [first = "", firstType = ""] = [from[0], starts[0]?.type];
  const end = `= ${withType(short(value), type)}${tail}`;
  switch (operation) {
    case "given":
      // as it was written: short would show another number than was given
      return `${withType(String(Number(value.toPrecision(12))), type)}${tail}`;
    case "linear":
      return `10^(${short(starts[0]?.value ?? 0)} dB / 20) x ${withType(short(by), type)} ${end}`;
    case "decibels":
      return `20 lg(${first} / ${withType(short(by), firstType)}) ${end}`;
    case "rss":
      return `root of (${from.map((one) => `(${one})^2`).join(" + ")}) ${end}`;
    case "rss difference":
      return `root of (${from.map((one) => `(${one})^2`).join(" - ")}) ${end}`;
    case "vector difference":
      return `${from.join(" - ")} at ${short(by)} degrees ${end}`;
    case "largest":
    case "smallest":
      return `${operation} of (${from.join(", ")}) ${end}`;
    case "steps down":
    case "nearest step":
    case "steps up":
      return `${first} ${roundingWords[operation]} of ${short(by)} ${end}`;
    case "limit over":
      return `${withType(short(by), firstType)} / ${first} ${end}`;
    case "plus":
      return `${first} ${by < 0 ? "-" : "+"} ${short(Math.abs(by))} ${end}`;
    default: {
      const sign = signs[operation] as string;
      return line.by === undefined ? `${from.join(` ${sign} `)} ${end}` : `${first} ${sign} ${short(by)} ${end}`;
    }
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

/**
 * The steps that led to an answer, with their numbers: what was given, what it was multiplied with or divided by, what
 * was assumed. They are arithmetic, not words: whoever carries them out comes to the answer.
 *
 * @param answer - a reading in words, an amplitude, or anything that has a `history`: a judgement, a setpoint
 * @returns the lines as data (`operation` on the lines `of`, with `by`, comes to `value`) and as text
 * @throws {@link VeladisError} `missing-fact`, `out-of-range` for a step that does not come to its value, and as
 *   {@link parseAmplitude}
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 * import { explain } from "veladis/explain";
 *
 * const { text, steps } = explain(convertAmplitude("0.25 in/s pk", "mm/s rms"));
 * text.split("\n");
 * // => ["0.25 in/s pk", "0.25 in/s pk x 25.4 = 6.35 mm/s pk", "6.35 mm/s pk / 1.414 = 4.49 mm/s rms  (one sine)"]
 * steps.at(-1)?.assumed; // => ["sine"]
 * ```
 */
export function explain(answer: string | Amplitude | WithHistory): Explanation {
  const known = requireGiven(answer, "an answer with its history", { parameter: "answer" });
  const history =
    typeof known === "object" && !("value" in known && "unit" in known)
      ? checkedSteps(requireGiven(known.history, "an answer with its history"))
      : historyOf(amplitudeOf(known as string | Amplitude));
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
  return { steps, text: steps.map((line) => visibleText(lineText(line, steps))).join("\n") };
}
