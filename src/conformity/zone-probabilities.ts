import { type Assumption, amplitudeOf, assumedText } from "../reading/index";
import type { Verdict, Zone } from "../severity/index";
import { type UncertaintyOptions, uncertainOf } from "../uncertainty/index";
import type { Placed } from "./criterion-within";
import { isOpen } from "./is-open";
import { normalBelow } from "./normal-below";

/** How likely each zone is, all zones of the scheme named; together they are 1. */
export type ZoneProbabilities = Readonly<Record<Zone, number>>;

/** Why a probability would be false precision, in words; nothing where it would not. */
function barredBecause(verdict: Verdict, placed: readonly Placed[]): string[] {
  const { judgements, possible, unjudged, background } = verdict;
  const assumed = verdict.assumed.filter((one): one is Assumption => one !== "independent");
  // crest factors are told by the verdict, not asked for here
  const words = assumed.map((one) => assumedText({ assumed: [one], history: [] }).slice(1, -1));
  const bounds = placed.filter(({ answer }) => answer.bound !== "exact").map(({ answer }) => answer.quantity);
  const isMore = possible.length > 1 || unjudged.length > 0 || judgements.some(isOpen);
  return [
    ...(words.length > 0 ? [`how far off what was assumed may be is not known (${words.join(", ")})`] : []),
    ...(bounds.length > 0 ? [`of the ${[...new Set(bounds)].join(" and the ")} only a bound is known`] : []),
    ...(judgements.length > 1 ? ["several schemes judge"] : []),
    ...(judgements.length === 1 && placed.length > 1 ? ["several criteria judge"] : []),
    ...(isMore && judgements.length === 1 && bounds.length === 0 ? ["not all that may be worse was judged"] : []),
    ...(background?.valid === false ? ["the background is too high"] : []),
    ...(placed.some(({ answer }) => answer.uncertainty.standard === 0)
      ? ["the uncertainty that was given is not one of the value that was judged"]
      : []),
  ];
}

/** The share of the draws that are at most so large. */
function shareBelow(draws: Float64Array, most: number): number {
  let below = 0;
  for (let i = 0; i < draws.length; i++) if ((draws[i] as number) <= most) below++;
  return below / draws.length;
}

/**
 * How likely each zone is (JCGM 106:2012, 7.3 and 7.4; nothing was known of the machine before): by the normal
 * distribution where all inputs are normal and first order is enough, else by the shares of draws.
 */
export function zoneProbabilities(
  verdict: Verdict,
  placed: readonly Placed[],
  options: UncertaintyOptions,
): { readonly probabilities: ZoneProbabilities | null; readonly why: string | null } {
  const because = barredBecause(verdict, placed);
  if (because.length > 0)
    return { probabilities: null, why: `a probability would be false precision: ${because.join("; ")}` };
  const [{ answer, bounds }] = placed as readonly [Placed];
  const { value, standard, method } = answer.uncertainty;
  const [{ criteria, zones }] = verdict.judgements as readonly [Verdict];
  const uncertain = uncertainOf(amplitudeOf((criteria[0] as (typeof criteria)[number]).judged), options);
  const isNormal = uncertain.graph.inputs.every(({ uncertainty }) => uncertainty.distribution === "normal");
  const draws = method === "first order" && isNormal ? undefined : uncertain.drawn().answer;
  const below = bounds.map((most) =>
    draws === undefined ? normalBelow((most - value) / standard) : shareBelow(draws, most),
  );
  const shares = zones.map((zone, i) => [zone, (below[i] ?? 1) - (below[i - 1] ?? 0)] as const);
  return { probabilities: Object.freeze(Object.fromEntries(shares)) as ZoneProbabilities, why: null };
}
