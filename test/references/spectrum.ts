import type { WindowName } from "veladis/signal";
import type { Reference } from "./reference";

const HEINZEL = {
  source:
    "Heinzel, Ruediger and Schilling, Spectrum and spectral density estimation by the DFT (2002), window table, as reproduced in the header of a general-purpose DSP library",
  page: "https://holometer.fnal.gov/GH_FFT.pdf",
  provenance: "published",
  agrees: true,
} as const;

const bandwidth = { ...HEINZEL, statement: "equivalent noise bandwidth in bins" } as const;
const flatness = { ...HEINZEL, statement: "largest deviation within half a bin, in dB; compared by size" } as const;

type WindowReference = Reference & { readonly window: WindowName };

/** Noise bandwidths of windows in print. */
// biome-ignore format: a row of a table is a line
export const bandwidthsInPrint = [
  { id: "E03", window: "hamming", printed: 1.3628, tolerance: 0.00005, ...bandwidth },
  { id: "E04", window: "hann", printed: 1.5, tolerance: 0.005, ...bandwidth },
  { id: "E06", window: "nuttall4", printed: 2.31, tolerance: 0.005, ...bandwidth },
  { id: "E06c", window: "nuttall", printed: 1.9761, tolerance: 0.00005, ...bandwidth, provenance: "memory" },
  { id: "E07", window: "blackmanharris", printed: 2.0044, tolerance: 0.00005, ...bandwidth },
  { id: "E09", window: "hft95", printed: 3.8112, tolerance: 0.00005, ...bandwidth },
  { id: "E10", window: "hft116d", printed: 4.2186, tolerance: 0.00005, ...bandwidth },
  { id: "E12", window: "hft248d", printed: 5.6512, tolerance: 0.00005, ...bandwidth },
] as const satisfies readonly WindowReference[];

/** The Welch window, which is no sum of cosines and no window of this library: its bandwidth from its weights. */
export const welchWindowInPrint = {
  id: "E01",
  printed: 1.2,
  tolerance: 0.005,
  ...bandwidth,
} as const satisfies Reference;

const harris = (window: WindowName, printed: number): WindowReference => ({
  id: `E15.${window}`,
  window,
  statement: "equivalent noise bandwidth in bins",
  printed,
  tolerance: 0.005,
  agrees: true,
  source: "F. J. Harris, Proc. IEEE 66 (1978), Table I",
  provenance: "memory",
});

/** Noise bandwidths of the same, recalled. */
export const bandwidthsRecalled = [
  harris("rectangular", 1),
  harris("hann", 1.5),
  harris("hamming", 1.36),
  harris("blackman", 1.73),
];

/** Largest loss of a line between bins in dB. */
// biome-ignore format: a row of a table is a line
export const flatnessInPrint = [
  { id: "E04.flatness", window: "hann", printed: 1.4236, tolerance: 0.00006, ...flatness },
  { id: "E07.flatness", window: "blackmanharris", printed: 0.8256, tolerance: 0.00006, ...flatness },
  { id: "E09.flatness", window: "hft95", printed: 0.0044, tolerance: 0.00006, ...flatness },
  { id: "E10.flatness", window: "hft116d", printed: 0.0028, tolerance: 0.00006, ...flatness },
  { id: "E15.rectangular", window: "rectangular", printed: 3.92, tolerance: 0.006, ...flatness, source: "F. J. Harris (1978), Table I", provenance: "memory" },
  { id: "E15.blackman", window: "blackman", printed: 1.1, tolerance: 0.006, ...flatness, source: "F. J. Harris (1978), Table I", provenance: "memory" },
  { id: "E15.hamming", window: "hamming", printed: 1.78, tolerance: 0.006, ...flatness, agrees: false, source: "F. J. Harris (1978), Table I", provenance: "memory", note: "1.75 for 0.54 and 0.46" },
] as const satisfies readonly WindowReference[];

/** Amplitude uncertainties of windows as quoted in a forum, in per cent: rounded, of mixed conventions. */
// biome-ignore format: a row of a table is a line
export const uncertaintiesInPrint = [
  { id: "E16.rectangular", window: "rectangular", statement: "true over indicated, less 1, in per cent", printed: 56.5, tolerance: 0.05, agrees: false, source: "Eng-Tips thread 12661", page: "https://www.eng-tips.com/viewthread.cfm?qid=12661", provenance: "published", note: "57.1" },
  { id: "E16.hann", window: "hann", statement: "true over indicated, less 1, in per cent", printed: 18.8, tolerance: 0.05, agrees: false, source: "Eng-Tips thread 12661", page: "https://www.eng-tips.com/viewthread.cfm?qid=12661", provenance: "published", note: "17.8" },
] as const satisfies readonly WindowReference[];
