import { convertAmplitude } from "../amplitude/index";
import {
  differencesOf,
  frozen,
  inPlace,
  type Provenance,
  provenances,
  raised,
  type Source,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import type { Detector } from "../detectors/index";
import {
  type Amplitude,
  type Assumption,
  amplitudeIn,
  exactAmplitude,
  madeOf,
  type Step,
  union,
  writtenIn,
} from "../reading/index";
import type { UnitSymbol } from "../units/index";
import type { CriterionPlan } from "./criterion-plan";
import { judgedBy } from "./judge-criterion";
import { judgementPlan } from "./judgement-plan";
import { type Limit, limitText } from "./limit";
import type { MachineRef } from "./machine-facts";
import { type Assume, placedMachine } from "./placed-machine";
import { readingCautions } from "./reading-cautions";
import { clippedBecause, requireInRange } from "./require-in-range";
import { requireOptions } from "./require-options";
import { requirePlace } from "./require-place";
import { type SchemeRef, schemeOf } from "./scheme-of";

/** The share of zone B's upper limit that a change may amount to. */
const CHANGE_SHARE = 0.25;

/** Where the criterion comes from. */
const CRITERION: Source = /* @__PURE__ */ Object.freeze({
  title: "ISO 10816-1, ISO 10816-3 and ISO 20816-1:2016, Criterion II",
  provenance: "memory",
  note: "not checked against a printed copy",
} as const);

const CRITERION_TEXT = "a quarter of zone B's upper limit, ISO 10816-1 Criterion II, from memory";

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
  /** How the criterion itself is known. */
  readonly provenance: Provenance;
  /** False: the criterion is known from memory only. */
  readonly verified: boolean;
  /** All that was assumed of both readings, and in writing the limit in the reader's unit. */
  readonly assumed: readonly Assumption[];
  readonly assumedFacts: readonly string[];
  /** The steps that led to `ratio`, which has the sign of `change` there; see `explain` of `veladis`. */
  readonly history: readonly Step[];
  readonly cautions: readonly string[];
}

/** Which table the change is held against. */
export interface ChangeOptions<S extends SchemeRef = SchemeRef> {
  readonly scheme: S;
  readonly machine?: MachineRef;
  readonly assume?: Assume;
}

const keys: Readonly<Record<keyof ChangeOptions, true>> = /* @__PURE__ */ Object.freeze({
  scheme: true,
  machine: true,
  assume: true,
});

/** The limit as the standard prints it, as a reading: for the frequency and by the crest factor of the one it is held against. */
function limitReading(limit: Limit, { hertz, crestFactor }: Amplitude): Amplitude {
  const { value, unit, detector } = limit.printed;
  const type = `${unit} ${detector}`;
  const history = [Object.freeze({ does: "given", value, type, note: limitText("zones", limit) } as const)];
  return { ...amplitudeIn(type, value, hertz), ...(crestFactor !== undefined && { crestFactor }), history };
}

/** The change and what is allowed, each with its history, put together: the one over the other. */
function ratioHistory(change: readonly Step[], allowed: readonly Step[]): readonly Step[] {
  const [last, over] = [change.at(-1) as Step, allowed.at(-1) as Step];
  const shifted = allowed.map((step) => ({ ...step, ...(step.of && { of: step.of.map((at) => at + change.length) }) }));
  const ratio: Step = {
    does: "scale",
    of: [change.length - 1],
    value: last.value / over.value,
    type: "",
    over: over.value,
    note: "over what a change may amount to",
  };
  return frozen([...change, ...shifted, ratio]);
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
export function changeFromBaseline(
  now: string | Amplitude,
  before: string | Amplitude,
  options: ChangeOptions,
): Change {
  return withParameters({ now, before, options }, () => {
    const { scheme: given } = requireOptions(options, keys);
    const scheme = inPlace({ parameter: "options", option: "scheme" }, () => schemeOf(given));
    if (scheme.kind !== "zones") {
      throw new VeladisError("wrong-type", {
        expected: "a scheme of kind zones, since the criterion is a quarter of zone B's upper limit",
        received: `${shown(scheme.id)}, of kind ${scheme.kind}`,
      });
    }
    const machine = inPlace({ parameter: "options" }, () =>
      placedMachine(scheme, options.machine ?? {}, options.assume),
    );
    const [reading, baseline] = Object.entries({ now, before }).map(([parameter, one]) =>
      inPlace({ parameter }, () => exactAmplitude(one)),
    ) as [Amplitude, Amplitude];
    requireInRange([reading, baseline]);
    if (reading.level !== undefined) {
      throw new VeladisError("out-of-range", {
        expected: "a reading in a linear unit, since a difference of levels is a ratio",
        received: "a level in dB",
      });
    }
    requirePlace(machine, [reading, baseline]);
    const { criteria } = judgementPlan(machine, [reading], undefined);
    const plan = criteria.find(({ type }) => type.quantity === reading.quantity) ?? (criteria[0] as CriterionPlan);
    const limit = judgedBy(plan, [reading], undefined).limits["B/C"] as Limit<"zones"> | undefined;
    if (limit === undefined) {
      throw new VeladisError("wrong-type", {
        expected: "a scheme with a limit B/C, since the criterion is a quarter of zone B's upper limit",
        received: shown(scheme.id),
        option: "id",
      });
    }
    const as = writtenIn(reading);
    const was = convertAmplitude(baseline, as);
    const isClippedAbove = clippedBecause([reading, baseline]) !== undefined;
    const change = reading.value - was.value;
    const allowed = CHANGE_SHARE * limit.value;
    const changed = madeOf([reading, was], { does: "difference", value: change, type: as });
    const printed = convertAmplitude(limitReading(limit, reading), as);
    const share = { does: "scale", value: allowed, type: as, by: CHANGE_SHARE, note: CRITERION_TEXT } as const;
    const permitted = madeOf([printed], share);
    return Object.freeze({
      // a change that may be larger than it says is taken for a significant one
      significant: isClippedAbove || Math.abs(change) > raised(allowed),
      direction: change > 0 ? "rise" : change < 0 ? "fall" : "none",
      change,
      allowed,
      ratio: Math.abs(change) / allowed,
      unit: reading.unit,
      detector: reading.detector,
      limit,
      source: CRITERION,
      provenance: CRITERION.provenance,
      verified: false,
      assumed: union(changed.assumed, printed.assumed),
      assumedFacts: machine.assumedFacts,
      history: ratioHistory(changed.history as readonly Step[], permitted.history as readonly Step[]),
      cautions: [
        ...(isClippedAbove
          ? ["one of the two is above the range of its loop: the change may be another, and is taken for significant"]
          : []),
        ...differencesOf([limit.source]),
        ...readingCautions([reading, baseline]),
        "the criterion is from memory: check it against the standard",
        ...(limit.verified
          ? []
          : [`the limit B/C is ${provenances[limit.provenance].text}: check it against the standard`]),
        "find the cause of a significant change; a fall can be a failure too",
      ],
    } satisfies Change);
  });
}
