import type { ConvertedAmplitude } from "../amplitude/index";
import type { Amplitude, Assumption, Step } from "../reading/index";

/** An amplitude with its phase, at an order of a stated shaft speed: plain data, which survives JSON. */
export interface Vector {
  /** Linear, by a detector of a sine; its frequency is the order times the speed. */
  readonly amplitude: Amplitude;
  /**
   * Phase lag in degrees, 0 to below 360: the part of a cycle from the mark on the shaft to the next positive peak. More is
   * later.
   */
  readonly phase: number;
  /** Whole order of the shaft speed, 1 for once a turn. */
  readonly order: number;
  /** Shaft speed in hertz, that is turns a second. */
  readonly speed: number;
  /** Name of the probe that read it. */
  readonly probe?: string;
  /** Name of the direction in which it was read. */
  readonly direction?: string;
  /**
   * Shaft speed in hertz, the highest if there were several, of a slow roll that was taken off it; left out for a reading
   * as it came.
   */
  readonly slowRollSpeed?: number;
  /** What was taken for granted on the way to it beside {@link Assumption}s, in words. */
  readonly assumedFacts?: readonly string[];
  /** What whoever uses it has to know, in words. */
  readonly cautions?: readonly string[];
}

/** A vector that was made of others, with all that was assumed on the way and the steps that led to it. */
export interface VectorAnswer extends Vector {
  readonly amplitude: ConvertedAmplitude;
  /** What the amplitude assumed on the whole way to it. */
  readonly assumed: readonly Assumption[];
  /** The steps that led to the amplitude, for `explain`. */
  readonly history: readonly Step[];
  readonly assumedFacts: readonly string[];
  readonly cautions: readonly string[];
}
