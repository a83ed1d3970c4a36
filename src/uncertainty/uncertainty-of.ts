import { withParameters } from "../core/index";
import { type Amplitude, type Assumption, isLevelType, ownHistory, type Step, union } from "../reading/index";
import { type Draws, intervalFromZero, intervalOf, momentsOf } from "./monte-carlo";
import type { Graph } from "./node";
import { mayBeNothing } from "./origin";
import {
  requireUncertaintyOptions,
  type Uncertain,
  type UncertaintyMethod,
  type UncertaintyOptions,
  uncertainOf,
} from "./uncertain";

/** What one input adds to the uncertainty of an answer. */
export interface UncertaintyPart {
  /** The input: a reading, a frequency, or the name it was given. */
  readonly name: string;
  /** As it was stated, with its unit: `"± 10 r/min"`, `"± 5 % (k=2)"`. */
  readonly stated: string;
  /** The standard uncertainty it alone would give, in what the answer is written in. */
  readonly standard: number;
  /** Its share of the square of the whole, 0 to 1. */
  readonly share: number;
}

/** How well an answer is known. */
export interface UncertaintyOf {
  /** The answer as it stands, in `type`. */
  readonly value: number;
  /** A reading type, or what comes before one; empty for a ratio. */
  readonly type: string;
  /** Standard uncertainty (one standard deviation), in `type`. */
  readonly standard: number;
  /** Standard uncertainty over value; null for a value of zero and a level in dB. */
  readonly relative: number | null;
  /** Expanded uncertainty, 2 x standard. */
  readonly expanded: number;
  readonly k: 2;
  /**
   * Where the true value lies with about 95 %: value plus and minus the expanded, or the draws between 2.5 % and 97.5 %. The
   * length of a sum of vectors of which nothing may be left begins at 0 and ends at what 95 % are at most.
   */
  readonly interval: readonly [low: number, high: number];
  readonly method: UncertaintyMethod;
  /** `Monte Carlo`: how many draws, by which seed, and their mean, which differs from the value where steps are bent. */
  readonly draws?: number;
  readonly seed?: number;
  readonly mean?: number;
  /** The inputs to first order, the largest in front; independent of one another. */
  readonly parts: readonly UncertaintyPart[];
  /** All that was assumed on the way to the answer, and that its inputs are independent. */
  readonly assumed: readonly Assumption[];
  /** The steps that led to the answer, then `uncertainty`. */
  readonly history: readonly Step[];
}

/** What each input adds, the largest in front; `slope` is what they come to. */
export function partsOf(parts: readonly number[], slope: number, { inputs }: Graph): readonly UncertaintyPart[] {
  const told = parts.map((part, i) => {
    const { name, uncertainty } = inputs[i] as Graph["inputs"][number];
    const share = slope === 0 ? 0 : (part / slope) ** 2;
    return Object.freeze({ name, stated: uncertainty.stated, standard: Math.abs(part), share });
  });
  return Object.freeze(told.sort((a, b) => b.share - a.share));
}

/** The 95 % interval of an answer. */
function within(
  value: number,
  expanded: number,
  drawn: Draws | undefined,
  fromZero: boolean,
): readonly [number, number] {
  if (drawn === undefined) return [fromZero ? 0 : value - expanded, value + expanded];
  return fromZero ? intervalFromZero(drawn) : intervalOf(drawn);
}

/** How well an answer is known, by what can be reckoned with; `own` is what it assumed besides its steps. */
export function uncertaintyBy(
  uncertain: Uncertain,
  own: readonly Assumption[],
  asked: UncertaintyMethod | undefined,
): UncertaintyOf {
  const { history, graph, seed, slopes } = uncertain;
  const last = history.at(-1) as Step;
  const { value, type } = last;
  const { parts, partsAt, slope, fitting } = slopes();
  const method = parts.length === 0 ? fitting : (asked ?? fitting);
  const drawn = method === "Monte Carlo" ? uncertain.drawn().answer : undefined;
  const { standard, mean } = drawn === undefined ? { standard: slope, mean: undefined } : momentsOf(drawn);
  const expanded = 2 * standard;
  const isLevel = isLevelType(type);
  const how = drawn === undefined ? method : `${method}, ${drawn.length} draws, seed ${seed}`;
  const assumed = history.reduce<readonly Assumption[]>((all, step) => union(all, step.assumed), own);
  const step: Step = Object.freeze({
    ...({ does: "uncertainty", of: Object.freeze([history.length - 1]), value: standard, type } as const),
    ...{ note: `standard uncertainty, ${how}`, assumed: Object.freeze(["independent"] as const) },
  });
  return Object.freeze({
    value,
    type,
    standard,
    relative: isLevel || value === 0 ? null : standard / Math.abs(value),
    expanded,
    k: 2,
    interval: Object.freeze(
      within(value, expanded, drawn, parts.length > 0 && !isLevel && mayBeNothing(graph, partsAt)),
    ),
    method,
    ...(drawn !== undefined && { draws: drawn.length, seed, mean: mean as number }),
    parts: partsOf(parts, slope, graph),
    assumed: union<Assumption>(assumed, ["independent"]),
    history: ownHistory([...history, step]),
  });
}

/**
 * How well an answer is known, from the uncertainties of the readings that led to it.
 *
 * To first order (JCGM 100:2008, 5.1.2): each step passes on what it was given, by its slope; an integration or a
 * differentiation adds that of the frequency once a step. Where the expanded uncertainty is above 10 % of the value, or a
 * step is bent (the largest of several, a root at zero, a divisor with more than 4 % standard uncertainty), the whole history is reckoned again with drawn inputs
 * (JCGM 101:2008), by a stated seed and count. The inputs are taken as independent, which the history says; a reading
 * that comes in twice is one input, where it is the same amplitude: two texts are two readings.
 *
 * @param answer - words as for {@link parseUncertain}, an amplitude, or anything with a `history`: a judgement, a check
 * @returns the uncertainty as data; `standard` is 0 where no reading has one
 * @throws {@link VeladisError} `out-of-range` for a step that no arithmetic can follow (a statistic, a value that was
 *   replaced) behind a reading with an uncertainty, for draws and seed, `unknown-option`, and as {@link parseUncertain}
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 * import { parseUncertain, uncertaintyOf } from "veladis/uncertainty";
 *
 * const moved = convertAmplitude(parseUncertain("4.9 ± 0.1 mm/s rms (k=2) at 25 ± 0.5 Hz (k=2)"), "um pp");
 * const { standard, relative, method, parts } = uncertaintyOf(moved);
 * standard.toFixed(2); // => "1.26"
 * (100 * (relative ?? 0)).toFixed(2); // => "1.43"
 * method; // => "first order"
 * parts.map(({ name, share }) => `${name}: ${(100 * share).toFixed(0)} %`); // => ["4.9 mm/s rms: 51 %", "25 Hz: 49 %"]
 * uncertaintyOf("4.9 ± 1 mm/s rms (k=2)").method; // => "Monte Carlo"
 * ```
 */
export function uncertaintyOf(
  answer: string | Amplitude | { readonly history: readonly Step[]; readonly assumed?: readonly Assumption[] },
  options: UncertaintyOptions = {},
): UncertaintyOf {
  return withParameters({ options, answer }, () => {
    requireUncertaintyOptions(options);
    const own = typeof answer === "string" ? [] : (answer?.assumed ?? []);
    return uncertaintyBy(uncertainOf(answer, options), own, options.method);
  });
}
