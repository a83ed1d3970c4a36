import { type ConvertOptions, convert } from "../amplitude/index";
import {
  type Amplitude,
  amplitudeIn,
  linearOf,
  type ParsedType,
  parsedType,
  type ReadingType,
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

/**
 * The limits in the reader's type, for a frequency and a crest factor. What they were for the last ones is remembered:
 * within one quantity and without a crest factor that is all there is.
 */
export function limitsInType(limits: readonly Limit[], reader: ParsedType): (told: Told) => ReaderLimits {
  const { type, unit, detector, quantity, reference } = reader;
  const printed = limits.map(({ printed: { value } }) => value);
  let lastTold: Told | undefined;
  let last: ReaderLimits | undefined;
  return (told) => {
    if (last !== undefined && told.hertz === lastTold?.hertz && told.crestFactor === lastTold?.crestFactor) return last;
    const values = valuesIn(type, printed, (limits[0] as Limit).as, told);
    const all = limits.map((one, i) => {
      const { name, printed, standard, edition, source, provenance, verified } = one;
      const written = values[i] as number;
      const { value, level } = reference === 0 ? { value: written } : amplitudeIn(reader, linearOf(written, reference));
      const rest = { quantity, hertz: told.hertz, printed, standard, edition, source, provenance, verified };
      return Object.freeze(
        level === undefined
          ? { name, as: type, value, unit, detector, ...rest }
          : { name, as: type, value, unit, detector, level, ...rest },
      );
    });
    last = { all, byName: namedLimits(all) };
    lastTold = told;
    return last;
  };
}
