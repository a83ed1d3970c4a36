import { requireList, requireText, shown, VeladisError, withParameters } from "../core/index";
import { outcomeOf, parseVote, type VoteText, voteText } from "./vote";

/** What it costs to bypass channels of a vote. */
export interface BypassCost {
  /** The channels that are bypassed. */
  readonly bypassed: readonly string[];
  /** The vote of the channels that are left, all of them good. */
  readonly effective: string;
  /** Whether a trip is still possible. */
  readonly canTrip: boolean;
  /** The same in words. */
  readonly text: string;
}

/** Names in a row: `A`, `A and B`, `A, B and C`. */
function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/**
 * What it costs to bypass channels of a vote. A bypassed channel votes healthy: as many votes as before are needed, of
 * fewer channels that can give them.
 *
 * @param vote - M out of N, e.g. `"2oo3"`
 * @param bypassed - the names of the channels that are bypassed, at most N
 * @throws {@link VeladisError} as {@link parseVote}; `wrong-type`, `length-mismatch`, `out-of-range` for one named twice
 * @example
 * ```ts
 * import { bypassCost } from "veladis/protection";
 *
 * bypassCost("2oo3", ["rear"]).text; // => "with rear bypassed 2oo3 becomes 2oo2"
 * bypassCost("2oo2", ["rear"]);
 * // => { bypassed: ["rear"], effective: "2oo1", canTrip: false, text: "with rear bypassed 2oo2 can never trip" }
 * ```
 */
export function bypassCost(vote: VoteText, bypassed: readonly string[]): BypassCost {
  return withParameters({ vote, bypassed }, () => {
    const parsed = parseVote(vote);
    const names = requireList(bypassed, "a list of the names of the channels that are bypassed", {
      parameter: "bypassed",
    }).map((name, index) => requireText(name, "the name of a channel", { parameter: "bypassed", index }));
    const twice = names.find((name, i) => names.indexOf(name) !== i);
    if (twice !== undefined) {
      throw new VeladisError("out-of-range", {
        expected: "each bypassed channel once",
        received: `${shown(twice)} twice`,
      });
    }
    if (names.length > parsed.of) {
      throw new VeladisError("length-mismatch", {
        expected: `at most ${parsed.of} bypassed channels for ${vote}`,
        received: `${names.length}`,
      });
    }
    const { unable, effective } = outcomeOf(parsed, { trip: 0, alert: 0, badForTrip: 0, silent: names.length });
    const whole = voteText(parsed);
    const effect = unable ? `${whole} can never trip` : `${whole} becomes ${effective}`;
    return Object.freeze({
      bypassed: Object.freeze(names),
      effective,
      canTrip: !unable,
      text:
        names.length === 0 ? `with no channel bypassed ${whole} stands` : `with ${listed(names)} bypassed ${effect}`,
    });
  });
}
