import { convertAmplitude } from "../amplitude/index";
import { type Amplitude, type Assumption, exactAmplitude, significant } from "../reading/index";
import { label, stroke } from "./markup";
import { widthOf } from "./text-width";

/** A level drawn across a plot, told from others by its dashes and its words. */
export interface DrawnLevel {
  readonly kind: "trip" | "alarm" | "reset" | "baseline";
  readonly text: string;
  readonly value: number;
  /** What was assumed in writing it in the type of the chart. */
  readonly assumed?: readonly Assumption[];
}

/** A level that was given in words, in the type of the chart. */
export function levelIn(kind: DrawnLevel["kind"], given: string | Amplitude | undefined, as: string): DrawnLevel[] {
  if (given === undefined) return [];
  const amplitude = exactAmplitude(given);
  const { value, assumed } = convertAmplitude(amplitude, as);
  return [{ kind, value, assumed, text: `${kind} ${significant(value)}` }];
}

/**
 * The lines of the levels, and their words at the left: above the line, or below it where another is close above.
 * Words that would still stand on one another move to the right.
 */
export function levelLines(levels: readonly DrawnLevel[], y: (value: number) => number, width: number): string {
  const sorted = [...levels].sort((a, b) => b.value - a.value);
  const placed: { at: number; until: number }[] = [];
  const words = sorted.map(({ kind, text, value }, i) => {
    const above = sorted[i - 1];
    const close = kind === "baseline" || (above !== undefined && y(value) - y(above.value) < 20);
    const at = y(value) + (close ? 15 : -5);
    const x = Math.max(8, ...placed.filter((other) => Math.abs(other.at - at) < 14).map(({ until }) => until));
    placed.push({ at, until: x + widthOf(text) + 12 });
    return label(x, at, text, { kind: "halo" });
  });
  return [...sorted.map(({ kind, value }) => stroke([0, y(value)], [width, y(value)], kind)), ...words].join("");
}
