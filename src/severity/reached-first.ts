import { ownHistory, type Step } from "../reading/index";
import type { CriterionJudgement } from "./judge-criterion";
import type { Judgement } from "./judgement";
import { type Limit, limitText } from "./limit";
import { zoneLevel } from "./zone-level";

/** The limit of a verdict, how far the reading is from it and the steps to that. */
type Reached = Pick<Judgement, "limit" | "margin" | "history">;

/** The lowest limit of a criterion above which its zone is worse than a level, and how far the reading is from it. */
function worseLimit({ kind }: Judgement, by: CriterionJudgement, level: number): Reached | undefined {
  const limits = Object.values(by.limits);
  // a limit ends its zone upwards: the next zone begins above it
  const limit = limits.find((_, i) => zoneLevel(kind, by.zones[i + 1] as string) > level) as Limit | undefined;
  if (limit === undefined) return undefined;
  const ratio = (by.margin.ratio * limit.printed.value) / by.limit.printed.value;
  const last = by.history.at(-1) as Step;
  const step = Object.freeze({ ...last, value: ratio, by: limit.printed.value, note: limitText(kind, limit) });
  return {
    limit,
    margin: Object.freeze({ ratio, decibels: 20 * Math.log10(ratio) }),
    history: ownHistory([...by.history.slice(0, -1), step]),
  };
}

/**
 * The limit that is reached first, of all that end the worst zone of several judgements: it may be one of a scheme by
 * which the reading is still in a better zone. Nothing where it is that of the judgement in front.
 *
 * @param judgements - worst first
 */
export function reachedFirst([first, ...others]: readonly Judgement[]): Reached | Record<never, never> {
  if (first === undefined) return {};
  const level = zoneLevel(first.kind, first.zone);
  // above its last limit nothing is worse
  if (first.margin.ratio < 1 || level >= zoneLevel(first.kind, first.zones.at(-1) as string)) return {};
  let nearest: Reached | undefined;
  for (const one of [first, ...others]) {
    for (const by of one.kind === first.kind ? one.criteria : []) {
      const found = by.bound === "most" ? undefined : worseLimit(one, by, level);
      if (found !== undefined && found.margin.ratio < (nearest ?? first).margin.ratio * (1 - 1e-9)) nearest = found;
    }
  }
  return nearest ?? {};
}
