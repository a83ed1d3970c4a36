import type { Quantity, UnitSymbol } from "../units/index";
import type { DensityUnit } from "./density-unit";
import type { Averaging } from "./welch";

/** A one-sided power spectral density: value k is the mean square a hertz at `k * resolution` hertz. */
export interface Density extends Averaging {
  /** The unit of the density. */
  readonly unit: DensityUnit;
  /** The unit whose square it holds. */
  readonly squared: UnitSymbol;
  readonly quantity: Quantity;
  /** Samples a second. */
  readonly rate: number;
  /** Spacing of the values in hertz. */
  readonly resolution: number;
  /** Values below this frequency in hertz are not given: they are 0, and no band may reach below. */
  readonly lowest: number;
  /** The density of each line from 0 Hz to half the sampling rate, in `unit`. */
  readonly values: Float64Array;
}
