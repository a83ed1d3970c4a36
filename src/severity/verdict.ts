import { type Fact, isNumberFact, type TextFact } from "./facts";
import { contains, type Interval } from "./interval";
import { folded } from "./label";
import type { KnownFacts } from "./machine";
import { labels } from "./machine-class";
import type { Condition, Scheme } from "./scheme";

/** What a fact says of a condition. */
export type Verdict = "met" | "unmet" | "unknown";

/** Whether a machine meets a condition on one fact. */
export function verdict(condition: Condition, fact: Fact, known: KnownFacts): Verdict {
  const given = known[fact];
  if (given === undefined) return "unknown";
  const met = isNumberFact(fact)
    ? contains(condition[fact] as Interval, given as number)
    : labels(condition[fact as TextFact] as string).some(
        (label) => label === given || folded(label) === folded(given as string),
      );
  return met ? "met" : "unmet";
}

/** The facts that a condition is on. */
export function factsOf(condition: Condition | undefined): Fact[] {
  return Object.keys(condition ?? {}) as Fact[];
}

/** All that the classes of a scheme ask of one fact. */
export function domain(scheme: Scheme, fact: Fact): { texts: string[]; intervals: Interval[] } {
  const texts: string[] = [];
  const intervals: Interval[] = [];
  for (const { named, by, when, within } of scheme.classes) {
    for (const condition of [named, by, when, within]) {
      const wanted = condition?.[fact];
      if (wanted === undefined) continue;
      if (isNumberFact(fact)) intervals.push(wanted as Interval);
      else texts.push(...labels(wanted as string));
    }
  }
  return { texts: [...new Set(texts)], intervals };
}
