import { withParameters } from "../core/index";
import type { Amplitude } from "../reading/index";
import { admittedPlaces } from "./admitted-places";
import { withBackground } from "./background";
import { bothPlaces } from "./both-places";
import { unitedParts } from "./combined-judgements";
import type { MachineRef } from "./machine-facts";
import { isOfDisplacement } from "./of-displacement";
import type { Assume } from "./placed-machine";
import { reachedFirst } from "./reached-first";
import { type ReadingRef, readingsOf } from "./readings";
import { requireOptions } from "./require-options";
import type { SchemeRef } from "./scheme-of";
import { type PlaceVerdict, verdictAtPlace } from "./verdict-at-place";
import type { Verdict } from "./verdict-of";

/** What {@link judge} can be told besides the reading and the machine. */
export interface JudgeOptions {
  /** The schemes to choose from; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
  /**
   * `"lowest limits"`, if not given: facts not given are taken on the safe side; `"usual case"`: they are asked for, but for
   * condition and place; `"nothing"`: those too.
   */
  readonly assume?: Assume;
  /** Peak over RMS of the waveform, in place of the sine's 1.414, within one quantity. */
  readonly crestFactor?: number;
  /** The reading at the same point with the machine stopped: whether the broadband reading may be judged. */
  readonly background?: string | Amplitude;
}

const keys: Readonly<Record<keyof JudgeOptions, true>> = /* @__PURE__ */ Object.freeze({
  schemes: true,
  assume: true,
  crestFactor: true,
  background: true,
});

/** The verdict of one place, with the worst judgement in front. */
function onePlace({ judgements, possible, headline, word, unread, deciding, refusal }: PlaceVerdict): Verdict {
  const [first] = judgements;
  if (first === undefined) throw refusal;
  const worst = possible.at(-1) as Verdict["zone"];
  const parts = judgements.length === 1 && unread.length === 0 ? {} : unitedParts(judgements, unread);
  const reached = reachedFirst(judgements);
  return Object.freeze({ ...first, ...parts, ...reached, headline, word, possible, worst, judgements, deciding });
}

/**
 * The verdict on a reading by every published scheme that the known facts of its machine admit.
 *
 * The verdict is the set of zones that are still possible: `possible`, best first, with `zone` the worst that was judged
 * and `worst` the worst that is possible. A fact that tells rows of a scheme apart and is not given (support, category,
 * group ...) is taken for its lowest limits; one that chooses the scheme (power, speed at the edge of a scope, frame)
 * leaves every scheme that it admits, and the worst governs. `limit` and `margin` are of the limit above that zone which
 * is reached first, by whichever scheme. A displacement whose place nobody said is judged on the
 * housing and on the shaft, and so is a velocity or an acceleration whose history begins with one. All of that is named in `assumedFacts`; what was given and plays no part in `setAside`.
 *
 * @param reading - e.g. `"4.1 mm/s rms"`, an amplitude, or an array of readings of one measurement, one a quantity
 * @param machine - the machine, as data or in words, with its kind at least
 * @param options - schemes, what may be assumed, a crest factor, the reading at rest
 * @throws {@link VeladisError} `missing-fact` for the kind of machine, for facts between schemes of different kinds and,
 *   with `assume: "nothing"`, for every fact that decides; `out-of-range` for a machine that no scheme is for and for
 *   facts that contradict each other; `sensor-fault` for a reading below the range of its loop; and all of {@link classify}
 * @example
 * ```ts
 * import { judge } from "veladis/severity";
 *
 * judge("4.1 mm/s rms", "pump 90 kW 2980 r/min category II").headline; // => "zone B"
 * const { headline, zone, worst, judgements } = judge("2.0 mm/s rms", "motor 1485 r/min rigid");
 * headline; // => "zone B to C"
 * [zone, worst]; // => ["C", "C"]
 * judgements.map((one) => `${one.scheme} ${one.zone}`);
 * // => ["iso-10816-1-1995-annexB C", "iso-20816-3-2022 B"]
 * judge("6 mil pp", "motor 400 kW 3570 r/min rigid housing").zone; // => "D"
 * judge("2.0 mm/s rms", "motor 1485 r/min rigid", { assume: "nothing" }); // throws missing-fact
 * judge("2.0 mm/s rms", "motor 1485 r/min rigid", { background: "0.9 mm/s rms" }).background?.valid; // => false
 * ```
 */
export function judge(reading: ReadingRef, machine: MachineRef, options: JudgeOptions = {}): Verdict {
  return withParameters({ reading, options, machine }, () => {
    const { background } = requireOptions(options, keys);
    const readings = readingsOf(reading);
    const verdict = verdictOn(readings, machine, options);
    return background === undefined ? verdict : withBackground(verdict, readings, background);
  });
}

/** The verdict, whatever is there with the machine stopped. */
function verdictOn(readings: readonly Amplitude[], machine: MachineRef, options: JudgeOptions): Verdict {
  const { schemes, assume = "lowest limits", crestFactor } = options;
  const [first, other] = admittedPlaces(machine, readings.every(isOfDisplacement), assume, schemes);
  const verdict = verdictAtPlace(first, readings, crestFactor);
  if (other === undefined) return onePlace(verdict);
  const beside = verdictAtPlace(other, readings, crestFactor);
  return bothPlaces(verdict, beside, [...new Set([...verdict.deciding, ...beside.deciding])]);
}
