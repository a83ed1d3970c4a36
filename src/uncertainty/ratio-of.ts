import { convertAmplitude, linearAmplitude, linearTypeOf } from "../amplitude/index";
import { inPlace, requireGiven, VeladisError, withParameters } from "../core/index";
import { type Amplitude, type Assumption, agreedHertz, format, madeOf, type Step } from "../reading/index";
import { uncertainAmplitude } from "./uncertain-amplitude";

/** A ratio of two readings, with the way it came by. */
export interface RatioOf {
  readonly value: number;
  readonly assumed: readonly Assumption[];
  readonly history: readonly Step[];
}

const FORM = 'a reading such as "4.9 ± 0.3 mm/s rms"';

function read(reading: string | Amplitude, parameter: "reading" | "over"): Amplitude {
  return inPlace({ parameter }, () => linearAmplitude(uncertainAmplitude(requireGiven(reading, FORM))));
}

/**
 * One reading over another of its quantity and detector, as an answer with a history, so that {@link uncertaintyOf}
 * says how well the ratio is known.
 *
 * @throws {@link VeladisError} `wrong-quantity`, `wrong-detector`, `not-positive` for a divisor of zero, `out-of-range`
 *   for readings that say two frequencies, and as {@link parseUncertain}
 * @example
 * ```ts
 * import { ratioOf, uncertaintyOf } from "veladis/uncertainty";
 *
 * const ratio = ratioOf("5.2 ± 2 % mm/s rms (k=2)", "2.6 ± 2 % mm/s rms (k=2)");
 * ratio.value; // => 2
 * uncertaintyOf(ratio).expanded.toFixed(3); // => "0.057"
 * ```
 */
export function ratioOf(reading: string | Amplitude, over: string | Amplitude): RatioOf {
  return withParameters({ reading, over }, () => {
    const [first, second] = [read(reading, "reading"), read(over, "over")];
    if (first.quantity !== second.quantity || first.detector !== second.detector) {
      throw new VeladisError(first.quantity === second.quantity ? "wrong-detector" : "wrong-quantity", {
        expected: "two readings of one quantity by one detector, to divide one by the other",
        received: `${format(first)} and ${format(second)}`,
      });
    }
    if (second.value === 0) {
      throw new VeladisError("not-positive", {
        expected: "a reading above zero to divide by",
        received: format(second),
      });
    }
    if (second.hertz !== undefined) agreedHertz(first.hertz, { hertz: second.hertz });
    const same = convertAmplitude(second, linearTypeOf(first));
    const value = first.value / same.value;
    const { assumed = [], history = [] } = madeOf([first, same], { does: "ratio", value, type: "" });
    return Object.freeze({ value, assumed, history });
  });
}
