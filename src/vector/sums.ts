import { VeladisError, withParameters } from "../core/index";
import { vectorAnswer } from "./answer";
import { combined, requireOneOrder } from "./combined";
import { agreedName } from "./names";
import { twoVectors } from "./two-vectors";
import type { Vector, VectorAnswer } from "./vector";

/** What has to be known of an answer in which run-out may be left. */
const RUN_OUT =
  "slow roll was taken off one of the two only: the run-out that the other holds, if it does, is in the answer";

/** Two vectors put together, of one quantity at one order of one shaft speed. */
function together(given: Readonly<Record<string, string | Vector>>, turn: 0 | 180, note?: string): VectorAnswer {
  const [a, b] = twoVectors(given);
  requireOneOrder(a, b);
  // vibrations of two directions, or by two probes, do not add like numbers
  const assumed = [...agreedName(a.direction, b.direction, "direction"), ...agreedName(a.probe, b.probe, "probe")];
  const [first, second] = [a.amplitude.quantity, b.amplitude.quantity];
  if (first !== second) {
    throw new VeladisError("wrong-quantity", {
      expected: "two vectors of one quantity; convertVector brings one to that of the other and turns its phase",
      received: `${first} and ${second}`,
    });
  }
  const answer = combined(a, b, turn, note);
  const isMixed = (a.slowRollSpeed === undefined) !== (b.slowRollSpeed === undefined);
  return vectorAnswer({
    ...answer,
    assumedFacts: [...answer.assumedFacts, ...assumed],
    cautions: isMixed ? [...answer.cautions, RUN_OUT] : answer.cautions,
  });
}

/**
 * The first vector less the second, in unit and detector of the first: how a 1x vector has changed, or one part of it taken
 * off. Both are of one quantity, at one order of one shaft speed, and count their phases from one mark.
 *
 * @returns the difference, with history; its phase is 0 where nothing is left. Probe and direction stay where both name one;
 *   where only one does, `assumedFacts` say so. Where slow roll was taken off one of the two only, `cautions` say so
 * @throws {@link VeladisError} `missing-fact` where one has no phase, with the ends between which the answer lies,
 *   `out-of-range` for two probes or two directions, `wrong-frequency`, `wrong-quantity`, and as {@link parseVector}
 * @example
 * ```ts
 * import { explain } from "veladis/explain";
 * import { differenceOfVectors, formatVector } from "veladis/vector";
 *
 * const change = differenceOfVectors("40 um pp ∠ 60° at 1x of 5400 r/min", "30 um pp ∠ 60° at 1x of 5400 r/min");
 * formatVector(change); // => "10.0 um pp ∠ 60° at 1x of 5400 r/min"
 * explain(change).text.split("\n").at(-1); // => "40 um pp - 30 um pp at 0 degrees = 10 um pp  (one frequency)"
 * differenceOfVectors("40 um pp ∠ 60° at 1x of 5400 r/min", "30 um pp"); // throws missing-fact
 * ```
 */
export function differenceOfVectors(from: string | Vector, off: string | Vector): VectorAnswer {
  return withParameters({ from, off }, () => {
    return together({ from, off }, 0);
  });
}

/**
 * Two vectors added, in unit and detector of the first. Both are of one quantity, at one order of one shaft speed, and count
 * their phases from one mark. The history tells it as the opposite of the second taken off.
 *
 * @throws {@link VeladisError} as {@link differenceOfVectors}
 * @example
 * ```ts
 * import { formatVector, sumOfVectors } from "veladis/vector";
 *
 * const sum = sumOfVectors("40 um pp ∠ 60° at 1x of 5400 r/min", "30 um pp ∠ 150° at 1x of 5400 r/min");
 * formatVector(sum); // => "50.0 um pp ∠ 96.9° at 1x of 5400 r/min"
 * ```
 */
export function sumOfVectors(one: string | Vector, other: string | Vector): VectorAnswer {
  return withParameters({ one, other }, () => {
    return together({ one, other }, 180, "added: the opposite taken off, the angle between them and 180 degrees");
  });
}
