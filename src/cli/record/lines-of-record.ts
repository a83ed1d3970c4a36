import type { AmplitudeType } from "../../reading/index";
import { type Band, convertSpectrum, type Spectrum } from "../../signal/index";

/** The spectrum from which the lines of a record are picked: in the type of the first level, down to its band. */
export function linesOfRecord(spectrum: Spectrum, as: AmplitudeType, [low]: Band): Spectrum {
  // two lines below the band, so that a line at its edge has neighbours
  const { resolution } = spectrum;
  return convertSpectrum(spectrum, as, { lowest: Math.max(resolution, low - 2 * resolution) });
}
