import {
  differencesOf,
  inPlace,
  type Provenance,
  raised,
  requireGiven,
  requireKnownOptions,
  requireNonNegative,
  worstProvenance,
} from "../core/index";
import { units } from "../units/index";
import { bandOf } from "./criterion-plan";
import { exactClass, exactCriterion, withoutFacts } from "./exact-row";
import { type Zone, zonesBetween } from "./kinds";
import { allowedForHeight, limitAt, namesOf, sourceOfSum } from "./limit";
import type { KnownFacts } from "./machine";
import { plainFacts } from "./plain-facts";
import { type PlainType, plainType } from "./plain-type";
import { headlineOf } from "./possible-zones";
import type { PeakMeaning, Scheme } from "./scheme";
import { schemeCautions } from "./scheme-cautions";
import { unsealed } from "./seal";
import { unusedFacts } from "./unused-facts";
import { type UsualCase, usualTexts } from "./usual-case";

/** By which scheme {@link exactZone} judges, and for which machine. */
export interface ExactZoneOptions {
  /** What {@link sealedScheme} made of a scheme. */
  readonly scheme: string;
  /** Facts in kW, r/min, mm, Hz and m as numbers, a range as `[low, high]`; labels as texts. May be left out where the table asks nothing. */
  readonly machine?: KnownFacts;
}

/** The zone of a reading of which nothing had to be assumed. */
export interface ExactZone {
  /** The verdict: `zone B`, or `zone B or worse` where the table limits other quantities too. */
  readonly headline: string;
  /** The zone that was judged. */
  readonly zone: Zone;
  /** All zones that are still possible, best first. */
  readonly possible: readonly Zone[];
  /** The zones that the limits part, best first. */
  readonly zones: readonly Zone[];
  /** All limits by name, lowest first, in the unit and detector of the reading. */
  readonly limits: Readonly<Record<string, number>>;
  /** What the table limits besides, and no reading was given for. */
  readonly unjudged: readonly string[];
  /** The measuring band that the table asks for, in hertz; null where it is not known. */
  readonly band: readonly [low: number, high: number] | null;
  /** Which peak the limits mean, where they are in peak. */
  readonly peakMeans?: PeakMeaning;
  /** How the least known of the limits is known. */
  readonly provenance: Provenance;
  /** The id of the scheme. */
  readonly scheme: string;
  readonly standard: string;
  readonly edition: string;
  /** What stood in for facts not given, in words. */
  readonly assumedFacts: readonly string[];
  /** What was given and plays no part, in words. */
  readonly setAside: readonly string[];
  readonly cautions: readonly string[];
}

const keys = /* @__PURE__ */ Object.freeze({ scheme: true, machine: true });

/** What to know of running speed and peaks, as short as it can be said. */
function cautionsOf(band: ExactZone["band"], peakMeans: PeakMeaning | undefined, { speed }: KnownFacts): string[] {
  const told: string[] = [];
  const isInside = (one: number): boolean => band === null || (one / 60 >= band[0] && one / 60 <= band[1]);
  if (![speed ?? []].flat().every((one) => isInside(one as number))) {
    told.push("running speed outside the measuring band");
  }
  if (peakMeans === "open") told.push("the peak is open: judge the larger");
  if (peakMeans === "rms") told.push("the table means 1.414 x RMS");
  return told;
}

/** What is taken for facts not given: that machine and reading are such as the table is for. */
function usualOf({ kind, place }: Scheme, known: KnownFacts): UsualCase {
  return {
    ...(known.condition === undefined && { condition: kind === "acceptance" ? "new" : "in service" }),
    ...(known.place === undefined && { place }),
  };
}

/**
 * The zone of a reading by a table of your own, where nothing has to be assumed of the reading: it is in a quantity and by a
 * detector that the table limits, and the facts of the machine decide for one row. All else it refuses and leaves to
 * {@link classify}, of which it is the small part that a browser or a device can carry: what {@link classify} finds possible is possible here too.
 *
 * Each fact of the machine is a number in the unit that the table of facts names (kW, r/min, mm, Hz, m) or a label.
 *
 * @param value - the reading: zero or more
 * @param from - what it is written in, in plain spelling: `"in/s pk"`
 * @param options - the sealed scheme, and the facts of the machine
 * @throws {@link VeladisError} `negative`, `not-a-number`, `not-finite`, `syntax`, `wrong-type`, `wrong-detector` for a reading
 *   that would have to be carried, `missing-fact`, `out-of-range` for a machine outside the table and a scheme that was
 *   changed since it was sealed, `unknown-option`
 * @example
 * ```ts
 * import { exactZone } from "veladis/own";
 * import { sealedScheme } from "veladis/severity";
 *
 * const source = { title: "Hollowmere site rule 7", where: "table 1", provenance: "printed", page: "p. 2" } as const;
 * const sealed = sealedScheme({
 *   id: "hollowmere-circulation-drives",
 *   kind: "zones",
 *   standard: "Hollowmere site rule 7, invented",
 *   classes: [
 *     {
 *       when: { power: { above: 15, to: 500 } },
 *       criteria: [{ as: "mm/s rms", limits: { "A/B": 1.8, "B/C": 3.5, "C/D": 5.6 }, source }],
 *     },
 *   ],
 * });
 * exactZone(3.4, "mm/s rms", { scheme: sealed, machine: { power: 200 } }).headline; // => "zone B"
 * exactZone(0.19, "in/s rms", { scheme: sealed, machine: { power: 200 } }).zone; // => "C"
 * exactZone(0.19, "in/s pk", { scheme: sealed, machine: { power: 200 } }); // throws wrong-detector
 * exactZone(3.4, "mm/s rms", { scheme: sealed }); // throws missing-fact
 * ```
 */
export function exactZone(value: number, from: PlainType, options: ExactZoneOptions): ExactZone {
  const form = "{ scheme, machine }";
  const { scheme: sealed, machine = {} } = requireKnownOptions(options, keys, { what: "an option of exactZone", form });
  const reading = requireNonNegative(value, "an amplitude of zero or more", { parameter: "value" });
  const { unit, detector, quantity } = inPlace({ parameter: "from" }, () => plainType(from));
  const scheme = inPlace({ parameter: "options", option: "scheme" }, () => unsealed(requireGiven(sealed, form)));
  const known = plainFacts(machine);
  const [{ criteria, note }, assumed] = exactClass(scheme, known);
  const [criterion, unjudged] = exactCriterion(scheme, criteria, from, known);
  // a displacement is one of the housing or of the shaft, and looks the same
  if (known.place === undefined && (scheme.place === "shaft" || quantity === "displacement")) {
    throw withoutFacts(scheme, ["place"]);
  }
  const [table, own] = [units[plainType(criterion.as).unit], units[unit]];
  const ratio = (table.num * own.den) / (table.den * own.num);
  const more = allowedForHeight(criterion, known);
  const limits = namesOf(scheme).flatMap((name) => {
    const limit = limitAt(criterion.limits[name] ?? null, known.speed);
    const own = criterion.limitSources?.[name] ?? criterion.source;
    const source = more > 0 ? sourceOfSum(own, criterion) : own;
    return limit === null ? [] : [{ name, source, value: (limit + more) * ratio }];
  });
  const names = limits.map(({ name }) => name);
  const zones = zonesBetween(scheme.kind, names, scheme.grades) as Zone[];
  const at = limits.filter((one) => reading > raised(one.value)).length;
  const possible = zones.slice(at, unjudged.length > 0 ? undefined : at + 1);
  const sources = limits.map(({ source }) => source);
  const provenance = worstProvenance(sources.map((one) => one.provenance));
  const band = bandOf(scheme, criterion, known);
  const peakMeans = detector === "true pk" ? "true" : detector === "pk" ? (scheme.peakMeans ?? "open") : undefined;
  const height = criterion.height !== undefined && known.height === undefined;
  return {
    headline: headlineOf(scheme.kind, possible, unjudged.length > 0),
    zone: zones[at] as Zone,
    possible,
    zones,
    limits: Object.fromEntries(limits.map((one) => [one.name, one.value])),
    unjudged,
    band,
    ...(peakMeans && { peakMeans }),
    provenance,
    scheme: scheme.id,
    standard: scheme.standard,
    edition: scheme.edition,
    assumedFacts: [
      ...usualTexts(usualOf(scheme, known)),
      ...assumed,
      ...(height ? ["height of the measuring point: not given, and nothing more is allowed for it"] : []),
    ],
    setAside: unusedFacts(scheme, known),
    cautions: [
      ...differencesOf(sources),
      ...cautionsOf(band, peakMeans, known),
      ...schemeCautions(scheme, provenance, note),
    ],
  };
}
