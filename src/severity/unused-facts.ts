import { standardText } from "./edition-text";
import { factText } from "./fact-text";
import { type Fact, facts } from "./facts";
import type { FactValue, KnownFacts } from "./machine";
import type { Condition, Scheme } from "./scheme";
import { factsOf } from "./verdict";

const used = /* @__PURE__ */ new WeakMap<Scheme, ReadonlySet<Fact>>();

/** The facts that a scheme asks for or bounds anywhere. */
function usedFacts(scheme: Scheme): ReadonlySet<Fact> {
  let found = used.get(scheme);
  if (found === undefined) {
    const { within, exclusions = [], classes } = scheme;
    const conditions: (Condition | undefined)[] = [
      within,
      ...exclusions.map(({ when }) => when),
      ...classes.flatMap((one) => [one.named, one.by, one.when, one.within]),
    ];
    const byHeight = classes.some(({ criteria }) => criteria.some(({ height }) => height !== undefined));
    found = new Set([...conditions.flatMap(factsOf), ...(byHeight ? (["height"] as const) : [])]);
    used.set(scheme, found);
  }
  return found;
}

/** Facts that are told apart elsewhere: the kind of machine and the place choose the scheme, the speed decides bounds. */
const elsewhere: readonly Fact[] = ["type", "place", "condition", "speed", "naturalFrequency"];

const isFan = ({ type }: KnownFacts): boolean => type === undefined || type === "fan";

/** What was given of the machine and plays no part in a scheme, in words: nothing given is ignored in silence. */
export function unusedFacts(scheme: Scheme, known: KnownFacts): string[] {
  const asked = usedFacts(scheme);
  const sized = asked.has("power") || asked.has("shaftHeight");
  const { standard, edition } = scheme;
  return (
    (Object.keys(known) as Fact[])
      .filter((fact) => !asked.has(fact) && !elsewhere.includes(fact))
      // a frame that the shaft height told is named with it
      .filter((fact) => !(fact === "frame" && known.shaftHeight !== undefined))
      .filter((fact) => !(fact === "support" && asked.has("mounting")))
      // the application of a fan told the category
      .filter((fact) => !(fact === "application" && asked.has("category") && isFan(known)))
      .filter((fact) => !(sized && (fact === "power" || fact === "shaftHeight")))
      .map((fact) => {
        const entry = facts[fact];
        const value = known[fact] as FactValue;
        const text = "unit" in entry && typeof value !== "string" ? factText(value, entry.unit) : value;
        return `${fact} ${text}: plays no part in ${standardText({ standard, edition })}`;
      })
  );
}
