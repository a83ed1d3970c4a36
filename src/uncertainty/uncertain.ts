import {
  finiteResult,
  lazily,
  requireChoice,
  requireGiven,
  requireKnownOptions,
  shown,
  VeladisError,
} from "../core/index";
import { type Amplitude, amplitudeOf, checkedSteps, historyOf, isLevelType, type Step } from "../reading/index";
import { isCurved } from "./curvature";
import { firstOrder } from "./first-order";
import { graphOf } from "./graph";
import { type Drawn, drawsOf } from "./monte-carlo";
import type { Graph } from "./node";
import { parseUncertain } from "./parse-uncertain";

/** How an uncertainty was carried to the answer. */
export type UncertaintyMethod = "first order" | "Monte Carlo";

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

/** Refuses options that there are none of; their numbers are checked where they are used. */
export function requireUncertaintyOptions(options: UncertaintyOptions): void {
  requireKnownOptions(options, keys, {
    what: "an option of an uncertainty",
    form: 'options such as { method: "Monte Carlo" }',
  });
  if (options.method !== undefined)
    requireChoice(options.method, ["first order", "Monte Carlo"], "a method", { option: "method" });
}

const DRAWS = 200_000;
/** Fewer say nothing of the ends of an interval. */
const LEAST_DRAWS = 1000;
const MOST_DRAWS = 10_000_000;

/** Above this share of the value an expanded uncertainty is no small one, so that slopes alone say too little. */
const SMALL = 0.1;

function requireWhole(given: Readonly<Record<string, number>>, least: number, most: number, what: string): number {
  const [[option, value]] = Object.entries(given) as [[string, number]];
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw new VeladisError("out-of-range", {
    expected: `${what}, a whole number of ${least} to ${most}`,
    received: shown(value),
    parameter: "options",
    option,
  });
}

/** The slopes of an answer, and the method that it takes. */
interface Slopes {
  /** What the answer owes to each input. */
  readonly parts: readonly number[];
  /** The same of any number of the graph, by its place. */
  readonly partsAt: (place: number) => readonly number[];
  /** What the parts come to. */
  readonly slope: number;
  readonly fitting: UncertaintyMethod;
}

/** A history as it can be reckoned with; what several ask for is reckoned once, when it is first asked for. */
export interface Uncertain {
  readonly history: readonly Step[];
  readonly graph: Graph;
  readonly seed: number;
  readonly slopes: () => Slopes;
  readonly drawn: () => Drawn;
}

/** True where first order is enough. */
function isSmall(expanded: number, { value, type }: Step): boolean {
  // 10 % of a linear value in decibels
  return isLevelType(type) ? expanded <= 20 * Math.log10(1 + SMALL) : expanded <= SMALL * Math.abs(value);
}

function slopesOf(history: readonly Step[], graph: Graph): Slopes {
  const { parts, partsAt, isBent } = firstOrder(graph);
  const slope = finiteResult(Math.hypot(...parts));
  const isFirst =
    parts.length === 0 || (!isBent && isSmall(2 * slope, history.at(-1) as Step) && !isCurved(graph, partsAt));
  const fitting: UncertaintyMethod = isFirst ? "first order" : "Monte Carlo";
  return { parts, partsAt, slope, fitting };
}

/**
 * The history of an answer as a graph.
 *
 * @param options - how many draws, by which seed; refused also where none are drawn in the end
 */
export function uncertainOf(
  answer: string | Amplitude | { readonly history: readonly Step[] },
  { draws = DRAWS, seed = 1 }: UncertaintyOptions = {},
): Uncertain {
  const count = requireWhole({ draws }, LEAST_DRAWS, MOST_DRAWS, "a number of draws");
  requireWhole({ seed }, 1, 2 ** 31, "a seed");
  const known = requireGiven(answer, "an answer with its history", { parameter: "answer" });
  const read = typeof known === "string" ? parseUncertain(known) : known;
  const history =
    typeof read === "object" && !("value" in read && "unit" in read)
      ? checkedSteps(requireGiven(read.history, "an answer with its history", { option: "history" }))
      : historyOf(amplitudeOf(read as Amplitude));
  if (history.length === 0) {
    throw new VeladisError("missing-fact", {
      expected: "an answer with its history",
      received: "no steps",
      option: "history",
    });
  }
  const graph = graphOf(history);
  return {
    ...{ history, graph, seed },
    slopes: lazily(() => slopesOf(history, graph)),
    drawn: lazily(() => drawsOf(graph, count, seed)),
  };
}

/** The method that carries an uncertainty to an answer, if none is named. */
export function methodFor(answer: Amplitude): UncertaintyMethod {
  return uncertainOf(answer).slopes().fitting;
}
