import { inPlace, withParameters } from "../core/index";
import type { Amplitude } from "../reading/index";
import { withBackground } from "./background";
import type { Judgement } from "./judgement";
import { judgementIn } from "./judgement-in";
import type { MachineRef } from "./machine-facts";
import { type Assume, placedMachine } from "./placed-machine";
import { type ReadingRef, readingsOf } from "./readings";
import { requireCriterion } from "./require-criterion";
import { requireOptions } from "./require-options";
import type { Scheme } from "./scheme";
import { type KindOf, type SchemeRef, schemeOf } from "./scheme-of";

/** Which table a reading is judged by, and for which machine. */
export interface ClassifyOptions<S extends SchemeRef = SchemeRef> {
  /** The id of a built-in scheme, or a scheme. */
  readonly scheme: S;
  /** The machine, as data or in words; may be left out where the table asks nothing. */
  readonly machine?: MachineRef;
  /**
   * `"usual case"`, if not given: what tells rows apart is asked for. `"lowest limits"`: the most severe class is taken for
   * it. `"nothing"`: condition and place are asked for too. What is taken stands in `assumedFacts`.
   */
  readonly assume?: Assume;
  /** Peak over RMS of the waveform, in place of the sine's 1.414, within one quantity. */
  readonly crestFactor?: number;
  /** The reading at the same point with the machine stopped: whether the broadband reading may be judged. */
  readonly background?: string | Amplitude;
}

const keys: Readonly<Record<keyof ClassifyOptions, true>> = /* @__PURE__ */ Object.freeze({
  scheme: true,
  machine: true,
  assume: true,
  crestFactor: true,
  background: true,
});

/**
 * The zone of a reading by a table of limits, with the limits, the margin, the source and how far it can be trusted.
 *
 * The reading is converted to the quantity, detector and unit of the table. Across quantities that takes its
 * frequency. Where the table limits several quantities, each that the reading can be carried to is judged and the
 * worst governs (`quantity`, `criteria`); the others are listed in `unjudged`. A value at a limit belongs to the
 * better zone, with a relative tolerance of 2^-23 for float noise, one step of a 32-bit float.
 *
 * What the readings assumed on their way stays with the answer (`assumed`, `history`), and a crest factor that one
 * brings along holds for the limits too. The answer is frozen and may share parts with others of the same machine.
 *
 * @param reading - e.g. `"4.1 mm/s rms"`, what {@link parseAmplitude} returned, or an array of readings of one
 *   measurement, one a quantity
 * @param options - the scheme (an id or a scheme object), the machine (data or words), a crest factor
 * @returns the judgement of the governing criterion; limits in the reader's unit, `printed` in the standard's
 * @throws {@link VeladisError} `missing-fact` with what the table needs, `out-of-range` for a machine outside the
 *   table and for two readings of one quantity and detector, `unknown-option` for a scheme or class there is none of,
 *   `missing-frequency`, and all of {@link parseAmplitude}
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 * import { explain } from "veladis/explain";
 * import { classify } from "veladis/severity";
 *
 * const machine = { type: "motor", shaftHeight: "355 mm", support: "rigid" } as const;
 * const { zone, limit, margin, provenance } = classify("4.1 mm/s rms", { scheme: "iso-10816-3-2009", machine });
 * zone; // => "B"
 * limit.name; // => "B/C"
 * limit.value; // => 4.5
 * margin.decibels.toFixed(1); // => "0.8"
 * provenance; // => "reported"
 * classify(convertAmplitude("0.2 in/s pk", "mm/s rms"), { scheme: "iso-10816-3-2009", machine }).assumed; // => ["sine"]
 * explain(classify("4.1 mm/s rms", { scheme: "iso-10816-3-2009", machine })).text.split("\n")[1];
 * // => "4.5 mm/s rms / 4.1 mm/s rms = 1.098  (limit B/C 4.5 mm/s rms, ISO 10816-3 (2009), read on a page whose making is unknown)"
 * classify("80 um pp", { scheme: "iso-10816-3-2009", machine: "group 1" }); // throws missing-fact
 * ```
 */
export function classify<const S extends SchemeRef>(
  reading: ReadingRef,
  options: ClassifyOptions<S>,
): Judgement<KindOf<S>> {
  return withParameters({ reading, options }, () => {
    const { crestFactor, machine: described, assume, background } = requireOptions(options, keys);
    const readings = inPlace({ parameter: "reading" }, () => readingsOf(reading));
    const scheme: Scheme = inPlace({ parameter: "options", option: "scheme" }, () => schemeOf(options.scheme));
    // before anything is asked of the machine
    requireCriterion(scheme);
    const machine = placedMachine(scheme, described ?? {}, assume);
    const judgement = judgementIn(machine, readings, crestFactor) as Judgement<KindOf<S>>;
    return background === undefined ? judgement : withBackground(judgement, readings, background);
  });
}
