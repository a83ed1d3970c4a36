import type { FactValue } from "./machine";

/** Beyond it a power or a speed is without end. */
const ENDLESS = 1e12;

const rounded = (value: number): number => Number(value.toPrecision(6));

/** A number of a fact, or a range of which every value is possible, with its unit. */
export function factText(value: Exclude<FactValue, string>, unit: string): string {
  if (typeof value === "number") return `${rounded(value)} ${unit}`;
  const [low, high] = value;
  return high > ENDLESS ? `${rounded(low)} ${unit} or more` : `${rounded(low)} to ${rounded(high)} ${unit}`;
}
