import { frozen } from "../core/index";
import type { Assumption } from "./assumptions";
import type { Uncertainty } from "./uncertainty";
import type { Rounding } from "./whole-steps";

/** What a step of a history can do, in words. */
export const stepWords = /* @__PURE__ */ frozen({
  given: "as it was given",
  convert: "converted",
  scale: "times a number",
  line: "on a straight line",
  sum: "added",
  difference: "taken off",
  rss: "root of the sum of squares",
  "vector difference": "taken off at an angle",
  "rss difference": "root of the difference of squares",
  ratio: "one over the other",
  largest: "the largest of several",
  smallest: "the smallest of several",
  round: "brought to a whole number of steps",
  statistic: "a statistic of several readings",
  overall: "computed from a signal",
  replaced: "the value was replaced",
  compare: "compared with a limit",
  uncertainty: "its standard uncertainty",
  condensed: "earlier steps, told as one",
} as const);

/** The name of what a step does: a key of {@link stepWords}. */
export type StepName = keyof typeof stepWords;

/** One step on the way to an answer: plain data, so that it survives JSON. */
export interface Step {
  readonly does: StepName;
  /** The steps it starts from, by their place in the same history. */
  readonly of?: readonly number[];
  /** What came out, written in `type`. */
  readonly value: number;
  /** What `value` is written in: a reading type, or what comes before one, such as `"mA"` or `"mV rms"`. */
  readonly type: string;
  /** The frequency in hertz that was used, or that the reading was given with. */
  readonly hertz?: number;
  /**
   * `scale`: what was multiplied with; `line`: the slope; `round`: the size of a step; `compare`: the limit, which is
   * divided by the reading; `vector difference`: the angle in degrees.
   */
  readonly by?: number;
  /** `scale`: what was divided by. */
  readonly over?: number;
  /** `line`: what was added at the end. */
  readonly plus?: number;
  /** `round`: to which side; `nearest` if not given. */
  readonly rounds?: Rounding;
  /** The crest factor that was used. */
  readonly crestFactor?: number;
  /** `given`: how well the value is known; `scale` by 1: an influence, how well this 1 is known. */
  readonly uncertainty?: Uncertainty;
  /** `given`: how well the frequency is known, in hertz. */
  readonly hertzUncertainty?: Uncertainty;
  /** Phase lag of a vector in degrees: as it was `given`, as a `vector difference` left it, or as it was put on a `scale` by 1. */
  readonly phase?: number;
  /** `given` with a phase: how well the phase is known, in degrees. */
  readonly phaseUncertainty?: Uncertainty;
  readonly assumed?: readonly Assumption[];
  /** Why, or by what: `"sensor of 100 mV/g"`. */
  readonly note?: string;
}

/** The names of all that a step can do. */
export const stepNames = /* @__PURE__ */ Object.keys(stepWords) as readonly StepName[];
