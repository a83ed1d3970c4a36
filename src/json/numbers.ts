import { refuse } from "./refuse";

/** What JSON has no numbers for, in words that `Number` reads. */
const words: readonly string[] = ["Infinity", "-Infinity", "-0"];

/** A number as JSON holds it: itself, or a word for what JSON has no number for. */
export function writtenNumber(value: unknown, where: string): number | string {
  if (typeof value !== "number" || Number.isNaN(value)) refuse(value, where, "a number");
  if (Number.isFinite(value)) return Object.is(value, -0) ? "-0" : value;
  return String(value);
}

/** A number as it stands in JSON. */
export function readNumber(written: unknown, where: string): number {
  if (typeof written === "number") {
    // 1e999 in a text is no number that anybody wrote
    return Number.isFinite(written) ? written : refuse(written, where, "a number that a double can hold");
  }
  if (typeof written === "string" && words.includes(written)) return Number(written);
  return refuse(written, where, 'a number, or "Infinity", "-Infinity" or "-0"');
}
