import {
  type AmplitudeType,
  amplitudeIn,
  type ConvertOptions,
  convertAmplitude,
  parsedType,
  readingType,
  writtenValue,
} from "../amplitude/index";
import type { Source } from "../core/index";
import type { Frequency } from "../frequency/index";
import type { Quantity } from "../units/index";
import { checkedOptions } from "./checked-options";
import { type Assume, classOf, type MachineRef } from "./class-of";
import type { SchemeKind } from "./kinds";
import { type Limit, limitsOf } from "./limit";
import { conditionOf } from "./machine-class";
import { applies } from "./reading-for";
import type { Condition, Scheme } from "./scheme";
import { type KindOf, type SchemeRef, schemeOf } from "./scheme-of";

/** A ceiling for settings that the standard prints beside its zones. */
export interface Ceilings {
  readonly alarm: number;
  readonly trip: number;
  readonly source: Source;
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
  readonly verified: boolean;
}

/** What {@link limitsFor} is asked. */
export interface LimitsForOptions<S extends SchemeRef = SchemeRef> {
  readonly scheme: S;
  readonly machine?: MachineRef;
  /** `"lowest limits"`: for facts not given, take the most severe class. */
  readonly assume?: Assume;
  /** The reading type to have the limits in; the standard's own if not given. */
  readonly as?: string;
  /** A frequency, for limits in a type of another quantity. */
  readonly at?: Frequency;
}

function converted(
  as: AmplitudeType,
  value: number,
  { as: asked, at }: LimitsForOptions,
): Pick<Limit, "value" | "as" | "unit" | "detector"> {
  const to = asked ?? as;
  const limit = convertAmplitude(amplitudeIn(as, value), to, { at } as ConvertOptions);
  const { unit, detector } = limit;
  return { value: writtenValue(limit), as: readingType(to), unit, detector };
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
 * ```
 */
export function limitsFor<const S extends SchemeRef>(options: LimitsForOptions<S>): CriterionLimits<KindOf<S>>[] {
  const scheme: Scheme = schemeOf(checkedOptions(options).scheme);
  const { chosen, facts } = classOf(scheme, options.machine ?? {}, options.assume);
  const machineClass = conditionOf(chosen);
  return chosen.criteria
    .filter((one) => applies(one, facts) !== false)
    .map((criterion) => {
      const limits = limitsOf(scheme, criterion, facts.speed as number | undefined).map((limit) => ({
        ...limit,
        ...converted(criterion.as, limit.value, options),
      }));
      const { ceilings } = criterion;
      return {
        quantity: parsedType(criterion.as).quantity,
        as: options.as ?? criterion.as,
        limits: Object.fromEntries(limits.map((one) => [one.name, one])),
        ...(ceilings !== undefined && {
          ceilings: {
            alarm: converted(criterion.as, ceilings.alarm, options).value,
            trip: converted(criterion.as, ceilings.trip, options).value,
            source: ceilings.source,
            verified: ceilings.source.provenance === "published",
          },
        }),
        machineClass,
        verified: limits.every(({ verified }) => verified),
      };
    }) as CriterionLimits<KindOf<S>>[];
}
