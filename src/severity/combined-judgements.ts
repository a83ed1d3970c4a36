import { isVerified, worstProvenance } from "../core/index";
import { union } from "../reading/index";
import type { Unjudged } from "./applicable-criteria";
import { rankOf } from "./judge-criterion";
import type { Judgement } from "./judgement";
import type { Zone } from "./kinds";
import { zoneLevel } from "./zone-level";

/** How bad a judgement is: by the worst zone that is possible, then by the zone and the share of its limit. */
export function badnessOf(one: Judgement): number {
  return zoneLevel(one.kind, one.zone) * 100 + zoneLevel(one.kind, one.worst) * 10 + rankOf(one);
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
