import { inPlace, requireFinite, requireGiven, VeladisError, withParameters } from "../core/index";
import { requireRelated } from "../detectors/index";
import { type Amplitude, agreedHertz, amplitudeOf, format } from "../reading/index";
import { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";
import { derivedAmplitude, linearAmplitude, linearTypeOf } from "./derived-amplitude";
import { vectorDistance } from "./vector-distance";

const FORM = 'a reading such as "3 mil pp"';

/** Two readings of one quantity and detector, in the unit of the first. */
function alike(
  from: string | Amplitude,
  off: string | Amplitude,
  other: string,
): [ConvertedAmplitude, ConvertedAmplitude] {
  const first = inPlace({ parameter: "from" }, () => amplitudeOf(requireGiven(from, FORM)));
  const second = inPlace({ parameter: other }, () => amplitudeOf(requireGiven(off, FORM)));
  if (first.quantity !== second.quantity || first.detector !== second.detector) {
    throw new VeladisError(first.quantity === second.quantity ? "wrong-detector" : "wrong-quantity", {
      expected: "two readings of one quantity by one detector, to take one off the other",
      received: `${format(first)} and ${format(second)}`,
    });
  }
  const type = linearTypeOf(first);
  return [convertAmplitude(linearAmplitude(first), type), convertAmplitude(second, type)];
}

/**
 * One vibration less another at the same frequency, with the angle between them: slow-roll runout taken off the reading of
 * a proximity probe, one sine off the other as vectors. Without the angle it lies anywhere between their difference (0
 * degrees) and their sum (180 degrees).
 *
 * @param degrees - angle between the two, in degrees
 * @throws {@link VeladisError} `wrong-quantity`, `wrong-detector`, `not-a-sine` for true peaks, `not-finite`,
 *   `out-of-range` for readings that say two frequencies, and as {@link parseAmplitude}
 * @example
 * ```ts
 * import { format, vectorDifference } from "veladis/signal";
 *
 * const corrected = vectorDifference("3 mil pp", "1 mil pp", 90);
 * format(corrected); // => "3.16 mil pp"
 * corrected.assumed; // => ["one-frequency"]
 * format(vectorDifference("3 mil pp", "1 mil pp", 180)); // => "4.00 mil pp"
 * ```
 */
export function vectorDifference(
  from: string | Amplitude,
  off: string | Amplitude,
  degrees: number,
): ConvertedAmplitude {
  return withParameters({ from, off, degrees }, () => {
    const [first, second] = alike(from, off, "off");
    requireRelated(first.detector, "rms", undefined);
    requireFinite(degrees, "an angle in degrees", { parameter: "degrees" });
    const hertz = agreedHertz(first.hertz, second.hertz === undefined ? undefined : { hertz: second.hertz });
    const value = vectorDistance(first.value, second.value, degrees);
    const step = {
      does: "vector difference",
      by: degrees,
      assumed: Object.freeze(["one-frequency"] as const),
    } as const;
    return Object.freeze({ ...derivedAmplitude([first, second], value, step), hertz });
  });
}

/**
 * An RMS reading less a background that has nothing to do with it: the root of the difference of their squares.
 *
 * @throws {@link VeladisError} `wrong-quantity`, `wrong-detector` for all but RMS readings, `out-of-range` for a background
 *   above the reading, and as {@link parseAmplitude}
 * @example
 * ```ts
 * import { format, rssDifference } from "veladis/signal";
 *
 * const pump = rssDifference("5 mm/s rms", "3 mm/s rms");
 * format(pump); // => "4.00 mm/s rms"
 * pump.assumed; // => ["uncorrelated"]
 * ```
 */
export function rssDifference(from: string | Amplitude, background: string | Amplitude): ConvertedAmplitude {
  return withParameters({ from, background }, () => {
    const [first, second] = alike(from, background, "background");
    if (first.detector !== "rms") {
      throw new VeladisError("wrong-detector", {
        expected: "RMS readings, since peaks of different waves do not go together by their squares",
        received: format(first),
        allowed: ["rms"],
      });
    }
    if (second.value > first.value) {
      throw new VeladisError("out-of-range", {
        expected: `a background of at most the reading, ${format(first)}`,
        received: format(second),
      });
    }
    const value = Math.sqrt((first.value - second.value) * (first.value + second.value));
    const step = { does: "rss difference", assumed: Object.freeze(["uncorrelated"] as const) } as const;
    return Object.freeze({ ...derivedAmplitude([first, second], value, step), hertz: undefined });
  });
}
