import {
  assumedBetween,
  type ConvertOptions,
  checkedOptions,
  converted,
  factorOf,
  type Pair,
  pair,
} from "../amplitude/index";
import {
  cached,
  finiteSamples,
  inPlace,
  requireKnownOptions,
  requireList,
  requireNonNegative,
  shown,
  VeladisError,
} from "../core/index";
import { detectorFacts, detectorSymbol } from "../detectors/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Amplitude, type Assumption, amplitudeIn, linearOf, ownHistory, type ReadingType } from "../reading/index";
import type { Quantity } from "../units/index";
import { defineDetector, type OwnDetector } from "./own-detector";
import { type OwnParsed, ownParser } from "./own-parser";
import type { OwnArguments, OwnChecked, OwnTarget, OwnType } from "./own-types";
import { defineUnit, type OwnUnit } from "./own-unit";

/** What a toolkit is made of. */
export interface ToolkitParts<Unit extends OwnUnit, Reads extends OwnDetector> {
  readonly units?: readonly Unit[];
  readonly detectors?: readonly Reads[];
}

/** A compiled conversion of a toolkit. */
export interface OwnConverter {
  (value: number): number;
  readonly from: string;
  readonly to: string;
  /** What every answer assumes. */
  readonly assumed: readonly Assumption[];
}

/** Conversions that know units and detectors of your own besides the built-in ones. */
export interface Toolkit<Unit extends OwnUnit, Reads extends OwnDetector> {
  /** A reading in another type, as {@link convert} of `veladis`; a crest factor relates no detector of your own. */
  convert<const From extends OwnType<Unit, Reads>, const To extends OwnType<Unit, Reads>>(
    value: number,
    from: From,
    to: To,
    ...options: OwnArguments<Unit, Reads, From, To>
  ): number;
  /** What the first has refused comes here: the type of the parameter says what is wrong with the argument. */
  convert<const From extends string, const To extends string>(
    value: number,
    from: OwnChecked<Unit, Reads, From>,
    to: OwnTarget<Unit, Reads, From, To>,
  ): number;
  /** A conversion compiled once, for many values; it gives what `convert` does. */
  converter<const From extends OwnType<Unit, Reads>, const To extends OwnType<Unit, Reads>>(
    from: From,
    to: To,
    ...options: OwnArguments<Unit, Reads, From, To>
  ): OwnConverter;
  /** What the first has refused comes here, as of `convert`. */
  converter<const From extends string, const To extends string>(
    from: OwnChecked<Unit, Reads, From>,
    to: OwnTarget<Unit, Reads, From, To>,
  ): OwnConverter;
  /** A reading in a built-in type, as data with what was assumed, for all other functions of the library: the way out. */
  amplitude<const From extends OwnType<Unit, Reads>, const To extends ReadingType>(
    value: number,
    from: From,
    to: To,
    ...options: OwnArguments<Unit, Reads, From, To>
  ): Amplitude;
  /** What the first has refused comes here, as of `convert`. */
  amplitude<const From extends string, const To extends string>(
    value: number,
    from: OwnChecked<Unit, Reads, From>,
    to: OwnTarget<Unit, Reads, From, To>,
  ): Amplitude;
  /** What a detector reads from samples; their mean is taken off first. */
  read(samples: ArrayLike<number>, detector: string): number;
  /** The quantity of a reading type of unknown content, or a refusal. */
  quantityOf(type: string): Quantity;
}

const keys = /* @__PURE__ */ Object.freeze({ units: true, detectors: true });

/** The detector of a type; of a level RMS. */
function detectorOf({ type, unit, reference, detector }: OwnParsed): string {
  return reference === 0 ? type.slice(unit.length + 1) : detector;
}

/** A conversion between two types of a toolkit: the factor, and what it assumes. */
function way(from: OwnParsed, to: OwnParsed, options: ConvertOptions | undefined) {
  const { at, crestFactor } = checkedOptions(options);
  const isOwn = from.isOwnDetector || to.isOwnDetector;
  if (isOwn && crestFactor !== undefined) {
    throw new VeladisError("not-a-sine", {
      expected: "no crest factor for a detector of your own, which is related to others by its reading of a sine alone",
      received: shown(crestFactor),
      option: "crestFactor",
    });
  }
  const both: Pair = pair(from, to);
  const factor = factorOf(both, at, crestFactor);
  const assumed: readonly Assumption[] =
    isOwn && detectorOf(from) !== detectorOf(to)
      ? Object.freeze([...(both.steps === 0 ? [] : ["one-frequency" as const]), "sine" as const])
      : assumedBetween(both, crestFactor);
  return { both, factor, assumed, hz: at === undefined ? undefined : hertz(at as Frequency), crestFactor };
}

/**
 * A toolkit: conversions that know units and detectors of your own. Nothing is registered anywhere; two toolkits know nothing of
 * each other, and all other functions read what they did. Ratios stay exact: whole numbers, multiplied first and divided once.
 *
 * A detector of your own is related to others by its reading of a sine, which every answer names as assumed, also where
 * the ratio to another is the same for other waveforms.
 *
 * @param parts - what {@link defineUnit} and {@link defineDetector} take or gave
 * @returns frozen functions, typed by the symbols of the parts
 * @throws {@link VeladisError} as {@link defineUnit} and {@link defineDetector}; `out-of-range` for two of one name
 * @example
 * ```ts
 * import { judge } from "veladis/severity";
 * import { defineUnit, toolkit } from "veladis/kit";
 *
 * const line = defineUnit({
 *   symbol: "lin/s",
 *   quantity: "velocity",
 *   num: 127,
 *   den: 60_000,
 *   name: "line (a twelfth of an inch) per second",
 *   source: { title: "Hollowmere workshop sheet 3", provenance: "memory" },
 * });
 * const kit = toolkit({ units: [line] });
 * kit.convert(12, "lin/s pk", "in/s pk"); // => 1
 * kit.convert(12, "lin/s pk", "mil pp", { at: "1500 r/min" }).toFixed(2); // => "12.73"
 * kit.converter("lin/s pk", "mm/s rms").assumed; // => ["sine"]
 * judge(kit.amplitude(2, "lin/s rms", "mm/s rms"), "pump 90 kW 2980 r/min category II rigid").zone; // => "B"
 * kit.convert(1, "ln/s pk" as "lin/s pk", "mm/s pk"); // throws unknown-unit
 * ```
 */
export function toolkit<const Unit extends OwnUnit = never, const Reads extends OwnDetector = never>(
  parts: ToolkitParts<Unit, Reads>,
): Toolkit<Unit, Reads> {
  const { units: own = [], detectors: reads = [] } = requireKnownOptions(parts, keys, {
    what: "a part of a toolkit",
    form: "parts such as { units: [...] }",
    place: { parameter: "parts" },
  });
  const each = <One, Made>(option: "units" | "detectors", list: readonly One[], made: (one: One) => Made): Made[] => {
    const place = { parameter: "parts", option };
    return requireList(list, `${option} as a list`, place).map((one, index) =>
      inPlace({ ...place, index }, () => made(one)),
    );
  };
  const ownUnits = each("units", own, (unit) => defineUnit(unit));
  const ownDetectors = each("detectors", reads, (one) => defineDetector(one));
  const parse = ownParser(ownUnits, ownDetectors);
  const parsedAt = (parameter: "from" | "to", type: string) => inPlace({ parameter }, () => parse(type));
  const ways = cached((from) => cached((to) => way(parsedAt("from", from), parsedAt("to", to), undefined)));
  const wayOf = (from: string, to: string, options: ConvertOptions | undefined) =>
    options === undefined ? ways(from)(to) : way(parsedAt("from", from), parsedAt("to", to), options);

  const convert = (value: number, from: string, to: string, options?: ConvertOptions): number => {
    const { both, factor } = wayOf(from, to, options);
    return converted(value, both, factor);
  };
  const converter = (from: string, to: string, options?: ConvertOptions): OwnConverter => {
    const { both, factor, assumed } = wayOf(from, to, options);
    const one = (value: number): number => converted(value, both, factor);
    return Object.freeze(Object.assign(one, { from: both.from.type, to: both.to.type, assumed }));
  };
  const amplitude = (value: number, from: string, to: string, options?: ConvertOptions): Amplitude => {
    const { both, factor, assumed, hz, crestFactor } = wayOf(from, to, options);
    if (parse(to).isOwn) {
      throw new VeladisError("unknown-option", {
        expected: "a built-in reading type to go on with, such as mm/s rms",
        received: shown(to),
        parameter: "to",
      });
    }
    const written = converted(value, both, factor);
    const { type, reference } = both.to;
    const bare = amplitudeIn(both.to, reference === 0 ? written : linearOf(written, reference), hz);
    const told = {
      ...(assumed.length > 0 && { assumed }),
      ...(crestFactor !== undefined && both.steps === 0 && { crestFactor }),
    };
    const note = `converted by a toolkit from ${value} ${both.from.type}`;
    const step = Object.freeze({
      does: "given" as const,
      value: written,
      type,
      ...(hz !== undefined && { hertz: hz }),
      ...told,
      note,
    });
    return Object.freeze({ ...bare, ...told, history: ownHistory([step]) });
  };
  const read = (samples: ArrayLike<number>, detector: string): number => {
    const given = finiteSamples(samples);
    const mean = given.reduce((sum, one) => sum + one, 0) / given.length;
    const values = given.map((one) => one - mean);
    const found = ownDetectors.find(({ symbol }) => symbol === detector);
    const { ofSamples } = found ?? detectorFacts[inPlace({ parameter: "detector" }, () => detectorSymbol(detector))];
    if (values.length > 0)
      return requireNonNegative(ofSamples(values), "what a detector reads: zero or more", { parameter: "samples" });
    throw new VeladisError("missing-option", {
      expected: "one sample or more",
      received: "none",
      parameter: "samples",
    });
  };
  const quantityOf = (type: string): Quantity => inPlace({ parameter: "type" }, () => parse(type)).quantity;
  return Object.freeze({ convert, converter, amplitude, read, quantityOf }) as Toolkit<Unit, Reads>;
}
