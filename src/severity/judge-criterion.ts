import {
  type Amplitude,
  type Assumption,
  amplitudeIn,
  type ConvertedAmplitude,
  type ConvertOptions,
  convertAmplitude,
  type ReadingType,
  readingType,
  writtenValue,
} from "../amplitude/index";
import type { Source } from "../core/index";
import type { Quantity } from "../units/index";
import { type SchemeKind, type Zone, zonesBetween } from "./kinds";
import { type Limit, limitsOf } from "./limit";
import type { KnownFacts } from "./machine";
import type { Applied } from "./reading-for";
import type { Criterion, Scheme } from "./scheme";
import { raised } from "./tolerance";

/** How far a reading is from a limit; above 1 and 0 dB while the reading is below it. */
export interface Margin {
  /** Limit over reading; infinite for a reading of zero or next to it, which JSON writes as null. */
  readonly ratio: number;
  /** `20 lg` of it, infinite with it. */
  readonly decibels: number;
}

/** What one criterion says of a reading. */
export interface CriterionJudgement<K extends SchemeKind = SchemeKind> {
  readonly quantity: Quantity;
  readonly zone: Zone<K>;
  /** The zones that the limits part, best first. */
  readonly zones: readonly Zone<K>[];
  /** The reading in the unit and detector of the standard. */
  readonly judged: ConvertedAmplitude;
  /** All limits by name, lowest first, in the reader's unit and detector. */
  readonly limits: Readonly<Record<string, Limit<K>>>;
  /** The limit that ends the zone upwards; in the worst zone, the last one exceeded. */
  readonly limit: Limit<K>;
  readonly margin: Margin;
  readonly source: Source;
  /** The measuring band that the standard asks for, in hertz; null where it is not known. */
  readonly band: readonly [low: number, high: number] | null;
  readonly assumed: readonly Assumption[];
  readonly verified: boolean;
}

/** What the reader's values are written in: a type, or a level with its reference. */
export function readerType({ unit, detector, level }: Amplitude): ReadingType {
  return readingType(level === undefined ? `${unit} ${detector}` : `dB re ${level.re}`);
}

/** The measuring band for a criterion, at a shaft speed in r/min if it is known. */
function bandOf(scheme: Scheme, criterion: Criterion, { speed }: KnownFacts): CriterionJudgement["band"] {
  if (criterion.band !== undefined) return criterion.band;
  const { slowBand, band } = scheme;
  return slowBand !== undefined && (speed as number) < slowBand.below ? slowBand.band : band;
}

/** A limit in the reader's own type. */
function inReadersType(limit: Limit, reading: Amplitude, crestFactor: number | undefined): Limit {
  const { value, unit, detector } = limit.printed;
  const standard = amplitudeIn(`${unit} ${detector}`, value, reading.hertz);
  const as = readerType(reading);
  const mine = convertAmplitude(standard, as, { crestFactor } as ConvertOptions);
  return Object.freeze({
    ...limit,
    value: writtenValue(mine),
    as,
    unit: mine.unit,
    detector: mine.detector,
  });
}

/** The reading judged by one criterion. */
export function judgedBy(
  scheme: Scheme,
  { criterion, reading }: Applied,
  known: KnownFacts,
  crestFactor: number | undefined,
): CriterionJudgement {
  const judged = convertAmplitude(reading, criterion.as, { crestFactor } as ConvertOptions);
  const standard = limitsOf(scheme, criterion, known.speed as number | undefined);
  const names = standard.map(({ name }) => name);
  const zones = zonesBetween(scheme.kind, names, scheme.grades);
  const above = standard.filter(({ value }) => judged.value > raised(value)).length;
  const mine = standard.map((limit) => inReadersType(limit, reading, crestFactor));
  const at = Math.min(above, standard.length - 1);
  const ratio = (standard[at] as Limit).value / judged.value;
  const limit = mine[at] as Limit;
  return {
    quantity: judged.quantity,
    zone: zones[above] as Zone,
    zones: Object.freeze(zones) as readonly Zone[],
    judged,
    limits: Object.freeze(Object.fromEntries(mine.map((one) => [one.name, one]))),
    limit,
    margin: { ratio, decibels: 20 * Math.log10(ratio) },
    source: limit.source,
    band: bandOf(scheme, criterion, known),
    assumed: judged.assumed,
    verified: standard.every(({ verified }) => verified),
  };
}

/** How bad a judgement is: by zone first, then by the share of the limit that is used up. */
export function rankOf({ zone, zones, margin }: CriterionJudgement): number {
  return zones.indexOf(zone) + 1 / (1 + margin.ratio);
}
