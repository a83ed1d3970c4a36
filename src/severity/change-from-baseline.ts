import { type Amplitude, convertAmplitude, parsedType } from "../amplitude/index";
import { type Source, shown, VeladisError } from "../core/index";
import type { Detector } from "../detectors/index";
import type { UnitSymbol } from "../units/index";
import { checkPlace } from "./check-place";
import { checkedOptions } from "./checked-options";
import { type Assume, classOf, type MachineRef } from "./class-of";
import { judgedBy, readerType } from "./judge-criterion";
import type { Limit } from "./limit";
import { appliedCriteria, type ReadingRef, readingsOf } from "./reading-for";
import { type SchemeRef, schemeOf } from "./scheme-of";
import { raised } from "./tolerance";

/** The share of zone B's upper limit that a change may amount to. */
const CHANGE_SHARE = 0.25;

/** Where the criterion comes from. */
const CRITERION: Source = /* @__PURE__ */ Object.freeze({
  title: "ISO 10816-1, ISO 10816-3 and ISO 20816-1:2016, Criterion II",
  provenance: "memory",
  note: "not checked against a printed copy",
} as const);

/** What a change since the baseline means. */
export interface Change {
  /** True when the change is more than a quarter of zone B's upper limit, up or down. */
  readonly significant: boolean;
  readonly direction: "rise" | "fall" | "none";
  /** Now less before, in `unit` and `detector`; negative for a fall. */
  readonly change: number;
  /** The change that is still no cause to act: a quarter of the limit B/C. */
  readonly allowed: number;
  /** The size of the change over what is allowed. */
  readonly ratio: number;
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  /** The limit B/C that the criterion is a share of, in the reader's unit. */
  readonly limit: Limit<"zones">;
  /** Where the criterion comes from; where the limit does is in `limit.source`. */
  readonly source: Source;
  /** False: the criterion itself is known from memory only. */
  readonly verified: boolean;
  readonly assumedFacts: readonly string[];
  readonly cautions: readonly string[];
}

/** Which table the change is held against. */
export interface ChangeOptions<S extends SchemeRef = SchemeRef> {
  readonly scheme: S;
  readonly machine?: MachineRef;
  readonly assume?: Assume;
}

/**
 * Whether a reading has changed significantly since its baseline: by more than a quarter of zone B's upper limit, up
 * or down, whatever the zone. A change calls for finding its cause, not by itself for a stop.
 *
 * Magnitudes only: a change of phase at the same level is not seen. Compare readings of the same point, direction,
 * speed and load.
 *
 * @param now - the reading; its unit and detector are those of the answer
 * @param before - the baseline of the same point, in any unit
 * @param options - a scheme of kind `zones`, and the machine
 * @throws {@link VeladisError} `wrong-type` for a scheme without zones, `out-of-range` for a level in dB, and all
 *   of {@link classify}
 * @example
 * ```ts
 * import { changeFromBaseline } from "veladis/severity";
 *
 * const table = { scheme: "iso-10816-3-2009", machine: "motor 355 mm rigid" } as const;
 * const { significant, direction, allowed } = changeFromBaseline("3.1 mm/s rms", "1.8 mm/s rms", table);
 * significant; // => true
 * direction; // => "rise"
 * allowed; // => 1.125
 * changeFromBaseline("1.0 mm/s rms", "2.4 mm/s rms", table).direction; // => "fall"
 * ```
 */
export function changeFromBaseline(now: ReadingRef, before: ReadingRef, options: ChangeOptions): Change {
  const scheme = schemeOf(checkedOptions(options).scheme);
  if (scheme.kind !== "zones") {
    throw new VeladisError("wrong-type", {
      expected: "a scheme of kind zones, since the criterion is a quarter of zone B's upper limit",
      received: `${shown(scheme.id)}, of kind ${scheme.kind}`,
    });
  }
  const { chosen, facts, assumed } = classOf(scheme, options.machine ?? {}, options.assume);
  const [reading] = readingsOf(now) as [Amplitude];
  const [baseline] = readingsOf(before) as [Amplitude];
  if (reading.level !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "a reading in a linear unit, since a difference of levels is a ratio",
      received: "a level in dB",
    });
  }
  checkPlace(scheme, facts, [reading, baseline]);
  const { applied } = appliedCriteria(chosen, [reading], facts, undefined);
  const own = applied.find(({ criterion }) => parsedType(criterion.as).quantity === reading.quantity);
  const { limits } = judgedBy(scheme, own ?? (applied[0] as (typeof applied)[0]), facts, undefined);
  const limit = limits["B/C"] as Limit<"zones"> | undefined;
  if (limit === undefined) {
    throw new VeladisError("wrong-type", {
      expected: "a scheme with a limit B/C, since the criterion is a quarter of zone B's upper limit",
      received: shown(scheme.id),
    });
  }
  const was = convertAmplitude(baseline, readerType(reading)).value;
  const change = reading.value - was;
  const allowed = CHANGE_SHARE * limit.value;
  return Object.freeze({
    significant: Math.abs(change) > raised(allowed),
    direction: change > 0 ? "rise" : change < 0 ? "fall" : "none",
    change,
    allowed,
    ratio: Math.abs(change) / allowed,
    unit: reading.unit,
    detector: reading.detector,
    limit,
    source: CRITERION,
    verified: false,
    assumedFacts: assumed,
    cautions: [
      "the criterion is from memory: check it against the standard",
      ...(limit.verified ? [] : ["the limit B/C is from memory: check it against the standard"]),
      "find the cause of a significant change; a fall can be a failure too",
    ],
  } satisfies Change);
}
