import { type Fact, facts, type KnownFacts } from "../../severity/index";

/** What some labels are called before them; the others say by themselves what they are. */
const named: readonly Fact[] = ["support", "mounting", "group", "class", "category", "grade", "part", "band", "region"];

/** How a number of a machine is called. */
const numbers: { readonly [F in Fact]?: string } = {
  shaftHeight: "shaft height ",
  height: "measured at a height of ",
  naturalFrequency: "natural frequency ",
};

function factText(fact: Fact, value: KnownFacts[Fact]): string {
  const entry = facts[fact];
  if (!("unit" in entry)) return named.includes(fact) ? `${fact} ${value}` : `${value}`;
  const size = [value].flat().map((one) => (typeof one === "number" ? `${Number(one.toPrecision(4))}` : one));
  return `${numbers[fact] ?? ""}${size.join(" to ")} ${entry.unit}`;
}

/** The facts of a machine as they were understood, on one line; empty for none. */
export function machineLine(known: KnownFacts): string {
  const all = (Object.keys(facts) as Fact[]).filter((fact) => known[fact] !== undefined);
  return all.map((fact) => factText(fact, known[fact])).join(", ");
}
