import { type ConvertedAmplitude, convertAmplitude } from "../amplitude/index";
import { requireGiven, worstProvenance } from "../core/index";
import { type AmplitudeType, amplitudeIn } from "../reading/index";
import {
  type CriterionLimits,
  classifier,
  editionText,
  type LimitsForOptions,
  limitsFor,
  type Scheme,
  schemeById,
} from "../severity/index";
import { knownNote } from "./known-note";

/** Which zones a chart shows: those of a scheme for a machine, as `classify` takes them. */
export type ChartSeverity = Pick<LimitsForOptions, "scheme" | "machine" | "assume">;

/** The zones of one scheme for one machine, best first. */
export interface ChartZones {
  readonly names: readonly string[];
  /** Frequencies in hertz that the scheme judges, at whatever speed; nothing where it names none. */
  readonly band: readonly [low: number, high: number] | undefined;
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

/** The band of a scheme, with that of slow machines where it has one of its own. */
function bandOf({ band, slowBand }: Pick<Scheme, "band" | "slowBand">): ChartZones["band"] {
  if (band === null) return undefined;
  const low = slowBand?.band ?? band;
  return [Math.min(band[0], low[0]), Math.max(band[1], low[1])];
}

/**
 * The zones of a scheme for a machine, with what a chart that shows them has to say.
 *
 * @throws {@link VeladisError} as {@link limitsFor}
 */
export function zonesFor(severity: ChartSeverity): ChartZones {
  const {
    scheme,
    machine = {},
    assume,
  } = requireGiven(severity, 'a table such as { scheme: "iso-10816-3-2009" }', { parameter: "severity" });
  const criteria = limitsFor(severity);
  const table = typeof scheme === "string" ? schemeById(scheme) : scheme;
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
    band: bandOf(table),
    criteria,
    notes: [
      knownNote(`Zones: ${editionText(table)}`, provenance, confirmed),
      ...differences.map((text) => `${text}.`),
      ...setAside.map((one) => `Set aside: ${one}.`),
    ],
    assumedFacts,
  };
}
