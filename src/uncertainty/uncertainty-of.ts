import { finiteResult, requireChoice, requireGiven, requireKnownOptions, shown, VeladisError } from "../core/index";
import {
  type Amplitude,
  type Assumption,
  amplitudeOf,
  checkedSteps,
  historyOf,
  ownHistory,
  type Step,
  union,
} from "../reading/index";
import { isCurved } from "./curvature";
import { firstOrder } from "./first-order";
import { graphOf } from "./graph";
import { type Draws, drawsOf, intervalFromZero, intervalOf, momentsOf } from "./monte-carlo";
import type { Graph } from "./node";
import { mayBeNothing } from "./origin";
import { parseUncertain } from "./parse-uncertain";

/** How an uncertainty was carried to the answer. */
export type UncertaintyMethod = "first order" | "Monte Carlo";

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

/** How to carry an uncertainty. */
export interface UncertaintyOptions {
  /** First order where the expanded uncertainty is at most 10 % of the value, else Monte Carlo, if not given. */
  readonly method?: UncertaintyMethod;
  /** How many draws; 200,000 if not given. */
  readonly draws?: number;
  /** Starts the random numbers; 1 if not given. The same seed gives the same draws. */
  readonly seed?: number;
}

const keys: Readonly<Record<keyof UncertaintyOptions, true>> = /* @__PURE__ */ Object.freeze({
  method: true,
  draws: true,
  seed: true,
});

const DRAWS = 200_000;
/** Fewer say nothing of the ends of an interval. */
const LEAST_DRAWS = 1000;
const MOST_DRAWS = 10_000_000;

/** Above this share of the value an expanded uncertainty is no small one, so that slopes alone say too little. */
const SMALL = 0.1;

function requireWhole(value: number, least: number, most: number, what: string): number {
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw new VeladisError("out-of-range", {
    expected: `${what}, a whole number of ${least} to ${most}`,
    received: shown(value),
  });
}

/** A history as it can be drawn from. */
export interface Uncertain {
  readonly history: readonly Step[];
  readonly graph: Graph;
}

/** The history of an answer as a graph. */
export function uncertainOf(answer: string | Amplitude | { readonly history: readonly Step[] }): Uncertain {
  const known = requireGiven(answer, "an answer with its history");
  const read = typeof known === "string" ? parseUncertain(known) : known;
  const history =
    typeof read === "object" && !("value" in read && "unit" in read)
      ? checkedSteps(requireGiven(read.history, "an answer with its history"))
      : historyOf(amplitudeOf(read as Amplitude));
  if (history.length === 0) {
    throw new VeladisError("missing-fact", { expected: "an answer with its history", received: "no steps" });
  }
  return { history, graph: graphOf(history) };
}

/** How many draws, by which seed; refused also where none are drawn in the end. */
export function drawing({ draws = DRAWS, seed = 1 }: UncertaintyOptions): { count: number; seed: number } {
  return {
    count: requireWhole(draws, LEAST_DRAWS, MOST_DRAWS, "a number of draws"),
    seed: requireWhole(seed, 1, 2 ** 31, "a seed"),
  };
}

/** Draws of an answer. */
export function drawnOf({ graph }: Uncertain, options: UncertaintyOptions = {}): Draws {
  const { count, seed } = drawing(options);
  return drawsOf(graph, count, seed);
}

/** True where first order is enough. */
function isSmall(expanded: number, { value, type }: Step): boolean {
  // 10 % of a linear value in decibels
  return type.startsWith("dB") ? expanded <= 20 * Math.log10(1 + SMALL) : expanded <= SMALL * Math.abs(value);
}

/** The slopes of an answer, and the method that it takes. */
export function bySlopes({ history, graph }: Uncertain) {
  const { parts, partsAt, isBent } = firstOrder(graph);
  const slope = finiteResult(Math.hypot(...parts));
  const isFirst =
    parts.length === 0 || (!isBent && isSmall(2 * slope, history.at(-1) as Step) && !isCurved(graph, partsAt));
  const fitting: UncertaintyMethod = isFirst ? "first order" : "Monte Carlo";
  return { parts, partsAt, slope, fitting };
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

/** The method that carries an uncertainty to an answer, if none is named. */
export function methodFor(answer: Amplitude): UncertaintyMethod {
  return bySlopes(uncertainOf(answer)).fitting;
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
  requireKnownOptions(options, keys, "an option of an uncertainty", 'options such as { method: "Monte Carlo" }');
  if (options.method !== undefined) requireChoice(options.method, ["first order", "Monte Carlo"], "a method");
  const { seed } = drawing(options);
  const uncertain = uncertainOf(answer);
  const { history, graph } = uncertain;
  const last = history.at(-1) as Step;
  const { value, type } = last;
  const { parts, partsAt, slope, fitting } = bySlopes(uncertain);
  const method = parts.length === 0 ? fitting : (options.method ?? fitting);
  const drawn = method === "Monte Carlo" ? drawnOf(uncertain, options) : undefined;
  const { standard, mean } = drawn === undefined ? { standard: slope, mean: undefined } : momentsOf(drawn);
  const expanded = 2 * standard;
  const isLevel = type.startsWith("dB");
  const how = drawn === undefined ? method : `${method}, ${drawn.length} draws, seed ${seed}`;
  const own = typeof answer === "string" ? [] : (answer.assumed ?? []);
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
