import { medianOf } from "../../core/index";

/** Times the median step from which a gap is told. */
const FACTOR = 10;

/** The longest time between two levels, where it is beyond ten times the median step. */
export interface LongestGap {
  readonly seconds: number;
  /** In seconds from the first time. */
  readonly from: number;
  readonly medianStep: number;
  readonly rule: string;
}

/** The longest gap between times that never fall; undefined where all steps are alike. */
export function longestGap(times: Float64Array): LongestGap | undefined {
  const steps = times.subarray(1).map((time, i) => time - (times[i] as number));
  if (steps.length === 0) return undefined;
  const medianStep = medianOf(Float64Array.from(steps));
  const seconds = steps.reduce((longest, step) => Math.max(longest, step));
  if (!(seconds > FACTOR * medianStep)) return undefined;
  const from = times[steps.indexOf(seconds)] as number;
  return { seconds, from, medianStep, rule: `longer than ${FACTOR} times the median step` };
}

/** The same in a line; nothing for none. */
export function longestGapText(gap: LongestGap | undefined): string {
  if (gap === undefined) return "";
  const { seconds, from, medianStep, rule } = gap;
  const short = (value: number): string => `${Number(value.toPrecision(4))} s`;
  return `longest gap: ${short(seconds)} behind ${short(from)}, ${rule} of ${short(medianStep)}: no reading tells what ran then\n`;
}
