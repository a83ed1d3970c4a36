import { type Amplitude, historyOf, isUncertain, type Step } from "../reading/index";
import { endsOf, methodFor, type UncertaintyPart, uncertainOf, uncertaintyBy } from "../uncertainty/index";
import type { Margins } from "./tolerance";

/** How well the error of a check is known: expanded (k = 2), and what it is made of. */
export interface ErrorUncertainty extends Margins {
  /** The inputs, the largest in front; empty where neither level has an uncertainty of its own. */
  readonly parts: readonly UncertaintyPart[];
  /** How it was carried from the levels to the error; null where neither has one. */
  readonly method: string | null;
}

/** What is stated beside the levels: the expanded uncertainty of the known one. */
interface Beside extends Margins {
  readonly stated: string;
}

/** The parts of two independent uncertainties as those of one. */
function joinedParts(parts: readonly UncertaintyPart[], more: Pick<UncertaintyPart, "name" | "stated" | "standard">) {
  const all = [...parts, more];
  const squares = all.reduce((sum, { standard }) => sum + standard ** 2, 0);
  return all
    .map((part) => Object.freeze({ ...part, share: squares === 0 ? 0 : part.standard ** 2 / squares }))
    .sort((a, b) => b.share - a.share);
}

/**
 * How well an error is known: from the uncertainties that the levels carry in their histories, and the one stated beside
 * them, all independent. Null where there is none.
 *
 * @param way - the history of the error, which ends with it
 */
export function errorUncertainty(
  way: readonly Step[],
  levels: readonly Amplitude[],
  beside: Beside | null,
): ErrorUncertainty | null {
  const none = { parts: [], method: null } as const;
  if (!levels.some((level) => isUncertain(historyOf(level)))) return beside && { ...none, ...beside };
  // by the levels: the error itself is small, so its share says nothing
  const isFirst = levels.every((level) => methodFor(level) === "first order");
  const method = isFirst ? "first order" : "Monte Carlo";
  const uncertain = uncertainOf({ history: way });
  const found = uncertaintyBy(uncertain, [], method);
  const { value, expanded, draws, seed, parts } = found;
  if (expanded === 0) return beside && { ...none, ...beside };
  // they may lie further to one side than two standard uncertainties
  const [low, high] = endsOf(uncertain, found);
  const [below, above] = [value - low, high - value];
  return {
    below: Math.hypot(below, beside?.below ?? 0),
    above: Math.hypot(above, beside?.above ?? 0),
    parts: Object.freeze(
      beside === null
        ? parts
        : joinedParts(parts, { name: "known level", stated: beside.stated, standard: beside.above / 2 }),
    ),
    method: draws === undefined ? method : `${method}, ${draws} draws, seed ${seed}`,
  };
}
