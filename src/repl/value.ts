import { shown, VeladisError, visibleText } from "../core/index";
import { type Amplitude, assumedText, format, isClipped, type Made, plainNumber, significant } from "../reading/index";
import { phaseWords } from "./phase-words";
import { wholeText } from "./reading-words";

/** A result that is printed as prepared text, with its data beside it: a judgement, proposed setpoints, a change. */
export interface Report {
  readonly report: string;
  readonly data: unknown;
}

/**
 * A number of decibels without a reference: the ratio of two amplitudes, as in `6 dB`, or of two levels the difference.
 * It carries what those had assumed and the steps to it.
 */
export interface LevelDifference extends Made {
  readonly decibels: number;
}

/** What an expression can come to. */
export type Value = number | boolean | string | Amplitude | LevelDifference | Report | readonly Value[];

export function isAmplitude(value: Value): value is Amplitude {
  return typeof value === "object" && "detector" in value;
}

export function isLevelDifference(value: Value): value is LevelDifference {
  return typeof value === "object" && "decibels" in value;
}

export function isReport(value: Value): value is Report {
  return typeof value === "object" && "report" in value;
}

export function isList(value: Value): value is readonly Value[] {
  return Array.isArray(value);
}

/** A number of decibels: to a tenth as a level is written, below one decibel to two digits. */
export function decibelsText(decibels: number, digits = 2): string {
  const size = Math.abs(decibels);
  return `${size >= 0.95 || size === 0 ? decibels.toFixed(Math.max(1, digits - 2)) : significant(decibels, digits)} dB`;
}

/** What a value is, in words, for messages. */
export function kindText(value: Value): string {
  if (isList(value)) return "a list";
  if (isAmplitude(value)) return `${format(value)}`;
  if (isLevelDifference(value)) return decibelsText(value.decibels);
  return isReport(value) ? "a report" : shown(value);
}

/** The amplitude itself, or a refusal. */
export function amplitude(value: Value | undefined, what = "an amplitude"): Amplitude {
  if (value !== undefined && isAmplitude(value)) return value;
  if (value !== undefined && isLevelDifference(value)) {
    throw new VeladisError("missing-reference", {
      expected: `${what} such as 4.1 mm/s rms; a level has its reference, as in 95 dB re 1e-9 m/s`,
      received: kindText(value),
    });
  }
  throw new VeladisError("wrong-type", {
    expected: `${what} such as 4.1 mm/s rms`,
    received: value === undefined ? "nothing" : kindText(value),
  });
}

/** Values with lists opened, so that `mean([a, b])` and `mean(a, b)` are one. */
export function opened(values: readonly Value[]): Value[] {
  return values.flatMap((value) => (isList(value) ? opened(value) : [value]));
}

type Way = Parameters<typeof assumedText>[0];

/** What to know of the way an answer came by, where no reading stands before it: all that was assumed, and its loop. */
export function wayWords({ state, ...answer }: Way & Pick<Amplitude, "state">): string {
  const assumed = assumedText(answer).slice(1, -1);
  const loop = isClipped(state) ? `${state} of its loop` : "";
  return [assumed, loop].filter((words) => words !== "").join(", ");
}

/** All that was assumed on the way to an answer, in brackets, as it stands behind it. */
export function behind(answer: Way): string {
  const words = assumedText(answer);
  return words === "" ? "" : `  ${words}`;
}

/** What stands behind an amplitude: all that was assumed, and what it may be with another phase. */
export function behindAmplitude(value: Amplitude): string {
  return behind(value).replace(/\)$/, `${phaseWords(value)})`);
}

function differenceText({ decibels, state, ...way }: LevelDifference, digits?: number): string {
  return `${decibelsText(decibels, digits)}${isClipped(state) ? ` (${state})` : ""}${behind(way)}`;
}

/** A value as it is printed. */
export function valueText(value: Value, digits?: number): string {
  if (typeof value === "number") return plainNumber(value, digits);
  if (typeof value !== "object") return visibleText(String(value));
  if (isList(value)) return value.map((one) => valueText(one, digits)).join(", ");
  if (isReport(value)) return value.report;
  if (isLevelDifference(value)) return differenceText(value, digits);
  return wholeText(value, digits).replace(/\)$/, `${phaseWords(value)})`);
}
