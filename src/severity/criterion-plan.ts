import { type Provenance, raised, worstProvenance } from "../core/index";
import type { Amplitude, ParsedType } from "../reading/index";
import type { Applicable, Bound } from "./applicable-criteria";
import { criterionType } from "./criterion-type";
import { type Zone, zonesBetween } from "./kinds";
import { type Limit, limitsOf, limitText } from "./limit";
import { limitsInType, type ReaderLimits, readerType } from "./limits-in-type";
import type { KnownFacts } from "./machine";
import { peakMeaningOf } from "./peak-meaning";
import type { PlacedMachine } from "./placed-machine";
import type { Criterion, PeakMeaning, Scheme } from "./scheme";

/** What of a judgement by one criterion depends on the table, the machine and what the reading is written in. */
export interface CriterionPlan {
  readonly criterion: Criterion;
  readonly bound: Bound;
  /** The running frequency by which the reading is carried to the criterion, where it is a bound. */
  readonly hertz: number | undefined;
  /** The crest factor by which an RMS reading is carried to a limit in true peak, where none was stated. */
  readonly crestFactor: number | undefined;
  /** Of the readings, the place of the one that it judges. */
  readonly place: number;
  readonly type: ParsedType;
  /** The limits as the standard prints them, lowest first. */
  readonly limits: readonly Limit[];
  /** The largest value that is still within each of them. */
  readonly bounds: readonly number[];
  /** How each of them is named in a history. */
  readonly texts: readonly string[];
  readonly zones: readonly Zone[];
  readonly band: readonly [low: number, high: number] | null;
  readonly peakMeans: PeakMeaning | undefined;
  readonly provenance: Provenance;
  /** The limits in the type of a reading like the one that was planned for, by the crest factor stated if there is one. */
  readerLimits(reading: Amplitude, crestFactor: number | undefined): ReaderLimits;
}

/** The measuring band for a criterion, at a shaft speed in r/min if it is known. */
export function bandOf(scheme: Scheme, criterion: Criterion, { speed }: KnownFacts): CriterionPlan["band"] {
  if (criterion.band !== undefined) return criterion.band;
  const { slowBand, band } = scheme;
  const least = typeof speed === "object" ? speed[0] : (speed as number | undefined);
  return slowBand !== undefined && least !== undefined && least < slowBand.below ? slowBand.band : band;
}

/** True where a crest factor that the reading brings along relates the two types. */
function takesCrestFactor(from: ParsedType, to: ParsedType): boolean {
  return from.quantity === to.quantity && from.pi === to.pi && from.rootTwo !== to.rootTwo;
}

/** The plan of a criterion that applies, for readings such as these. */
export function criterionPlan(
  { scheme, facts }: PlacedMachine,
  { criterion, reading, bound, hertz: running, crestFactor: sine }: Applicable,
  readings: readonly Amplitude[],
): CriterionPlan {
  const type = criterionType(criterion);
  const reader = readerType(reading);
  const limits = limitsOf(scheme, criterion, facts);
  const names = limits.map(({ name }) => name);
  const texts = limits.map((limit) => limitText(scheme.kind, limit));
  const inReaders = limitsInType(limits, texts, reader);
  const crosses = reader.quantity !== type.quantity;
  const takes = takesCrestFactor(type, reader);
  return {
    criterion,
    bound,
    hertz: running,
    crestFactor: sine,
    place: readings.indexOf(reading),
    type,
    limits,
    bounds: limits.map(({ value }) => raised(value)),
    texts,
    zones: Object.freeze(zonesBetween(scheme.kind, names, scheme.grades)) as readonly Zone[],
    band: bandOf(scheme, criterion, facts),
    peakMeans: peakMeaningOf(scheme, criterion),
    provenance: worstProvenance(limits.map(({ provenance }) => provenance)),
    readerLimits: ({ hertz, crestFactor: brought }, crestFactor) =>
      inReaders({
        hertz: crosses ? (running ?? hertz) : undefined,
        crestFactor: crestFactor ?? (takes ? brought : undefined) ?? sine,
      }),
  };
}
