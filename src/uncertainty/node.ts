import type { Uncertainty } from "../reading/index";
import type { Arithmetic } from "./arithmetic";

/** One number that is not known exactly, independent of all others. */
export interface Input {
  /** What it is: a reading, a phase, a frequency, an influence. */
  readonly name: string;
  readonly uncertainty: Uncertainty;
}

/** A number on the way to an answer: that of a step, or one of the two parts of a vector. */
export interface Node {
  readonly of: readonly number[];
  readonly value: number;
  /** Left out for what was given, and for all that depends on no input. */
  readonly arithmetic?: Arithmetic;
  /** The input that the value itself has, by its place in the list. */
  readonly own?: number;
  /** The input that the frequency of the step has, and that frequency. */
  readonly hertz?: number;
  readonly hz?: number;
  /** True for a number in decibels. */
  readonly isLevel: boolean;
  /** True for what may be below zero and is no level: a part of a vector, how far a phase is off. */
  readonly isSigned?: boolean;
}

/** A history as a graph of numbers, with all that is uncertain in it. */
export interface Graph {
  readonly nodes: readonly Node[];
  readonly inputs: readonly Input[];
  /** The place of the answer among the nodes. */
  readonly answer: number;
  /** The places of the two parts of the answer, where it is a vector: its length times cosine and sine of its lag. */
  readonly vector?: readonly [cosine: number, sine: number];
  /** True where a vector of the history was made of two. */
  readonly isOfVectors: boolean;
}
