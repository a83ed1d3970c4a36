import { differencesOf, isVerified, knownText, type Provenance, type Source, VeladisError } from "../core/index";
import type { Detector } from "../detectors/index";
import type { Assumption, Level, ReadingType, Step } from "../reading/index";
import type { Quantity, UnitSymbol } from "../units/index";
import { criterionType } from "./criterion-type";
import { type LimitName, limitNames, limitWords, type SchemeKind } from "./kinds";
import type { FactValue, KnownFacts } from "./machine";
import type { Criterion, LimitValue, Scheme } from "./scheme";

/** A limit as the standard prints it. */
export interface PrintedLimit {
  readonly value: number;
  readonly unit: UnitSymbol;
  readonly detector: Detector;
}

/** One limit, with where it comes from and how far that can be trusted. */
export interface Limit<K extends SchemeKind = SchemeKind> extends PrintedLimit {
  readonly name: LimitName<K>;
  readonly quantity: Quantity;
  /** The frequency by which it was carried to the reader's quantity, if it was. */
  readonly hertz: number | undefined;
  /** What the reader's values are written in: unit and detector, or a level with its reference. */
  readonly as: ReadingType;
  /** The limit as a level, where the reader's values are levels; `value` is linear in `unit` by `detector` always. */
  readonly level?: Level;
  /** The crest factor by which it was carried from peak to RMS or back, if one was stated. */
  readonly crestFactor?: number;
  /** What carrying it to the reader's type assumed; left out where it stands as printed. */
  readonly assumed?: readonly Assumption[];
  /** The steps from the printed limit to this one; left out where it stands as printed. */
  readonly history?: readonly Step[];
  /** The same limit in the standard's own unit and detector. */
  readonly printed: PrintedLimit;
  readonly standard: string;
  readonly edition: string;
  readonly source: Source;
  /** How the limit is known. */
  readonly provenance: Provenance;
  /** False unless the limit was read in the publication itself or confirmed against a copy: check it there. */
  readonly verified: boolean;
}

/** The names of the limits of a scheme, lowest first. */
export function namesOf(scheme: Scheme): readonly string[] {
  return scheme.kind === "grades" ? (scheme.grades as readonly string[]).slice(0, -1) : limitNames[scheme.kind];
}

/** The value of a limit at a shaft speed in r/min, the lowest over a range; null where the standard gives none. */
export function limitAt(limit: LimitValue, speed: FactValue | undefined): number | null {
  if (limit === null || typeof limit === "number") return limit;
  if (speed === undefined) {
    throw new VeladisError("missing-fact", {
      expected: "the running speed, which these limits fall with",
      received: "a machine without speed",
      fact: "speed",
    });
  }
  const fastest = typeof speed === "object" ? speed[1] : (speed as number);
  return Math.min(Math.sqrt(limit.rootOf / fastest), limit.atMost ?? Number.POSITIVE_INFINITY);
}

/** What a criterion allows more for the height of the measuring point. */
export function allowedForHeight({ height }: Criterion, known: KnownFacts): number {
  if (height === undefined || typeof known.height !== "number") return 0;
  return Math.max(0, known.height - height.above) * height.perMetre;
}

/**
 * Where a limit comes from to which something was added for height. What is added is known as the criterion is: nobody
 * confirmed the sum.
 */
export function sourceOfSum(own: Source, { source }: Criterion): Source {
  if (own.provenance !== "confirmed") return own;
  const { note, shipped } = own;
  return Object.freeze({ ...source, ...(note !== undefined && { note }), ...(shipped !== undefined && { shipped }) });
}

/** The limits of a criterion for a machine, lowest first, in the standard's own unit. */
export function limitsOf(scheme: Scheme, criterion: Criterion, known: KnownFacts): Limit[] {
  const { unit, detector, quantity } = criterionType(criterion);
  const { standard, edition } = scheme;
  const more = allowedForHeight(criterion, known);
  return namesOf(scheme).flatMap((name) => {
    const limit = limitAt(criterion.limits[name] ?? null, known.speed);
    if (limit === null) return [];
    const value = limit + more;
    const own = criterion.limitSources?.[name] ?? criterion.source;
    const source = more > 0 ? sourceOfSum(own, criterion) : own;
    const { provenance } = source;
    const printed = Object.freeze({ value, unit, detector });
    return [
      Object.freeze({
        name,
        as: criterion.as,
        ...printed,
        quantity,
        hertz: undefined,
        printed,
        standard,
        edition,
        source,
        provenance,
        verified: isVerified(provenance),
      }),
    ];
  });
}

/** A limit as a step of a history names it: its name and size, where it stands, and how it is known. */
export function limitText(kind: SchemeKind, limit: Limit): string {
  const { name, printed, standard, edition, source } = limit;
  const { value, unit, detector } = printed;
  const size = `${Number(value.toPrecision(6))} ${unit} ${detector}`;
  const differs = differencesOf([source]).map((text) => `; ${text}`);
  return `${limitWords(kind, name)} ${size}, ${standard} (${edition}), ${knownText(source)}${differs.join("")}`;
}
