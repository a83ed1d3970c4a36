import {
  type ConvertedAmplitude,
  type ConvertOptions,
  carriedBy,
  convert,
  pairOf,
  wayBetween,
} from "../amplitude/index";
import {
  type Amplitude,
  type ParsedType,
  parsedType,
  type ReadingType,
  type Step,
  typeOf,
  type Unfinished,
} from "../reading/index";
import type { Limit } from "./limit";

/** The conversion of a number between types that only run time knows. */
const convertText = convert as (value: number, from: string, to: string, options: ConvertOptions) => number;

/** The limits of a criterion in the reader's type. */
export interface ReaderLimits {
  /** Lowest first. */
  readonly all: readonly Limit[];
  readonly byName: Readonly<Record<string, Limit>>;
}

/** What the reader's values are written in: a type, or a level with its reference. */
export function readerType({ unit, detector, level }: Amplitude): ParsedType {
  return parsedType(level === undefined ? `${unit} ${detector}` : `dB re ${level.re}`);
}

/** What a conversion is told besides its types. */
export interface Told {
  readonly hertz: number | undefined;
  readonly crestFactor: number | undefined;
}

/** The values in one type, in another. */
export function valuesIn(type: ReadingType, values: readonly number[], as: ReadingType, told: Told): number[] {
  const { hertz, crestFactor } = told;
  const options: Unfinished<ConvertOptions> = {};
  if (hertz !== undefined) options.at = { hertz };
  if (crestFactor !== undefined) options.crestFactor = crestFactor;
  return values.map((value) => convertText(value, as, type, options));
}

/** The limits by name: plain assignments, which are several times faster than a list of entries. */
function namedLimits(limits: readonly Limit[]): ReaderLimits["byName"] {
  const named: Record<string, Limit> = {};
  for (const limit of limits) {
    // a grade may have any name
    if (limit.name === "__proto__") Object.defineProperty(named, limit.name, { value: limit, enumerable: true });
    else named[limit.name] = limit;
  }
  return Object.freeze(named);
}

/** A limit as the standard prints it, as a reading that was given with its name. */
function printedReading({ printed, quantity }: Limit, note: string): Amplitude {
  const { value, unit, detector } = printed;
  const given = Object.freeze({ does: "given", value, type: typeOf(unit, detector).type, note } as const);
  return { value, unit, detector, quantity, hertz: undefined, history: Object.freeze([given]) };
}

/** A limit carried to a type: written out, since a copy of either with the parts of the other costs more than carrying it. */
function carriedLimit(
  { name, printed, standard, edition, source, provenance, verified }: Limit,
  as: ReadingType,
  { value, unit, detector, quantity, hertz, level, assumed, crestFactor, history }: ConvertedAmplitude,
): Limit {
  const limit: Unfinished<Limit> = {
    name,
    as,
    value,
    unit,
    detector,
    quantity,
    hertz,
    assumed,
    history: history as readonly Step[],
    printed,
    standard,
    edition,
    source,
    provenance,
    verified,
  };
  if (level !== undefined) limit.level = level;
  if (crestFactor !== undefined) limit.crestFactor = crestFactor;
  return Object.freeze(limit);
}

/**
 * The limits in the reader's type, for a frequency and a crest factor; each says how it was carried there and what that
 * assumed. What they were for the last ones is remembered: within one quantity and without a crest factor that is all
 * there is.
 *
 * @param limits - of one criterion, so all in one type
 * @param texts - how each of them is named in a history
 */
export function limitsInType(
  limits: readonly Limit[],
  texts: readonly string[],
  reader: ParsedType,
): (told: Told) => ReaderLimits {
  const { type } = reader;
  const given = limits.map((one, i) => printedReading(one, texts[i] as string));
  let lastTold: Told | undefined;
  let last: ReaderLimits | undefined;
  return (told) => {
    if (last !== undefined && told.hertz === lastTold?.hertz && told.crestFactor === lastTold?.crestFactor) return last;
    const { hertz, crestFactor } = told;
    const [first] = limits;
    const isPrinted = first === undefined || first.as === type;
    const way = isPrinted ? undefined : wayBetween(pairOf(first.as, type), hertz, crestFactor);
    const all = limits.map((one, i) =>
      way === undefined
        ? Object.freeze({ ...one, hertz })
        : carriedLimit(one, type, carriedBy(given[i] as Amplitude, way)),
    );
    last = { all, byName: namedLimits(all) };
    lastTold = told;
    return last;
  };
}
