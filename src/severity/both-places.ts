import { badnessOf, possibleOf, unitedParts, worstFirst } from "./combined-judgements";
import type { Fact } from "./facts";
import type { Judgement } from "./judgement";
import type { Zone } from "./kinds";
import { WORSE_PLACE, withoutPlace } from "./place-text";
import { reachedFirst } from "./reached-first";
import type { PlaceVerdict } from "./verdict-at-place";
import type { Verdict } from "./verdict-of";

/**
 * The verdict on a displacement of which nobody said whether it was measured on the housing or on the shaft: where both
 * come to the same that, else both side by side, and the worse of them in front. A place whose schemes cannot judge the
 * reading leaves all that is worse open.
 *
 * @throws {@link VeladisError} the first refusal where no scheme of either place can judge such a reading
 */
export function bothPlaces(housing: PlaceVerdict, shaft: PlaceVerdict, deciding: readonly Fact[]): Verdict {
  const places = [housing, shaft].filter((one) => one.judgements.length > 0);
  const judgements = worstFirst(places.flatMap((one) => one.judgements));
  const [first] = judgements;
  if (first === undefined) throw housing.refusal ?? shaft.refusal;
  const parts = unitedParts(judgements, [...housing.unread, ...shaft.unread]);
  const same = housing.short === shaft.short;
  const [mine] = [...places].sort(
    (a, b) => badnessOf(b.judgements[0] as Judgement) - badnessOf(a.judgements[0] as Judgement),
  ) as [PlaceVerdict];
  const found = possibleOf(judgements);
  const open = Object.freeze(first.zones.slice(first.zones.indexOf(found[0] as Zone)));
  const possible = same ? mine.possible : places.length < 2 ? open : found;
  const place = same ? "place: not given; housing and shaft come to the same" : WORSE_PLACE;
  return Object.freeze({
    ...first,
    ...parts,
    ...reachedFirst(judgements),
    headline: same ? mine.headline : `shaft ${shaft.short}, housing ${housing.short}: state the place`,
    word: same ? mine.word : "the place of the reading decides",
    possible,
    worst: possible.at(-1) as Verdict["zone"],
    assumedFacts: Object.freeze([place, ...withoutPlace(parts.assumedFacts)]),
    judgements,
    deciding: Object.freeze(same ? deciding : ["place", ...deciding]),
  } satisfies Verdict);
}
