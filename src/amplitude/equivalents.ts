import { withParameters } from "../core/index";
import type { Detector } from "../detectors/index";
import { type Amplitude, amplitudeOf } from "../reading/index";
import { type UnitSymbol, units } from "../units/index";
import { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";
import type { ConvertOptions } from "./convert-options";
import { plainOptions } from "./plain-options";

/** The units that spec sheets, standards and instruments use most, one metric and one imperial a quantity. */
const everyday = ["mm/s", "in/s", "um", "mil", "m/s2", "g"] as const satisfies readonly UnitSymbol[];

const everydayDetectors = ["rms", "pk", "pp"] as const satisfies readonly Detector[];

/** One reading in every everyday unit, RMS, peak and peak-to-peak. */
export interface EquivalentsRow {
  readonly unit: UnitSymbol;
  readonly rms: ConvertedAmplitude;
  readonly pk: ConvertedAmplitude;
  readonly pp: ConvertedAmplitude;
}

/**
 * A reading in the units a practitioner meets: mm/s, in/s, um, mil, m/s2 and g, each as RMS, peak and
 * peak-to-peak. Without a frequency, only the units of the reading's own quantity.
 *
 * @throws {@link VeladisError} as {@link convertAmplitude}
 * @example
 * ```ts
 * import { equivalents, format } from "veladis";
 *
 * equivalents("0.25 in/s pk at 1500 r/min").map((row) => format(row.pp));
 * // => ["12.7 mm/s pp", "0.500 in/s pp", "80.9 um pp", "3.18 mil pp", "1.99 m/s2 pp", "0.203 g pp"]
 * equivalents("0.25 in/s pk").length; // => 2
 * ```
 */
export function equivalents(reading: string | Amplitude, options?: ConvertOptions): EquivalentsRow[] {
  return withParameters({ options, reading }, () => {
    const amplitude = amplitudeOf(reading);
    const told = plainOptions(options);
    const { crestFactor, ...across } = told;
    const crossing = told.at !== undefined || amplitude.hertz !== undefined;
    const rows = everyday.filter((unit) => crossing || units[unit].quantity === amplitude.quantity);
    return rows.map((unit) => {
      const by = units[unit].quantity === amplitude.quantity ? told : across;
      const [rms, pk, pp] = everydayDetectors.map((detector) => convertAmplitude(amplitude, `${unit} ${detector}`, by));
      return { unit, rms, pk, pp } as EquivalentsRow;
    });
  });
}
