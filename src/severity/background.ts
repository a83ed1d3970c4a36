import { convertAmplitude } from "../amplitude/index";
import { frozen, type Source } from "../core/index";
import { type Amplitude, amplitudeOf, significant } from "../reading/index";

/** How many times the reading at rest a broadband reading must exceed. */
const LEAST = 3;

/** The rule by which a broadband reading is judged, or is not. */
export const backgroundRule = /* @__PURE__ */ frozen({
  text: "a broadband reading is judged where it is more than 3 times the reading with the machine stopped, else a narrow band",
  source: {
    title: "Lloyd's Register, Ship Vibration and Noise Guidance Notes",
    where: "chapter 7, section 1.3; main propulsion excepted",
    provenance: "quoted",
    page: "https://imorules.com/GUID-0449531A-223C-4F34-BAAC-C427D7A68762.html",
    note: "read on the page: severity with the machinery operating is greater than three times the background value with the machine stopped",
  },
} as const satisfies { text: string; source: Source });

/** Whether what a machine adds stands out from what is there while it is stopped. */
export interface BackgroundCheck {
  /** The reading over the reading at rest; infinite for one of zero. */
  readonly ratio: number;
  /** True above 3: the broadband reading may be judged. */
  readonly valid: boolean;
  readonly text: string;
  readonly source: Source;
}

/**
 * Whether a broadband reading may be judged, by the reading at the same point with the machine stopped: it must be more
 * than three times that. Else what is read may come from elsewhere, and a narrow band is needed.
 *
 * @param running - e.g. `"2.1 mm/s rms"`, or an amplitude
 * @param atRest - the reading with the machine stopped, of the same quantity
 * @throws {@link VeladisError} as {@link convertAmplitude}; `missing-frequency` for a reading of another quantity
 * @example
 * ```ts
 * import { checkBackground } from "veladis/severity";
 *
 * checkBackground("2.1 mm/s rms", "0.5 mm/s rms").valid; // => true
 * const { valid, ratio } = checkBackground("2.1 mm/s rms", "0.7 mm/s rms");
 * valid; // => false
 * ratio.toFixed(2); // => "3.00"
 * ```
 */
export function checkBackground(running: string | Amplitude, atRest: string | Amplitude): BackgroundCheck {
  const [reading, rest] = [amplitudeOf(running), amplitudeOf(atRest)];
  const below = convertAmplitude(rest, `${reading.unit} ${reading.detector}` as Parameters<typeof convertAmplitude>[1]);
  const ratio = reading.value / below.value;
  // at exactly three times float noise must not decide: it is not more than three times
  const valid = below.value === 0 ? reading.value > 0 : ratio > LEAST * (1 + 2 ** -23);
  const times = Number.isFinite(ratio) ? significant(ratio) : "many";
  const text = valid
    ? `background: the reading is ${times} times that at rest, more than ${LEAST}: the broadband reading may be judged`
    : `BACKGROUND TOO HIGH: the reading is ${times} times that at rest, not more than ${LEAST}: what is read may come from elsewhere, so that this verdict is not reliable; measure in a narrow band`;
  return Object.freeze({ ratio, valid, text, source: backgroundRule.source });
}

/** A verdict with what the reading at rest says of it, in front of all other cautions. */
export function withBackground<V extends { readonly headline: string; readonly cautions: readonly string[] }>(
  verdict: V,
  readings: readonly Amplitude[],
  atRest: string | Amplitude,
): V & { readonly background: BackgroundCheck } {
  const { quantity } = amplitudeOf(atRest);
  const reading = readings.find((one) => one.quantity === quantity) ?? (readings[0] as Amplitude);
  const background = checkBackground(reading, atRest);
  const headline = background.valid ? verdict.headline : `${verdict.headline}, NOT RELIABLE: background too high`;
  const cautions = Object.freeze([background.text, ...verdict.cautions]);
  return Object.freeze({ ...verdict, headline, background, cautions });
}
