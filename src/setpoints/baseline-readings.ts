import { type ConvertedAmplitude, type ConvertOptions, convertAmplitude } from "../amplitude/index";
import { inPlace, lengthOf, requireGiven, requireNonNegative, withParameters } from "../core/index";
import { type Amplitude, type Assumption, isUncertain, type LoopState } from "../reading/index";
import { uncertainAmplitude } from "../uncertainty/index";

/** Bare numbers, or readings with their units. */
export type Readings = ArrayLike<number> | readonly (string | Amplitude)[];

/** Readings as numbers in one type, and what all of them brought along. */
export interface BaselineReadings {
  readonly values: Float64Array;
  /** What was assumed for any of them. */
  readonly assumed: readonly Assumption[];
  /** The crest factor and the frequency, where all have the same. */
  readonly crestFactor: number | undefined;
  readonly hertz: number | undefined;
  /** The state of the loop for each reading that came by one, by its index. */
  readonly states: ReadonlyMap<number, LoopState>;
  /** How many had an uncertainty of their own. */
  readonly uncertain: number;
}

/** The one value there is, or undefined where there are several or none. */
function common<Value>(values: ReadonlySet<Value>): Value | undefined {
  return values.size === 1 ? values.values().next().value : undefined;
}

/** The readings as numbers in a type; their histories are not kept, what was assumed in them is. */
export function baselineReadings(readings: Readings, as: string, at: ConvertOptions["at"]): BaselineReadings {
  const assumed = new Set<Assumption>();
  const crestFactors = new Set<number | undefined>();
  const frequencies = new Set<number | undefined>();
  const states = new Map<number, LoopState>();
  let uncertain = 0;
  const take = (answer: ConvertedAmplitude, i: number): number => {
    for (const name of answer.assumed) assumed.add(name);
    crestFactors.add(answer.crestFactor);
    frequencies.add(answer.hertz);
    if (answer.state !== undefined) states.set(i, answer.state);
    return answer.value;
  };
  const values = Float64Array.from(
    { length: lengthOf(readings, "a list of readings", { parameter: "readings" }) },
    (_, i) => {
      const reading = readings[i] as number | string | Amplitude;
      if (typeof reading === "number") {
        crestFactors.add(undefined);
        frequencies.add(undefined);
        return requireNonNegative(reading, `a reading of zero or more at index ${i}`, {
          parameter: "readings",
          index: i,
        });
      }
      const place = { parameter: "readings", index: i };
      const amplitude = inPlace(place, () => uncertainAmplitude(requireGiven(reading, `a reading at index ${i}`)));
      if (isUncertain(amplitude.history ?? [])) uncertain++;
      return take(
        withParameters({ options: { at }, readings }, () =>
          convertAmplitude(amplitude, as, at === undefined ? {} : { at }),
        ),
        i,
      );
    },
  );
  return {
    values,
    assumed: Object.freeze([...assumed]),
    crestFactor: common(crestFactors),
    hertz: common(frequencies),
    states,
    uncertain,
  };
}
