import type { VoltageType } from "../amplitude/index";
import type { Amplitude, Assumption } from "../reading/index";

/** A signal that stands for a level: a current in a loop, or a voltage of a sensor with its detector. */
export interface BenchSignal {
  readonly value: number;
  readonly type: "mA" | VoltageType;
  /** The range of the loop, or the sensitivity of the sensor. */
  readonly by: string;
  /** True where the loop does not carry the level: `value` is then the end of what it measures, and says nothing of it. */
  readonly beyond?: boolean;
}

/** One step of a bench test. */
export interface BenchStep {
  readonly number: number;
  readonly what: string;
  readonly hertz: number;
  /** r/min of the same frequency. */
  readonly speed: number;
  /** Level of the shaker in the device's unit; null for a step without one. */
  readonly level: Amplitude | null;
  readonly displacement: Amplitude | null;
  readonly acceleration: Amplitude | null;
  /** The level as loop and sensor give it, where they are told; no key in texts of earlier releases. */
  readonly signals?: readonly BenchSignal[];
  /** Whether the shaker can give it, or the source of a signal. */
  readonly possible: boolean;
  /** What forbids it. */
  readonly limitedBy: readonly string[];
  readonly expect: string;
}

/** One step of a plan by injection. */
export interface InjectionStep extends Omit<BenchStep, "hertz" | "speed"> {
  /** Null where a current is injected, which has none. */
  readonly hertz: number | null;
  readonly speed: number | null;
  /** What is injected; empty for a step without a level. */
  readonly signals: readonly BenchSignal[];
}

/** What a plan was made for, as it was told: a setting, or a limit of what it is proven with. */
export interface BenchFact {
  readonly name: string;
  readonly text: string;
}

/** A bench test step by step, on a shaker. */
export interface BenchPlan {
  readonly threshold: Amplitude;
  readonly reset: Amplitude;
  /** What was assumed in threshold and reset level, and in what the shaker has to give and can. */
  readonly assumed: readonly Assumption[];
  readonly steps: readonly BenchStep[];
  /** Whether all of it can be done. */
  readonly possible: boolean;
  /** Settings as they were told, then what they are proven with; no key in texts of earlier releases. */
  readonly told?: readonly BenchFact[];
  /** Before the first step: what stays unproven, then what is done for safety. */
  readonly before: readonly string[];
  /** On the steps, and on what is done after the last. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

/** A test step by step by a signal in the place of sensor or transmitter. */
export interface InjectionPlan extends Omit<BenchPlan, "steps"> {
  readonly steps: readonly InjectionStep[];
}
