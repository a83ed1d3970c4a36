export type { Averaging, AveragingOptions } from "./averaged-power";
export { type Band, type BandEdges, bandEdges } from "./band";
export { type BandOverall, bandOverall } from "./band-overall";
export { type BandWaveform, type BandWaveformOptions, bandWaveform } from "./band-waveform";
export { type ButterworthOptions, butterworth } from "./butterworth";
export { bandPassPowerGain } from "./butterworth-gain";
export { type ConvertSpectrumOptions, convertSpectrum } from "./convert-spectrum";
export { convertDensity, type DensityOptions, density, densityOverall } from "./density";
export type { Density } from "./density-type";
export { type DensityUnit, densityUnit } from "./density-unit";
export { type Descriptors, type DescriptorsOptions, descriptors } from "./descriptors";
export { detrended, type Trend, trends } from "./detrend";
export { gaussianWithin, rayleighBeyond } from "./gaussian";
export {
  type OrderLine,
  type OrderLinesOptions,
  orderLines,
  type SpectrumLine,
  type TopLinesOptions,
  topLines,
} from "./lines";
export { overall } from "./overall";
export { type OverallStream, type OverallStreamOptions, overallStream } from "./overall-stream";
export type { FilterOverall, Overall, OverallOptions, SpectrumOverall } from "./overall-type";
export { type GaussianPeak, type ProfileOptions, type ProfileOverall, profileOverall } from "./profile";
export type { Samples } from "./samples";
export { responseAt, type Section } from "./sections";
export {
  type BreakPoint,
  decibelsPerOctave,
  pointAlong,
  profileDensity,
  profileSlopes,
  slopeExponent,
} from "./slope";
export { type SpectrumStream, spectrum, spectrumStream } from "./spectrum";
export type { Spectrum, SpectrumOptions } from "./spectrum-type";
export { coherentGain, noiseBandwidth, windowWeights } from "./weights";
export { type Window, type WindowName, windowName, windows } from "./windows";
