import { type ConvertedAmplitude, convertAmplitude, notedAmplitude } from "../amplitude/index";
import { type Source, VeladisError } from "../core/index";
import { type Assumption, amplitudeIn, parsedType, significant, union } from "../reading/index";
import {
  type CriterionLimits,
  conditionText,
  type Limit,
  limitsFor,
  type MachineRef,
  type SchemeRef,
  schemeById,
} from "../severity/index";
import type { ProposalScheme } from "./proposal";

/** A limit to set from, in the type of the setpoints. */
export interface SetpointLimit {
  readonly amplitude: ConvertedAmplitude;
  readonly text: string;
  readonly source: Source;
}

/** Limits to set from, in the type of the setpoints. */
export interface SetpointLimits {
  /** `zones`: B/C and C/D, to which the rules of ISO 10816-3 apply; `operation`: alarm and shutdown as printed. */
  readonly kind: "zones" | "operation";
  /** B/C, or alarm. */
  readonly lower: SetpointLimit;
  /** C/D, or shutdown; null where the standard prints none. */
  readonly upper: SetpointLimit | null;
  /** The highest settings that the standard prints. */
  readonly ceilings: {
    readonly alarm: ConvertedAmplitude;
    readonly trip: ConvertedAmplitude;
    readonly source: Source;
  } | null;
  /** Whether every limit was read in print. */
  readonly verified: boolean;
  /** What was assumed in writing the limits in the type of the setpoints. */
  readonly assumed: readonly Assumption[];
  /** Quantities that the scheme limits too and that this proposal leaves out. */
  readonly leftOut: readonly string[];
  /** The schemes that were looked at, the one that these limits are of in front; none for limits of the site. */
  readonly schemes: readonly ProposalScheme[];
  /** What was taken for facts of the machine that were not given, in words. */
  readonly assumedFacts: readonly string[];
  /** What was given of the machine and plays no part, in words. */
  readonly setAside: readonly string[];
}

/** Which limits are asked for. */
export interface LimitsQuestion {
  readonly scheme: SchemeRef;
  readonly machine: MachineRef | undefined;
  /** The reading type of the setpoints. */
  readonly type: string;
  readonly hertz: number | undefined;
}

/** The criterion in the quantity of a type, its detector first; else the first. */
function criterionFor(criteria: readonly CriterionLimits[], type: string): CriterionLimits {
  const { quantity, detector } = parsedType(type);
  const same = criteria.filter((criterion) => criterion.quantity === quantity);
  const found = same.find(({ as }) => parsedType(as).detector === detector) ?? same[0] ?? criteria[0];
  if (found !== undefined) return found;
  throw new VeladisError("missing-fact", {
    expected: "a table with limits for this machine",
    received: "nothing",
  });
}

/**
 * Refuses a scheme whose ranges are for orientation: a setpoint by them would be a guess.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
function requireCriterion(scheme: SchemeRef): void {
  const { informative, standard, edition } = typeof scheme === "string" ? schemeById(scheme) : scheme;
  if (!informative) return;
  throw new VeladisError("out-of-range", {
    expected: "a scheme whose limits are a criterion, or limits of the maker or the site",
    received: `${standard} (${edition}), whose ranges are informative: for orientation, never a setpoint`,
  });
}

/** How a source is known, in words. */
function knownBy({ provenance }: Source): string {
  return provenance === "published" ? "read in print" : "from memory";
}

/** Limits of a scheme for a machine, in the type of the setpoints. */
export function limitsOfScheme({ scheme, machine, type, hertz }: LimitsQuestion): SetpointLimits {
  const told = { scheme, assume: "lowest limits", ...(machine !== undefined && { machine }) } as const;
  const criteria: CriterionLimits[] = limitsFor(told);
  requireCriterion(scheme);
  const criterion = criterionFor(criteria, type);
  const inType = (value: number, note: string): ConvertedAmplitude =>
    convertAmplitude(
      notedAmplitude(amplitudeIn(criterion.as, value), note),
      type,
      hertz === undefined ? {} : { at: { hertz } },
    );
  const limits: Readonly<Record<string, Limit>> = criterion.limits;
  const operation = limits.alarm !== undefined;
  const lower = limits[operation ? "alarm" : "B/C"];
  const upper = limits[operation ? "shutdown" : "C/D"];
  if (lower === undefined || (upper === undefined && !operation)) {
    throw new VeladisError("wrong-type", {
      expected: "a table of zones (B/C and C/D) or of a fan's alarm and shutdown, since others set no alarms",
      received: `limits ${Object.keys(limits).join(", ")}`,
    });
  }
  const limitIn = ({ name, printed, standard, edition, value, source }: Limit): SetpointLimit => {
    const words = `${name} of ${standard}:${edition}`;
    return {
      amplitude: inType(value, `${words}, ${knownBy(source)}`),
      text: `${words}, ${significant(printed.value)} ${printed.unit} ${printed.detector}`,
      source,
    };
  };
  const ceilings = criterion.ceilings && {
    alarm: inType(criterion.ceilings.alarm, `highest alarm setting, ${knownBy(criterion.ceilings.source)}`),
    trip: inType(criterion.ceilings.trip, `highest trip setting, ${knownBy(criterion.ceilings.source)}`),
    source: criterion.ceilings.source,
  };
  const [low, high] = [limitIn(lower), upper === undefined ? null : limitIn(upper)];
  return {
    kind: operation ? "operation" : "zones",
    lower: low,
    upper: high,
    ceilings: ceilings ?? null,
    verified: lower.verified && upper?.verified !== false,
    assumed: union(low.amplitude.assumed, high?.amplitude.assumed),
    ...{ assumedFacts: criterion.assumedFacts, setAside: criterion.setAside },
    schemes: [
      {
        scheme: typeof scheme === "string" ? scheme : scheme.id,
        ...{ standard: lower.standard, edition: lower.edition, machineClass: conditionText(criterion.machineClass) },
        ...{ lower: low.amplitude.value, upper: high?.amplitude.value ?? null },
      },
    ],
    leftOut: [...new Set(criteria.map(({ quantity }) => quantity))].filter((one) => one !== criterion.quantity),
  };
}
