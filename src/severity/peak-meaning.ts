import { shown, VeladisError } from "../core/index";
import { type Amplitude, parsedType } from "../reading/index";
import { criterionType } from "./criterion-type";
import type { Criterion, PeakMeaning, Scheme } from "./scheme";

const copies = /* @__PURE__ */ new WeakMap<Criterion, Criterion>();
const originals = /* @__PURE__ */ new WeakMap<Criterion, Criterion>();

/** A criterion in peak with the same limits in true peak: no smaller than a peak as of a sine, so on the safe side. */
export function forTruePeak(criterion: Criterion): Criterion {
  const known = copies.get(criterion);
  if (known !== undefined) return known;
  const copy = Object.freeze({ ...criterion, as: `${criterionType(criterion).unit} true pk` as Criterion["as"] });
  copies.set(criterion, copy);
  originals.set(copy, criterion);
  return copy;
}

/** Which peak the limits of a criterion mean; undefined where they are in no peak. */
export function peakMeaningOf({ peakMeans = "open" }: Scheme, criterion: Criterion): PeakMeaning | undefined {
  const { detector } = criterionType(originals.get(criterion) ?? criterion);
  return detector === "true pk" ? "true" : detector === "pk" ? peakMeans : undefined;
}

/**
 * Refuses a meaning of the peak that the limits themselves contradict: a true peak is written `true pk`.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requirePeakMeaning({ peakMeans, classes }: Scheme): void {
  if (peakMeans === undefined) return;
  const wanted = peakMeans === "true" ? "true pk" : "pk";
  const all = classes.flatMap(({ criteria }) => criteria);
  const inPeak = all.filter((one) => /^(?:true )?pk$/.test(criterionType(one).detector));
  if (inPeak.length > 0 && inPeak.every((one) => criterionType(one).detector === wanted)) return;
  throw new VeladisError("out-of-range", {
    expected: `limits in ${wanted}, since peakMeans is ${shown(peakMeans)}: a true peak is written "true pk", any other "pk"`,
    received: shown(all.map(({ as }) => as).join(", ")),
  });
}

/** What a limit in peak is compared with, and where that leaves a reading. */
interface PeakPlan {
  readonly criterion: Criterion;
  readonly place: number;
  readonly band: readonly [low: number, high: number] | null;
  readonly peakMeans: PeakMeaning | undefined;
}

const MEANINGS: Readonly<Record<PeakMeaning, string>> = {
  true: "means a true peak, read in the waveform",
  rms: "means 1.414 x RMS, no true peak",
  open: "leaves open whether it means a true peak or 1.414 x RMS",
};

/** Which peak limits mean, and in which band, in words. */
function meaningText(
  { standard, edition }: Pick<Scheme, "standard" | "edition">,
  peakMeans: PeakMeaning,
  band: Scheme["band"],
): string {
  const where = band === null ? "in a band that it does not state" : `in the band of ${band[0]} to ${band[1]} Hz`;
  return `peak: ${standard} (${edition}) ${MEANINGS[peakMeans]}, ${where}`;
}

/** What is to know of limits of a scheme that are set in a device, where they are in peak; undefined where they are not. */
export function peakOfLimits(scheme: Scheme, as: string): string | undefined {
  const { detector } = parsedType(as);
  if (detector !== "pk" && detector !== "true pk") return undefined;
  const { peakMeans = detector === "pk" ? "open" : "true", band } = scheme;
  return `${meaningText(scheme, peakMeans, band)}; the device has to measure the same`;
}

/** What a reading in the peak that is not meant, or may not be meant, does to the answer. */
function effectOf(meaning: PeakMeaning, detector: Amplitude["detector"]): string {
  if (detector === "true pk")
    return meaning === "true"
      ? ""
      : "; a true peak is the larger of the two and is judged as it stands, on the safe side";
  if (meaning === "rms") return "";
  return meaning === "true"
    ? "; the reading is none, and its crests may be higher"
    : "; a true peak may be higher than this reading: measure it too, and judge the larger";
}

/** Which peak the limits mean by which readings are judged, in which band, and what that means for the reading. */
export function peakCautions(
  scheme: Scheme,
  plans: readonly PeakPlan[],
  readings: readonly Amplitude[],
): readonly string[] {
  const told = plans.flatMap(({ peakMeans, place, band }) => {
    if (peakMeans === undefined) return [];
    return [`${meaningText(scheme, peakMeans, band)}${effectOf(peakMeans, (readings[place] as Amplitude).detector)}`];
  });
  return [...new Set(told)];
}
