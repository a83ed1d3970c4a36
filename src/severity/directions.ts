import type { Frequency } from "../frequency/index";

/** The directions of a reading in which a support may differ. */
export const directions = ["horizontal", "vertical", "axial"] as const satisfies readonly Direction[];

/** A direction of a reading. */
export type Direction = "horizontal" | "vertical" | "axial";

/** What is told of machine and support in one direction. */
export interface DirectionFacts {
  readonly support?: "rigid" | "flexible";
  /** Lowest natural frequency of machine and support in this direction; with the speed it gives the support. */
  readonly naturalFrequency?: Frequency;
}

/** What is told of machine and support by direction. */
export type ByDirection = { readonly [D in Direction]?: DirectionFacts };
