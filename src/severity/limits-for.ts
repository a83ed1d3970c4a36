import { conversionAssumes } from "../amplitude/index";
import { inPlace, isVerified, type Provenance, type Source, withParameters, worstProvenance } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Assumption, parsedType, type ReadingType, type ReadingTypeText } from "../reading/index";
import type { Quantity } from "../units/index";
import { applies } from "./applicable-criteria";
import { criterionType } from "./criterion-type";
import type { SchemeKind } from "./kinds";
import { type Limit, limitsOf, limitText } from "./limit";
import { limitsInType, type Told, valuesIn } from "./limits-in-type";
import type { MachineRef } from "./machine-facts";
import { type Assume, type PlacedMachine, placedMachine } from "./placed-machine";
import { requireOptions } from "./require-options";
import type { Condition, Criterion, Scheme } from "./scheme";
import { type KindOf, type SchemeRef, schemeOf } from "./scheme-of";

/** A ceiling for settings that the standard prints beside its zones. */
export interface Ceilings {
  readonly alarm: number;
  readonly trip: number;
  readonly source: Source;
  readonly provenance: Provenance;
  readonly verified: boolean;
}

/** The limits of one quantity for a machine, in the standard's unit or the one asked for. */
export interface CriterionLimits<K extends SchemeKind = SchemeKind> {
  readonly quantity: Quantity;
  /** What the values are written in. */
  readonly as: string;
  /** By name, lowest first. */
  readonly limits: Readonly<Record<string, Limit<K>>>;
  /** Highest alarm and trip settings that the standard prints, in `as`. */
  readonly ceilings?: Ceilings;
  readonly machineClass: Condition;
  /** What was assumed in writing the limits in `as`. */
  readonly assumed: readonly Assumption[];
  /** What was taken for facts not given, in words. */
  readonly assumedFacts: readonly string[];
  /** What was given of the machine and plays no part, in words. */
  readonly setAside: readonly string[];
  /** How the least known of the limits is known. */
  readonly provenance: Provenance;
  readonly verified: boolean;
}

/** What {@link limitsFor} is asked. */
export interface LimitsForOptions<S extends SchemeRef = SchemeRef> {
  readonly scheme: S;
  readonly machine?: MachineRef;
  /** `"usual case"`, if not given; `"lowest limits"`: for facts not given, take the most severe class. */
  readonly assume?: Assume;
  /**
   * The reading type to have the limits in; the standard's own if not given. Without `at`, limits of another quantity stay
   * in the standard's own, as `as` of each says, where the table has limits of the quantity asked for too.
   */
  readonly as?: ReadingTypeText;
  /** A frequency, for limits in a type of another quantity. */
  readonly at?: Frequency;
}

const keys: Readonly<Record<keyof LimitsForOptions, true>> = /* @__PURE__ */ Object.freeze({
  scheme: true,
  machine: true,
  assume: true,
  as: true,
  at: true,
});

/** The ceilings of a criterion in a type, where the standard prints some. */
function ceilingsIn(type: ReadingType, { as, ceilings }: Criterion, told: Told): { ceilings?: Ceilings } {
  if (ceilings === undefined) return {};
  const { source } = ceilings;
  const { provenance } = source;
  const [alarm, trip] = valuesIn(type, [ceilings.alarm, ceilings.trip], as, told) as [number, number];
  return { ceilings: { alarm, trip, source, provenance, verified: isVerified(provenance) } };
}

/** The limits of a machine in its class, one entry a column, in a type or in the standard's own. */
export function placedLimits(
  { scheme, chosen, facts, machineClass, assumedFacts, setAside }: PlacedMachine,
  asked?: string,
  at?: Frequency,
): CriterionLimits[] {
  const criteria = chosen.criteria.filter((one) => applies(one, facts) !== false);
  const quantity = asked === undefined ? undefined : parsedType(asked).quantity;
  // without a frequency, limits of another quantity than the one asked for stay as they are printed, beside those of it
  const some = at === undefined && criteria.some((one) => criterionType(one).quantity === quantity);
  return criteria.map((criterion) => {
    const stays = asked === undefined || (some && criterionType(criterion).quantity !== quantity);
    const as = stays ? criterion.as : asked;
    const type = parsedType(as);
    const told = { hertz: at === undefined ? undefined : hertz(at), crestFactor: undefined };
    const limits = limitsOf(scheme, criterion, facts);
    const texts = limits.map((limit) => limitText(scheme.kind, limit));
    const { all, byName } = limitsInType(limits, texts, type)(told);
    const provenance = worstProvenance(all.map((one) => one.provenance));
    return {
      quantity: criterionType(criterion).quantity,
      as,
      limits: byName,
      ...ceilingsIn(type.type, criterion, told),
      ...{ machineClass, assumedFacts, setAside },
      assumed: conversionAssumes(criterion.as, type.type),
      provenance,
      verified: isVerified(provenance),
    };
  });
}

/**
 * The limits of a table for a machine, one entry a quantity, without a reading: to set an alarm or draw a chart from.
 * Limits for slow machines only are left out where the speed is given and not slow.
 *
 * @param options - scheme, machine, and `as` (with `at` across quantities) to have them in another type
 * @throws {@link VeladisError} as {@link classify}
 * @example
 * ```ts
 * import { limitsFor } from "veladis/severity";
 *
 * const machine = "group 2 rigid";
 * const [velocity] = limitsFor({ scheme: "iso-10816-3-2009", machine });
 * velocity?.limits["B/C"]?.value; // => 2.8
 * velocity?.limits["A/B"]?.verified; // => false
 * const [peak] = limitsFor({ scheme: "iso-10816-3-2009", machine, as: "in/s pk", at: "1490 r/min" });
 * peak?.limits["C/D"]?.value.toFixed(3); // => "0.251"
 * // a limit that was carried says what that assumed
 * peak?.limits["C/D"]?.assumed; // => ["sine"]
 * // without a frequency, a limit of displacement stays in its own unit
 * limitsFor({ scheme: "iso-10816-3-2009", machine, as: "in/s pk" }).map((one) => one.as); // => ["in/s pk", "um rms"]
 * ```
 */
export function limitsFor<const S extends SchemeRef>(options: LimitsForOptions<S>): CriterionLimits<KindOf<S>>[] {
  return withParameters({ options }, () => {
    const { scheme: given } = requireOptions(options, keys);
    const scheme: Scheme = inPlace({ parameter: "options", option: "scheme" }, () => schemeOf(given));
    const machine = placedMachine(scheme, options.machine ?? {}, options.assume);
    return placedLimits(machine, options.as, options.at) as CriterionLimits<KindOf<S>>[];
  });
}
