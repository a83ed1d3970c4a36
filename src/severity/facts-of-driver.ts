import { shown, VeladisError } from "../core/index";
import type { Said } from "./nameplate";

/** What a part of a line, from comma to comma, has said so far behind the machine that is described. */
export interface PartSaid {
  /** The first words that say a fact. */
  readonly fact?: string;
  /** Words of another machine: what drives this one, or what this one is for. */
  readonly beside?: string;
}

/** What ends a part. What stands in brackets belongs to what stands before them. */
const PARTED = /[,;|)\]]/;

function saysFact({ facts, speed, poles, apparent, lineFrequency }: Said): boolean {
  return Object.keys(facts ?? {}).length > 0 || (speed ?? poles ?? apparent ?? lineFrequency) !== undefined;
}

/** The refusal of a fact that may be that of either machine. */
function ofWhich(beside: string, fact: string, written: string): VeladisError {
  return new VeladisError("syntax", {
    expected: `a comma between ${shown(beside)} and ${shown(fact)} where that is a fact of the machine that is judged; without it where it is one of the other machine`,
    received: shown(written),
  });
}

/**
 * What a part of a line has said once the next words are read: a fact beside the name of what drives a machine may be that
 * of the driver, as in `driven by motor on springs` and `220 kW motor driven pump`.
 *
 * @param gap - what stands before these words
 * @throws {@link VeladisError} `syntax` with both named
 */
export function partAfter(part: PartSaid, said: Said, words: string, gap: string): PartSaid {
  const { fact, beside } = PARTED.test(gap) ? ({} as PartSaid) : part;
  if (said.machineBeside !== undefined) {
    // driven by a motor: what stands before is of the machine that is driven
    const isBehind = fact !== undefined && /driven$/i.test(words);
    if (isBehind) throw ofWhich(words, fact, `${fact} ${words}`);
    return { beside: words };
  }
  if (said.mayBe !== undefined || said.facts?.type !== undefined) return {};
  if (!saysFact(said)) return { ...(fact !== undefined && { fact }), ...(beside !== undefined && { beside }) };
  if (beside !== undefined) throw ofWhich(beside, words, `${beside} ${words}`);
  return { fact: fact ?? words };
}
