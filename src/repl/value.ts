import { shown, VeladisError, visibleText } from "../core/index";
import { type Amplitude, assumedText, format, isClipped, significant } from "../reading/index";

/** A result that is printed as prepared text, with its data beside it: a judgement, proposed setpoints, a change. */
export interface Report {
  readonly report: string;
  readonly data: unknown;
}

/** What an expression can come to. */
export type Value = number | boolean | string | Amplitude | Report | readonly Value[];

export function isAmplitude(value: Value): value is Amplitude {
  return typeof value === "object" && "detector" in value;
}

export function isReport(value: Value): value is Report {
  return typeof value === "object" && "report" in value;
}

export function isList(value: Value): value is readonly Value[] {
  return Array.isArray(value);
}

/** What a value is, in words, for messages. */
export function kindText(value: Value): string {
  if (isList(value)) return "a list";
  if (isAmplitude(value)) return `${format(value)}`;
  return isReport(value) ? "a report" : shown(value);
}

/** The amplitude itself, or a refusal. */
export function amplitude(value: Value | undefined, what = "an amplitude"): Amplitude {
  if (value !== undefined && isAmplitude(value)) return value;
  throw new VeladisError("wrong-type", {
    expected: `${what} such as 4.1 mm/s rms`,
    received: value === undefined ? "nothing" : kindText(value),
  });
}

/** Values with lists opened, so that `mean([a, b])` and `mean(a, b)` are one. */
export function opened(values: readonly Value[]): Value[] {
  return values.flatMap((value) => (isList(value) ? opened(value) : [value]));
}

/** A number without zeros at its end: few digits, and none that say nothing. */
function plainNumber(value: number, digits = 6): string {
  const [mantissa = "", exponent] = significant(value, digits).split("e");
  const short = mantissa.includes(".") ? mantissa.replace(/\.?0+$/, "") : mantissa;
  return exponent === undefined ? short : `${short}e${exponent}`;
}

/** A frequency behind a reading, as people on the plant say it. */
function atText(hertz: number | undefined): string {
  return hertz === undefined ? "" : ` at ${plainNumber(hertz)} Hz (${plainNumber(60 * hertz)} r/min)`;
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

/** The most that a difference may be: what was taken off may stand at any angle to the rest. */
function mostText({ history = [] }: Amplitude): string {
  const last = history.at(-1);
  if (last?.does !== "difference") return "";
  const most = (last.of ?? []).reduce((sum, at) => sum + (history[at]?.value ?? 0), 0);
  return `; up to ${significant(most)} with a phase between them`;
}

/** What stands behind an amplitude: all that was assumed, and how far a difference may be from it. */
function behindAmplitude(value: Amplitude): string {
  return behind(value).replace(/\)$/, `${mostText(value)})`);
}

/** A value as it is printed. */
export function valueText(value: Value, digits?: number): string {
  if (typeof value === "number") return plainNumber(value, digits);
  if (typeof value !== "object") return visibleText(String(value));
  if (isList(value)) return value.map((one) => valueText(one, digits)).join(", ");
  if (isReport(value)) return value.report;
  return `${format(value, digits === undefined ? {} : { digits })}${atText(value.hertz)}${behindAmplitude(value)}`;
}
