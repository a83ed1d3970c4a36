import { withParameters } from "../core/index";
import type { Assumption } from "../reading/index";
import {
  requireUncertaintyOptions,
  type UncertaintyOf,
  type UncertaintyOfPhase,
  type UncertaintyOptions,
  uncertainOf,
  uncertaintyBy,
  uncertaintyOfPhase,
} from "../uncertainty/index";
import { vectorOf } from "./parse-vector";
import type { Vector } from "./vector";

/** How well a vector is known: its length and its phase, each by itself. */
export interface UncertaintyOfVector {
  /** Of a sum or difference of which nothing may be left, the interval begins at 0 and ends at what 95 % are at most. */
  readonly amplitude: UncertaintyOf;
  /**
   * Null where the phase is not determined: the region in which the vector lies with 95 % holds the origin, or two standard
   * uncertainties of the phase are more than a quarter of a turn.
   */
  readonly phase: UncertaintyOfPhase | null;
  /** All that was assumed on the way, and that the inputs are independent: also amplitude and phase of one reading. */
  readonly assumed: readonly Assumption[];
}

/**
 * How well a vector is known, from the ± of the amplitudes, the phases and the speeds that led to it.
 *
 * To first order on the two parts of the vector, its length times cosine and sine of its lag, with what both owe to each
 * input: so their covariance is kept, and a reading that comes in twice is one input. Where the expanded uncertainty of
 * a sum or a difference is above 10 % of its length in any direction, or a step is bent, the whole history is reckoned
 * again with drawn inputs. A phase that no ± was given for is exact.
 *
 * @param vector - words as for {@link parseVector}, a vector, or what was made of some
 * @returns both uncertainties as data, the phase in degrees; `standard` is 0 where nothing has a ±
 * @throws {@link VeladisError} `unknown-option`, `out-of-range` for draws and seed and for what was replaced behind a ±, and as
 *   {@link parseVector}
 * @example
 * ```ts
 * import { differenceOfVectors, formatVector, uncertaintyOfVector } from "veladis/vector";
 *
 * const after = "42 ± 0.5 um pp (k=2) ∠ 100 ± 2° (k=2) at 1x of 5400 r/min";
 * const before = "40 ± 0.5 um pp (k=2) ∠ 60 ± 2° (k=2) at 1x of 5400 r/min";
 * const change = differenceOfVectors(after, before);
 * formatVector(change); // => "28.1 ± 1.9 um pp (k=2) ∠ 166.2 ± 2.0° (k=2) at 1x of 5400 r/min"
 * const { amplitude, phase } = uncertaintyOfVector(change);
 * amplitude.parts.map(({ name }) => name).slice(0, 2); // => ["phase 100 degrees", "phase 60 degrees"]
 * phase?.method; // => "first order"
 * uncertaintyOfVector(differenceOfVectors(after, after)).phase; // => null
 * ```
 */
export function uncertaintyOfVector(vector: string | Vector, options: UncertaintyOptions = {}): UncertaintyOfVector {
  return withParameters({ options, vector }, () => {
    const { amplitude, phase } = vectorOf(vector);
    requireUncertaintyOptions(options);
    const { method } = options;
    const uncertain = uncertainOf(amplitude, options);
    const length = uncertaintyBy(uncertain, amplitude.assumed ?? [], method);
    return Object.freeze({
      amplitude: length,
      phase: uncertaintyOfPhase(uncertain, phase, method),
      assumed: length.assumed,
    });
  });
}
