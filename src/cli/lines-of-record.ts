import { type AmplitudeType, parseAmplitude, type ReadingType } from "../amplitude/index";
import { type Band, convertSpectrum, type Spectrum } from "../signal/index";

/** The spectrum from which the lines of a record are picked: in the type of the first level, down to its band. */
export function linesOfRecord(spectrum: Spectrum, as: ReadingType, [low]: Band): Spectrum {
  const { unit, detector } = parseAmplitude(`1 ${as}`);
  const type = `${unit} ${detector}` as AmplitudeType;
  // two lines below the band, so that a line at its edge has neighbours
  const { resolution } = spectrum;
  return convertSpectrum(spectrum, type, { from: Math.max(resolution, low - 2 * resolution) });
}
