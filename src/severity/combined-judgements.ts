import { isVerified, worstProvenance } from "../core/index";
import { union } from "../reading/index";
import type { Unjudged } from "./applicable-criteria";
import type { Judgement } from "./judgement";
import type { Zone } from "./kinds";
import { zoneLevel } from "./zone-level";

/**
 * How bad a judgement is: by its zone, then by the limit that is reached first, since that one ends the zone for all; of
 * two that are equal in both, by the worst zone that is possible.
 */
export function badnessOf({ kind, zone, worst, margin }: Judgement): number {
  return zoneLevel(kind, zone) * 100 + 10 / (1 + margin.ratio) + zoneLevel(kind, worst) * 1e-9;
}

/** The worst judgement first. */
export function worstFirst(judgements: readonly Judgement[]): readonly Judgement[] {
  return [...judgements].sort((a, b) => badnessOf(b) - badnessOf(a));
}

/** All zones that any of them leaves possible, best first. */
export function possibleOf(judgements: readonly Judgement[]): readonly Zone[] {
  const all = new Map<string, number>();
  for (const { kind, possible } of judgements) for (const zone of possible) all.set(zone, zoneLevel(kind, zone));
  return Object.freeze([...all].sort(([, a], [, b]) => a - b).map(([zone]) => zone)) as readonly Zone[];
}

/** All that was assumed in any of them, each once. */
function assumedFactsOf(judgements: readonly Judgement[]): readonly string[] {
  return Object.freeze([...new Set(judgements.flatMap(({ assumedFacts }) => assumedFacts))]);
}

/** What is the same for judgements put together, behind the worst of them. */
export function unitedParts(judgements: readonly Judgement[], unread: readonly Unjudged[]) {
  const provenance = worstProvenance(judgements.map((one) => one.provenance));
  const assumed = judgements.map((one) => one.assumed).reduce((all, own) => union(all, own));
  return {
    assumed,
    assumedFacts: assumedFactsOf(judgements),
    provenance,
    verified: isVerified(provenance),
    confirmed: Object.freeze([...new Set(judgements.flatMap(({ confirmed }) => confirmed))]),
    differences: Object.freeze([...new Set(judgements.flatMap(({ differences }) => differences))]),
    setAside: Object.freeze([...new Set(judgements.flatMap(({ setAside }) => setAside))]),
    unjudged: Object.freeze([...judgements.flatMap(({ unjudged }) => unjudged), ...unread]),
    cautions: Object.freeze([...new Set(judgements.flatMap(({ cautions }) => cautions))]),
  };
}
