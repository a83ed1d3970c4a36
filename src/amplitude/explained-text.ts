import { visibleText } from "../core/index";
import { significant } from "../reading/index";
import type { ExplainedStep, Operation } from "./conversion-steps";

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

/** The lines of an explanation as text, one a line. */
export function explainedText(lines: readonly ExplainedStep[]): string {
  return lines.map((line) => visibleText(lineText(line, lines))).join("\n");
}
