import { type ConvertedAmplitude, convertAmplitude } from "../amplitude/index";
import { requireGiven, worstProvenance } from "../core/index";
import { type AmplitudeType, amplitudeIn } from "../reading/index";
import {
  type CriterionLimits,
  classifier,
  editionText,
  type LimitsForOptions,
  limitsFor,
  type SchemeRef,
  schemeById,
} from "../severity/index";
import { knownNote } from "./known-note";

/** Which zones a chart shows: those of a scheme for a machine, as `classify` takes them. */
export type ChartSeverity = Pick<LimitsForOptions, "scheme" | "machine" | "assume">;

/** The zones of one scheme for one machine, best first. */
export interface ChartZones {
  readonly names: readonly string[];
  /** Limits by quantity; one less than there are names. */
  readonly criteria: readonly CriterionLimits[];
  readonly notes: readonly string[];
  /** Facts of the machine that were assumed, in words. */
  readonly assumedFacts: readonly string[];
}

/** The limits of one quantity in another type, lowest first; at a frequency where the quantity changes. */
export function boundsIn({ as, limits }: CriterionLimits, to: string, hertz?: number): ConvertedAmplitude[] {
  const options = hertz === undefined ? {} : { at: { hertz } };
  return Object.values(limits).map(({ value }) => convertAmplitude(amplitudeIn(as, value), to, options));
}

function titleOf(scheme: SchemeRef): string {
  return editionText(typeof scheme === "string" ? schemeById(scheme) : scheme);
}

/**
 * The zones of a scheme for a machine, with what a chart that shows them has to say.
 *
 * @throws {@link VeladisError} as {@link limitsFor}
 */
export function zonesFor(severity: ChartSeverity): ChartZones {
  const { scheme, machine = {}, assume } = requireGiven(severity, 'a table such as { scheme: "iso-10816-3-2009" }');
  const criteria = limitsFor(severity);
  const most = criteria.reduce((a, b) => (Object.keys(b.limits).length > Object.keys(a.limits).length ? b : a));
  const options = assume === undefined ? {} : { assume };
  const { zones, assumedFacts, setAside, confirmed, differences } = classifier(
    scheme,
    machine,
    most.as as AmplitudeType,
    options,
  );
  const provenance = worstProvenance(criteria.map((one) => one.provenance));
  return {
    names: zones,
    criteria,
    notes: [
      knownNote(`Zones: ${titleOf(scheme)}`, provenance, confirmed),
      ...differences.map((text) => `${text}.`),
      ...setAside.map((one) => `Set aside: ${one}.`),
    ],
    assumedFacts,
  };
}
