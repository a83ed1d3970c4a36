import type { VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import type { AdmittedMachines } from "./admitted-machines";
import type { Unjudged } from "./applicable-criteria";
import { possibleOf, worstFirst } from "./combined-judgements";
import { eachReadable } from "./each-readable";
import type { Fact } from "./facts";
import type { Judgement } from "./judgement";
import { judgementIn } from "./judgement-in";
import type { Zone } from "./kinds";
import { bestBySpeed } from "./missing-speed";
import { headlineOf, isOrWorse, zonesText } from "./possible-zones";
import { zoneLevel } from "./zone-level";

/** What the schemes for one place say together. */
export interface PlaceVerdict {
  /** Worst first. */
  readonly judgements: readonly Judgement[];
  readonly possible: readonly Zone[];
  /** The zones in few words, without the kind of scheme. */
  readonly short: string;
  readonly headline: string;
  readonly word: string;
  /** What schemes leave unjudged that cannot judge such a reading at all. */
  readonly unread: readonly Unjudged[];
  /** The facts that were not given and decide. */
  readonly deciding: readonly Fact[];
  /** The first refusal, where no scheme for the place can judge such a reading. */
  readonly refusal?: VeladisError | undefined;
}

/** The zones that are possible with those that a slower machine would have, best first. */
function withSlower(found: readonly Zone[], { kind, zones }: Judgement, slower: readonly Zone[]): readonly Zone[] {
  const level = (zone: Zone): number => zoneLevel(kind, zone);
  const best = Math.min(...slower.map(level));
  const [first] = found as [Zone];
  return [...zones.filter((zone) => level(zone) >= best && level(zone) < level(first)), ...found];
}

/** The verdict of all schemes for a place together. */
export function verdictAtPlace(
  place: AdmittedMachines,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): PlaceVerdict {
  const { answers, unread, refusal } = eachReadable(place.machines, (machine) => ({
    judgement: judgementIn(machine, readings, crestFactor),
    slower: bestBySpeed(machine, readings, crestFactor),
  }));
  const sorted = worstFirst(answers.map(({ judgement }) => judgement));
  const [first] = sorted;
  if (first === undefined) {
    return {
      judgements: [],
      possible: [],
      short: "not judged",
      headline: "not judged",
      word: "not judged",
      unread,
      deciding: place.deciding,
      refusal,
    };
  }
  const slower = answers.flatMap((one) => (one.slower === undefined ? [] : [one.slower]));
  const known = possibleOf(sorted);
  const found = slower.length === 0 ? known : Object.freeze(withSlower(known, first, slower));
  const bySpeed = found.length > known.length;
  // a scheme that could not judge leaves all open that is worse
  const possible = unread.length === 0 ? found : first.zones.slice(first.zones.indexOf(found[0] as Zone));
  const isOpen = unread.length > 0 || sorted.some(isOrWorse);
  const deciding: readonly Fact[] = bySpeed ? [...new Set<Fact>(["speed", ...place.deciding])] : place.deciding;
  const depends = (bySpeed || sorted.length > 1) && possible.length > 1 && deciding.length > 0;
  return {
    judgements: sorted,
    possible,
    short: zonesText(possible, isOpen),
    headline: headlineOf(first.kind, possible, isOpen),
    word: depends
      ? `state the ${deciding.join(" and the ")}`
      : unread.length > 0 && possible.length > 1
        ? (unread[0] as Unjudged).because
        : // where one leaves worse zones open, why
          (sorted.find(isOrWorse) ?? first).word,
    unread,
    deciding,
  };
}
