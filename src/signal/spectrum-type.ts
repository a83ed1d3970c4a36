import type { Detector } from "../detectors/index";
import type { AmplitudeType } from "../reading/index";
import type { Quantity, UnitSpelling, UnitSymbol } from "../units/index";
import type { Averaging, AveragingOptions } from "./welch";

/** What a spectrum needs to be told. */
export interface SpectrumOptions extends AveragingOptions {
  /** Samples a second. */
  readonly rate: number;
  /** Unit of the samples. */
  readonly unit: UnitSpelling;
  /** What the lines are written in; RMS in the unit of the samples if not given. */
  readonly as?: AmplitudeType;
  /** Lowest frequency in hertz that is given; needed when the quantity changes, so that nothing blows up at 0 Hz. */
  readonly lowest?: number;
}

/** A one-sided amplitude spectrum: line k is the size of what vibrates at `k * resolution` hertz. */
export interface Spectrum extends Averaging {
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  readonly quantity: Quantity;
  /** Samples a second. */
  readonly rate: number;
  /** Spacing of the lines in hertz. */
  readonly resolution: number;
  /** How many times the quantity is the time derivative of what was measured, -2 to 2; below 0 it was integrated. */
  readonly derivativeOrder: number;
  /** Lines below this frequency in hertz are not given: they are 0, and no band may reach below. */
  readonly lowest: number;
  /** Size of each line from 0 Hz to half the sampling rate, in `unit` by `detector` (peaks of a line: as of a sine). */
  readonly values: Float64Array;
}
