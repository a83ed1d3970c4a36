import type { BenchMove, Output } from "./bench-move";
import type { BenchWords } from "./bench-moves";

/** A move at a frequency; null where a current is injected, which has none. */
export type PlacedMove<At extends number | null = number | null> = BenchMove & { readonly hertz: At };

/** The moves between two others: one that clears an output that is set or may be, and one that sets it again. */
export interface Between {
  readonly clear: (output: Output) => BenchMove;
  readonly set: BenchMove;
  /** What gives the level. */
  readonly source: BenchWords["source"];
}

/**
 * Moves with what has to stand between them, so that each finds the output that it expects: a good device can follow them.
 *
 * What expects a set output that the shaker cannot set says so.
 *
 * @param can - whether the shaker can do a move; one that it cannot do changes nothing
 */
export function orderedMoves<At extends number | null>(
  moves: readonly PlacedMove<At>[],
  can: (move: PlacedMove<At>) => boolean,
  { clear, set, source }: Between,
): PlacedMove<At>[] {
  const ordered: PlacedMove<At>[] = [];
  let output = "clear" as Output;
  const take = (move: PlacedMove<At>): void => {
    ordered.push(move);
    if (can(move)) output = move.leaves ?? output;
  };
  for (const move of moves) {
    const { from, hertz, expect } = move;
    if (from === "clear" && output !== "clear") take({ ...clear(output), hertz });
    const isUnset = from === "set" && output !== "set";
    if (!isUnset) take(move);
    else if (can({ ...set, hertz })) {
      take({ ...set, hertz });
      take(move);
    } else {
      ordered.push({ ...move, expect: `if the output is set, which this ${source} does not do: ${expect}` });
    }
  }
  return ordered;
}
