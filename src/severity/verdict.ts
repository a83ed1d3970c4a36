import { type Fact, isNumberFact, type TextFact } from "./facts";
import { contains, type Interval, isBeyond } from "./interval";
import { labelKey } from "./label";
import type { FactValue, KnownFacts } from "./machine";
import { labels } from "./machine-class";
import { kindsOf } from "./machine-types";
import type { Condition, Scheme } from "./scheme";

/** What a fact says of a condition. */
export type Verdict = "met" | "unmet" | "unknown";

/** Mountings that leave a machine free to move, by the words that schemes print. */
const soft = /* @__PURE__ */ new Set(["free", "freesuspension", "resilient", "elastic", "flexible"]);

/** A label as it is compared: of a support or a mounting, all words for a soft one are one. */
function keyOf(fact: TextFact, label: string): string {
  const key = labelKey(label);
  return (fact === "support" || fact === "mounting") && soft.has(key) ? "flexible" : key;
}

/** True where two labels of a fact mean the same. */
export function labelsAgree(fact: TextFact, one: string, other: string): boolean {
  return one === other || keyOf(fact, one) === keyOf(fact, other);
}

/** A fact of the machine. A support stands in for the mounting on a test bed; that says nothing of the support on site. */
export function factOf(fact: Fact, known: KnownFacts): FactValue | undefined {
  return known[fact] ?? (fact === "mounting" ? known.support : undefined);
}

/** Whether a number, or a range of which all values are possible, lies in an interval. */
function ofNumber(interval: Interval, given: number | readonly [number, number]): Verdict {
  if (typeof given === "number") return contains(interval, given) ? "met" : "unmet";
  const [low, high] = given;
  if (contains(interval, low) && contains(interval, high) && interval.oneOf === undefined) return "met";
  return isBeyond(interval, low, high) ? "unmet" : "unknown";
}

/** Whether a machine meets a condition on one fact. */
export function verdict(condition: Condition, fact: Fact, known: KnownFacts): Verdict {
  const given = factOf(fact, known);
  if (given === undefined) return "unknown";
  if (isNumberFact(fact)) return ofNumber(condition[fact] as Interval, given as number);
  const wanted = labels(condition[fact as TextFact] as string);
  const own = fact === "type" ? kindsOf(given as string) : [given as string];
  const isMet = wanted.some((label) => own.some((one) => labelsAgree(fact as TextFact, label, one)));
  return isMet ? "met" : "unmet";
}

/** True for a scheme that is for machines of a kind, of the wider kind that it belongs to, or for any. */
export function isForKind({ machines }: Scheme, type: FactValue | undefined): boolean {
  if (machines === undefined) return true;
  return type !== undefined && kindsOf(type as string).some((kind) => (machines as readonly string[]).includes(kind));
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
