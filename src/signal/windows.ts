import { frozen, type Source, unknownOption, withParameters } from "../core/index";

/** A window that is a sum of cosines: `w(j) = sum over m of (-1)^m terms[m] cos(2 pi m j / n)`. */
export interface Window {
  readonly name: string;
  readonly spoken: readonly string[];
  readonly terms: readonly number[];
  readonly use: string;
  readonly source: Source;
}

const HARRIS = {
  title: "F. J. Harris, On the use of windows for harmonic analysis with the DFT, Proc. IEEE 66 (1978)",
  provenance: "memory",
  note: "noise bandwidth agrees with Heinzel and others (2002), as reproduced in a general-purpose DSP library",
} as const satisfies Source;

const HEINZEL_PAGE = "https://holometer.fnal.gov/GH_FFT.pdf";
const CHECKED = "noise bandwidth and flatness checked against that paper's table where it was read";

const HEINZEL = {
  title: "Heinzel, Ruediger and Schilling, Spectrum and spectral density estimation by the DFT, 2002",
  where: "appendix",
  provenance: "memory",
  page: HEINZEL_PAGE,
  note: CHECKED,
} as const satisfies Source;

const SAME = "the same weights as that function, to the last digits";

const NUTTALL = {
  title:
    "SciPy signal.windows.nuttall, after A. H. Nuttall, Some windows with very good sidelobe behavior, IEEE Trans. ASSP 29 (1981)",
  provenance: "printed",
  page: "https://docs.scipy.org/doc/scipy/reference/generated/scipy.signal.windows.nuttall.html",
  note: SAME,
} as const satisfies Source;

const FLATTOP = {
  title:
    "SciPy signal.windows.flattop, after D'Antona and Ferrero, Digital Signal Processing for Measurement Systems, 2006",
  where: "p. 70",
  provenance: "printed",
  page: "https://docs.scipy.org/doc/scipy/reference/generated/scipy.signal.windows.flattop.html",
  note: SAME,
} as const satisfies Source;

/**
 * All windows. To add one, add its row here and nowhere else.
 *
 * They are taken in their periodic form (one period fits the record), which is the right one for a spectrum. A name that
 * general-purpose numerical libraries have means the same weights here; all others carry the name that their paper gives
 * them.
 */
// biome-ignore format: a row of a table is a line
export const windows = /* @__PURE__ */ frozen({
  rectangular: { name: "rectangular", spoken: ["none", "uniform", "boxcar"], terms: [1], use: "records that hold a whole number of periods; transients", source: HARRIS },
  hann: { name: "Hann", spoken: ["hanning"], terms: [0.5, 0.5], use: "everyday spectra and densities", source: HARRIS },
  hamming: { name: "Hamming", spoken: [], terms: [0.54, 0.46], use: "as Hann, with lower first side lobes that fall off less", source: HARRIS },
  blackman: { name: "Blackman", spoken: [], terms: [0.42, 0.5, 0.08], use: "small lines near large ones", source: HARRIS },
  blackmanharris: { name: "Blackman-Harris, four terms, 92 dB", spoken: [], terms: [0.35875, 0.48829, 0.14128, 0.01168], use: "very small lines near large ones", source: HARRIS },
  nuttall: { name: "Nuttall, four terms, lowest side lobes, 98 dB", spoken: ["nuttall4c"], terms: [0.3635819, 0.4891775, 0.1365995, 0.0106411], use: "the smallest lines near large ones", source: NUTTALL },
  nuttall4: { name: "Nuttall, four terms, falling fastest", spoken: [], terms: [0.3125, 0.46875, 0.1875, 0.03125], use: "small lines far from large ones", source: HEINZEL },
  flattop: { name: "flat top, the customary five terms", spoken: [], terms: [0.21557895, 0.41663158, 0.277263158, 0.083578947, 0.006947368], use: "amplitudes of lines, within 0.12 %", source: FLATTOP },
  hft95: { name: "flat top HFT95, five terms", spoken: [], terms: [1, 1.9383379, 1.3045202, 0.402827, 0.0350665], use: "amplitudes of lines, within 0.051 %", source: HEINZEL },
  hft116d: { name: "flat top HFT116D, six terms", spoken: [], terms: [1, 1.9575375, 1.4780705, 0.6367431, 0.1228389, 0.0066288], use: "amplitudes of lines, within 0.033 %", source: HEINZEL },
  hft248d: { name: "flat top HFT248D, eleven terms", spoken: [], terms: [1, 1.985844164102, 1.791176438506, 1.282075284005, 0.667777530266, 0.240160796576, 0.056656381764, 0.008134974479, 0.00062454465, 0.000019808998, 0.000000132974], use: "amplitudes of lines at any frequency, within 0.0104 %", source: HEINZEL },
} as const satisfies Record<string, Window>);

/** The name of a window: a key of {@link windows}. */
export type WindowName = keyof typeof windows;

/**
 * The window that a text names, without regard to case, spaces and hyphens.
 *
 * @throws {@link VeladisError} `unknown-option` with the windows there are
 * @example
 * ```ts
 * import { windowName } from "veladis/signal";
 *
 * windowName("Flat Top"); // => "flattop"
 * windowName("Hanning"); // => "hann"
 * windowName("Blackman-Harris"); // => "blackmanharris"
 * ```
 */
export function windowName(written: string): WindowName {
  return withParameters({ written }, () => {
    const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]/g, "");
    const asked = typeof written === "string" ? plain(written) : undefined;
    const found = (Object.entries(windows) as [WindowName, Window][]).find(([name, { spoken }]) =>
      [name, ...spoken].some((spelling) => plain(spelling) === asked),
    );
    if (found !== undefined) return found[0];
    throw unknownOption(written, Object.keys(windows), "a window", { parameter: "written" });
  });
}
