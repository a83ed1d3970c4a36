import { convertAmplitude } from "../amplitude/index";
import { frozen, inPlace, type Provenance, type Source, withParameters, worstProvenance } from "../core/index";
import { type Amplitude, amplitudeOf, significant } from "../reading/index";
import { outerFactors } from "./outer-factors";

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

/** Behind the headline of a verdict whose background is too high. */
export const NOT_RELIABLE = "NOT RELIABLE: background too high";

/** Whether what a machine adds stands out from what is there while it is stopped. */
export interface BackgroundCheck {
  /** The reading over the reading at rest, of best values; infinite for one of zero. */
  readonly ratio: number;
  /** True above 3, also at the ends of their intervals: the broadband reading may be judged. */
  readonly valid: boolean;
  readonly text: string;
  readonly source: Source;
}

/**
 * Whether a broadband reading may be judged, by the reading at the same point with the machine stopped: it must be more
 * than three times that. Else what is read may come from elsewhere, and a narrow band is needed. Of readings with an
 * uncertainty the lower end of the one and the upper end of the other (k = 2) must be so.
 *
 * @param running - e.g. `"2.1 mm/s rms"`, or an amplitude
 * @param atRest - the reading with the machine stopped, of the same quantity
 * @throws {@link VeladisError} as {@link convertAmplitude}; `missing-frequency` for a reading of another quantity, where
 *   neither has its frequency
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
  return withParameters({ running, atRest }, () => {
    const [reading, rest] = Object.entries({ running, atRest }).map(([parameter, one]) =>
      inPlace({ parameter }, () => amplitudeOf(one)),
    ) as [Amplitude, Amplitude];
    const type = `${reading.unit} ${reading.detector}` as Parameters<typeof convertAmplitude>[1];
    // the same part of the vibration, so the frequency of the one serves the other
    const at = rest.hertz === undefined ? reading.hertz : undefined;
    const below = convertAmplitude(rest, type, at === undefined ? {} : { at: { hertz: at } });
    const ratio = reading.value / below.value;
    const known = below.history ?? [];
    // the rest may have been converted by the frequency of the reading
    const [low] = outerFactors(reading.history ?? []);
    const [, high] = outerFactors(known, [...known, ...(at === undefined ? [] : (reading.history ?? []))]);
    const least = ratio * (low / high);
    // at exactly three times float noise must not decide: it is not more than three times
    const valid = below.value === 0 ? reading.value * low > 0 : least > LEAST * (1 + 2 ** -23);
    const times = Number.isFinite(ratio) ? significant(ratio) : "many";
    const ends =
      low === 1 && high === 1
        ? ""
        : `, ${least > 0 ? `at least ${Number.isFinite(least) ? significant(least) : "many"}` : "not known how many"} times with the reading at the lower and that at rest at the upper end of its uncertainty`;
    const text = valid
      ? `background: the reading is ${times} times that at rest${ends}, more than ${LEAST}: the broadband reading may be judged`
      : `BACKGROUND TOO HIGH: the reading is ${times} times that at rest${ends}, not more than ${LEAST}: what is read may come from elsewhere, so that this verdict is not reliable; measure in a narrow band`;
    return Object.freeze({ ratio, valid, text, source: backgroundRule.source });
  });
}

/** What a reading at rest bears on in an answer. */
interface Marked {
  readonly headline: string;
  readonly provenance: Provenance;
  readonly verified: boolean;
  readonly cautions: readonly string[];
}

/** A judgement with the check in front of its other cautions; where the background is too high it rests on that rule. */
function marked<J extends Marked>(judgement: J, background: BackgroundCheck) {
  const cautions = Object.freeze([background.text, ...judgement.cautions]);
  if (background.valid) return Object.freeze({ ...judgement, background, cautions });
  const provenance = worstProvenance([judgement.provenance, background.source.provenance]);
  const headline = `${judgement.headline}, ${NOT_RELIABLE}`;
  return Object.freeze({ ...judgement, headline, provenance, verified: false, background, cautions });
}

/** A verdict with what the reading at rest says of it and of each judgement that it is made of. */
export function withBackground<V extends Marked & { readonly judgements?: readonly Marked[] }>(
  verdict: V,
  readings: readonly Amplitude[],
  atRest: string | Amplitude,
): V & { readonly background: BackgroundCheck } {
  const { quantity } = amplitudeOf(atRest);
  const reading = readings.find((one) => one.quantity === quantity) ?? (readings[0] as Amplitude);
  const background = checkBackground(reading, atRest);
  const { judgements } = verdict;
  const all = judgements && { judgements: Object.freeze(judgements.map((one) => marked(one, background))) };
  return marked({ ...verdict, ...all }, background);
}
