import type { VoltageType } from "../amplitude/index";
import type { Amplitude, Assumption } from "../reading/index";

/** A signal that stands for a level: a current in a loop, or a voltage of a sensor with its detector. */
export interface BenchSignal {
  readonly value: number;
  readonly type: "mA" | VoltageType;
  /** The range of the loop, or the sensitivity of the sensor. */
  readonly by: string;
}

/** One step of a bench test. */
export interface BenchStep {
  readonly number: number;
  readonly what: string;
  /** Null where a current is injected, which has none. */
  readonly hertz: number | null;
  /** r/min of the same frequency. */
  readonly speed: number | null;
  /** Level of the shaker in the device's unit, or the one that a signal stands for; null for a step without either. */
  readonly level: Amplitude | null;
  /** Null too where a signal is injected. */
  readonly displacement: Amplitude | null;
  readonly acceleration: Amplitude | null;
  /** The level as loop and sensor give it, where they are told; in a plan by injection what is injected. */
  readonly signals: readonly BenchSignal[];
  /** Whether the shaker can give it, or the source of the signal. */
  readonly possible: boolean;
  /** What forbids it. */
  readonly limitedBy: readonly string[];
  readonly expect: string;
}

/** What a plan was made for, as it was told: a setting, or a limit of what it is proven with. */
export interface BenchFact {
  readonly name: string;
  readonly text: string;
}

/** A bench test step by step, on a shaker or by injection. */
export interface BenchPlan {
  readonly threshold: Amplitude;
  readonly reset: Amplitude;
  /** What was assumed in threshold and reset level, and in what the shaker has to give and can. */
  readonly assumed: readonly Assumption[];
  readonly steps: readonly BenchStep[];
  /** Whether all of it can be done. */
  readonly possible: boolean;
  /** Settings as they were told, then what they are proven with. */
  readonly told: readonly BenchFact[];
  /** Before the first step: what stays unproven, then what is done for safety. */
  readonly before: readonly string[];
  /** On the steps, and on what is done after the last. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}
