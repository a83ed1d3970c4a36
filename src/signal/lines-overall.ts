import {
  inPlace,
  requireBoolean,
  requireFinite,
  requireKnownOptions,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { sineRatio } from "../detectors/index";
import { type Amplitude, type AmplitudeType, linearType } from "../reading/index";
import { derivativeOrder, unitFactor } from "../units/index";
import { type Band, requireBand } from "./band";
import { finiteLevel } from "./finite-level";
import { type ListedLine, requireListedLines, requireSpacing } from "./listed-lines";
import { bandNote, measured } from "./measured";
import { type WindowName, windowName, windows } from "./windows";

/** What the level of listed lines needs to be told; of `window`, `noiseBandwidth` and `tones` one. */
export interface LinesOverallOptions {
  /** What the lines are written in, e.g. `"mm/s pk"`. */
  readonly type: AmplitudeType;
  /** What to answer in, an RMS value of any quantity, e.g. `"mm/s rms"`. */
  readonly as: AmplitudeType;
  /** Lower and upper edge in hertz; a line on an edge counts. */
  readonly band: Band;
  /** The window that the spectrum was made with. */
  readonly window?: WindowName;
  /** Its equivalent noise bandwidth in lines, where the window has no name here. */
  readonly noiseBandwidth?: number;
  /** Each line is a tone of its own at its whole size (a list of peaks), so that nothing is divided by. */
  readonly tones?: boolean;
}

/** The RMS level of listed lines. */
export interface LinesOverall extends Amplitude {
  readonly band: Band;
  /** How many lines counted. */
  readonly count: number;
  /** Spacing of the lines in hertz; left out for tones. */
  readonly resolution?: number;
}

const keys: Readonly<Record<keyof LinesOverallOptions, true>> = /* @__PURE__ */ Object.freeze({
  type: true,
  as: true,
  band: true,
  window: true,
  noiseBandwidth: true,
  tones: true,
});

/** Equivalent noise bandwidth of a window in lines, from its terms: `sum(w^2) n / sum(w)^2`. */
function noiseBandwidthOf(name: WindowName): number {
  const [mean, ...cosines] = windows[name].terms as readonly [number, ...number[]];
  return 1 + cosines.reduce((sum, term) => sum + term * term, 0) / (2 * mean * mean);
}

/** What the sum of squares is divided by; undefined for tones. */
function dividedBy({ window, noiseBandwidth, tones = false }: LinesOverallOptions): number | undefined {
  const isList = requireBoolean(tones, "tones as true for a list of tones", { option: "tones" });
  const told = [window !== undefined, noiseBandwidth !== undefined, isList].filter(Boolean).length;
  const expected =
    "one of window, noiseBandwidth and tones: the lines of a windowed spectrum over-count, by 22 % of a Hann window and by 94 % of a flat top";
  if (told !== 1) {
    throw new VeladisError(told === 0 ? "missing-fact" : "unknown-option", {
      expected,
      received: told === 0 ? "nothing" : `${told} of them`,
      option: told === 0 ? "tones" : "window",
    });
  }
  if (isList) return undefined;
  if (window !== undefined) return noiseBandwidthOf(inPlace({ option: "window" }, () => windowName(window)));
  const given = requireFinite(noiseBandwidth as number, "an equivalent noise bandwidth in lines such as 1.5", {
    option: "noiseBandwidth",
  });
  if (given >= 1 && given <= 10) return given;
  throw new VeladisError("out-of-range", {
    expected:
      "an equivalent noise bandwidth of 1 to 10 lines, such as 1.5 for Hann; one in Hz is divided by the spacing",
    received: shown(noiseBandwidth),
    option: "noiseBandwidth",
  });
}

/** The band, if lines that are this far apart reach over it. */
function requireReach(band: Band, lines: readonly ListedLine[], spacing: number | undefined): Band {
  const [low, high] = inPlace({ option: "band" }, () => requireBand(band, Number.MAX_VALUE, 0));
  const [first, last] = [(lines[0] as ListedLine)[0], (lines[lines.length - 1] as ListedLine)[0]];
  const room = (spacing ?? Number.POSITIVE_INFINITY) * (1 + 1e-9);
  if (low >= first - room && high <= last + room) return [low, high];
  throw new VeladisError("out-of-range", {
    expected: `a band within the lines, from ${first} to ${last} Hz; what vibrates beyond them is not among them`,
    received: `${low} to ${high} Hz`,
    parameter: "band",
  });
}

/**
 * The RMS level of a band of lines that are listed, as in a file: each taken to the quantity asked for at its own
 * frequency, root of the sum of squares, divided by the noise bandwidth of their window.
 *
 * All lines of a spectrum are evenly spaced (each within a tenth of the spacing, room for rounded frequencies). Tones may
 * stand anywhere; what lies between them is not in the list, so that the level is one of these tones alone.
 *
 * @param lines - `[[hertz, size], ...]`, frequencies rising
 * @throws {@link VeladisError} `missing-fact` where neither window, noise bandwidth nor tones are told,
 *   `unknown-option` where several are, `out-of-range` for frequencies that do not rise or are not evenly spaced, for a
 *   band beyond the lines or without one, `unknown-detector` for anything but RMS, `sensor-fault` for zeros alone
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { linesOverall } from "veladis/signal";
 *
 * // a booster pump at 1180 r/min: its 1x and 2x, from a list of peaks
 * const peaks = [[19.67, 0.12], [39.33, 0.05]] as const;
 * const level = linesOverall(peaks, { type: "in/s pk", as: "mm/s rms", band: [10, 1000], tones: true });
 * format(level); // => "2.33 mm/s rms"
 * level.count; // => 2
 * ```
 */
export function linesOverall(lines: readonly ListedLine[], options: LinesOverallOptions): LinesOverall {
  return withParameters({ lines, options }, () => {
    const { type, as, band } = requireKnownOptions(options, keys, {
      what: "an option of listed lines",
      form: "options with type, as, band and window",
    });
    const listed = requireListedLines(lines);
    const from = inPlace({ option: "type" }, () => linearType(type));
    const answer = inPlace({ option: "as" }, () => linearType(as));
    if (answer.detector !== "rms") {
      throw new VeladisError("unknown-detector", {
        expected: "an RMS value: lines have lost their phases, and with them the peak of the waveform",
        received: shown(as),
        option: "as",
        allowed: ["rms"],
      });
    }
    const divisor = dividedBy(options);
    const spacing = divisor === undefined ? undefined : requireSpacing(listed);
    const [low, high] = requireReach(band, listed, spacing);
    const steps = derivativeOrder(from.unit, answer.unit);
    const within = listed.filter(([hertz]) => hertz >= low * (1 - 1e-9) && hertz <= high * (1 + 1e-9));
    if (within.length === 0) {
      throw new VeladisError("out-of-range", {
        expected: "a band that holds a line",
        received: `${low} to ${high} Hz`,
        parameter: "band",
      });
    }
    const squares = within.reduce((sum, [hertz, size]) => sum + (size * (2 * Math.PI * hertz) ** steps) ** 2, 0);
    const factor = unitFactor(from.unit, answer.unit) * sineRatio(from.detector, "rms");
    const rms = inPlace({ parameter: "lines" }, () => finiteLevel(factor * Math.sqrt(squares / (divisor ?? 1))));
    return Object.freeze({
      ...measured(rms, answer, bandNote([low, high])),
      band: [low, high] as const,
      count: within.length,
      ...(spacing !== undefined && { resolution: spacing }),
    });
  });
}
