import {
  type Amplitude,
  type Assumption,
  amplitudeIn,
  conversionAssumes,
  convertAmplitude,
  parsedType,
  significant,
} from "../amplitude/index";
import { given, knownKeys, positive, type Source, text, VeladisError } from "../core/index";
import { type CriterionLimits, type Limit, limitsFor, type MachineRef, type SchemeRef } from "../severity/index";

/** Limits to set from, in the type of the baseline. */
export interface SetpointLimits {
  /** `zones`: B/C and C/D, to which the rules of ISO 10816-3 apply; `operation`: alarm and shutdown as printed. */
  readonly kind: "zones" | "operation";
  /** B/C, or alarm. */
  readonly lower: { readonly value: number; readonly text: string; readonly source: Source };
  /** C/D, or shutdown; null where the standard prints none. */
  readonly upper: { readonly value: number; readonly text: string; readonly source: Source } | null;
  readonly ceilings: { readonly alarm: number; readonly trip: number; readonly source: Source } | null;
  /** Whether every limit was read in print. */
  readonly verified: boolean;
  /** What was assumed in writing the limits in the type of the setpoints. */
  readonly assumed: readonly Assumption[];
  /** Quantities that the scheme limits too and that this proposal leaves out. */
  readonly leftOut: readonly string[];
}

/** Limits of the machine's maker or the site, where no scheme shall apply. */
export interface OwnLimits {
  /** Upper limit of unrestricted operation (zone B), e.g. `"4.5 mm/s rms"`. */
  readonly "B/C": string | Amplitude;
  /** Upper limit of zone C. */
  readonly "C/D": string | Amplitude;
  /** Where they come from. */
  readonly source: string;
}

const ownKeys: Readonly<Record<keyof OwnLimits, true>> = /* @__PURE__ */ Object.freeze({
  "B/C": true,
  "C/D": true,
  source: true,
});

/** The criterion in the quantity of the baseline, its detector first; else the first. */
function matching(criteria: readonly CriterionLimits[], type: string): CriterionLimits {
  const { quantity, detector } = parsedType(type);
  const same = criteria.filter((criterion) => criterion.quantity === quantity);
  const found = same.find(({ as }) => as.endsWith(` ${detector}`)) ?? same[0] ?? criteria[0];
  if (found !== undefined) return found;
  throw new VeladisError("missing-fact", {
    expected: "a table with limits for this machine",
    received: "nothing",
  });
}

/** Limits of a scheme for a machine, in the type of the baseline. */
export function limitsOfScheme(
  scheme: SchemeRef,
  machine: MachineRef | undefined,
  type: string,
  hertz: number | undefined,
): SetpointLimits {
  const criteria: CriterionLimits[] = limitsFor({ scheme, ...(machine !== undefined && { machine }) });
  const criterion = matching(criteria, type);
  const at = hertz === undefined ? {} : { at: { hertz } };
  const assumed = conversionAssumes(criterion.as, type);
  const inType = (value: number): number => convertAmplitude(amplitudeIn(criterion.as, value), type, at).value;
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
  const told = ({ name, printed, standard, edition, value, source }: Limit) => ({
    value: inType(value),
    text: `${name} of ${standard}:${edition}, ${significant(printed.value)} ${printed.unit} ${printed.detector}`,
    source,
  });
  const { ceilings } = criterion;
  return {
    kind: operation ? "operation" : "zones",
    lower: told(lower),
    upper: upper === undefined ? null : told(upper),
    ceilings:
      ceilings === undefined
        ? null
        : { alarm: inType(ceilings.alarm), trip: inType(ceilings.trip), source: ceilings.source },
    verified: lower.verified && upper?.verified !== false,
    assumed,
    leftOut: [...new Set(criteria.map(({ quantity }) => quantity))].filter((one) => one !== criterion.quantity),
  };
}

/** Limits of the maker or the site, in the type of the baseline. */
export function limitsOfSite(own: OwnLimits, type: string, hertz: number | undefined): SetpointLimits {
  given(own, 'limits such as { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" }');
  knownKeys(own, ownKeys, "a limit of the site");
  const at = hertz === undefined ? {} : { at: { hertz } };
  const source: Source = {
    title: text(own.source, "the source of the limits, as text"),
    provenance: "memory",
    note: "as stated by the user",
  };
  const converted = (name: "B/C" | "C/D") =>
    convertAmplitude(given(own[name], `a limit ${name} with its unit`), type, at);
  const told = (name: "B/C" | "C/D") => ({
    value: positive(converted(name).value, `a limit ${name} above zero`),
    text: `${name} of ${own.source}`,
    source,
  });
  const limits = { lower: told("B/C"), upper: told("C/D") };
  if (limits.lower.value < limits.upper.value) {
    const assumed = [...converted("B/C").assumed, ...converted("C/D").assumed];
    return { kind: "zones", ...limits, ceilings: null, verified: false, assumed, leftOut: [] };
  }
  throw new VeladisError("out-of-range", {
    expected: "a limit C/D above the limit B/C",
    received: `${limits.upper.value} and ${limits.lower.value} ${type}`,
  });
}
