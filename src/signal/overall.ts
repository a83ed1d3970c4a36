import { inPlace, requireKnownOptions, shown, VeladisError, withParameters } from "../core/index";
import { detectorFacts } from "../detectors/index";
import { linearType } from "../reading/index";
import { derivativeOrder, unitFactor } from "../units/index";
import { requireOversampling, waveformOfBins } from "./band-waveform";
import { finiteLevel } from "./finite-level";
import { bandNote, measured } from "./measured";
import type { OverallOptions, SpectrumOverall } from "./overall-type";
import { meanSquare, recordBins } from "./record-bins";
import { sampleUnit } from "./sample-unit";
import type { Samples } from "./samples";
import { windowName } from "./windows";

const keys: Readonly<Record<keyof OverallOptions, true>> = /* @__PURE__ */ Object.freeze({
  rate: true,
  unit: true,
  band: true,
  as: true,
  edges: true,
  order: true,
  detrend: true,
  window: true,
  oversample: true,
});

/**
 * The overall level of a sampled vibration within a band, in any unit, quantity and detector.
 *
 * An overall cannot be converted by one frequency when the vibration is not one sine. So the record is taken to its
 * spectrum, each bin is integrated or differentiated at its own frequency, and the bins of the band are summed
 * (RMS, by Parseval's theorem) or taken back to a waveform (peak, peak-to-peak, average: read from the waveform,
 * nothing derived by the ratios of a sine).
 *
 * The mean is taken off first. Bin k stands for the frequency k rate / n. With ideal edges a bin counts when
 * `low <= frequency <= high`, both edges included; with -3 dB edges every bin but the one at 0 Hz counts by the gain
 * of a Butterworth band-pass. What the record holds is taken as one period of something that repeats: a tone that
 * does not fit a whole number of times leaks into its neighbours, and with a rectangular window towards low
 * frequencies too, where integration enlarges it. `window: "hann"` cures that, for RMS values.
 *
 * A sample peak can miss the crest between two samples: by cos(pi high / rate) at worst. `oversample` fills in.
 *
 * @param samples - evenly spaced, any array of numbers; it is not changed
 * @returns the level as an amplitude, with band, edges, bins, resolution, window, and what was taken off
 * @throws {@link VeladisError} `not-a-number` or `not-finite` with the index of the sample, `not-positive` for the
 *   rate, `out-of-range` for the band, `missing-fact` for fewer than two samples, `sensor-fault` when all samples are
 *   equal, `unknown-option`, `unknown-unit`, `unknown-detector`, `missing-detector`
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { overall } from "veladis/signal";
 *
 * // an induced-draught fan: 1 g pk at 25 Hz and 0.5 g pk at 400 Hz, one second at 5120 samples a second
 * const rate = 5120;
 * const samples = Float64Array.from({ length: rate }, (_, i) => {
 *   const t = (2 * Math.PI * i) / rate;
 *   return Math.sin(25 * t) + 0.5 * Math.sin(400 * t);
 * });
 * const level = overall(samples, { rate, unit: "g", band: [10, 1000], as: "mm/s rms" });
 * level.value.toFixed(4); // => "44.1670"
 * format(level); // => "44.2 mm/s rms"
 * level.bins; // => [10, 1000]
 * format(overall(samples, { rate, unit: "g", band: [10, 1000], as: "um pp" })); // => "795 um pp"
 * ```
 */
export function overall(samples: Samples, options: OverallOptions): SpectrumOverall {
  return withParameters({ samples, options }, () => {
    requireKnownOptions(options, keys, {
      what: "an option of an overall level",
      form: "options with rate, unit, band and as",
    });
    const unit = sampleUnit(options.unit);
    const answer = linearType(options.as, { parameter: "options", option: "as" });
    const over = requireOversampling(options.oversample ?? 1);
    const { detector } = answer;
    if (detector !== "rms" && inPlace(WINDOW, () => windowName(options.window ?? "rectangular")) !== "rectangular") {
      throw new VeladisError("unknown-option", {
        expected: "a rectangular window for anything but an RMS value, since others change the waveform",
        received: shown(options.window),
        option: "window",
        allowed: ["rectangular"],
      });
    }
    const steps = derivativeOrder(unit, answer.unit);
    const record = recordBins(samples, options, steps);
    const size =
      detector === "rms"
        ? Math.sqrt(meanSquare(record))
        : detectorFacts[detector].ofSamples(waveformOfBins(record, steps, over));
    const value = finiteLevel(unitFactor(unit, answer.unit) * size);
    return Object.freeze({
      ...measured(value, answer, bandNote(record.done.band)),
      ...record.done,
      method: "spectrum",
    });
  });
}
const WINDOW = { option: "window" };
