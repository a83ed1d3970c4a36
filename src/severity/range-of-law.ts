import type { PlacedMachine } from "./placed-machine";

/** The speeds in r/min that a scheme was taken for, where limits fall with a speed that nobody gave; else undefined. */
export function rangeOfLaw({
  given,
  facts,
  chosen,
}: Pick<PlacedMachine, "given" | "facts" | "chosen">): readonly [low: number, high: number] | undefined {
  if (given.speed !== undefined || typeof facts.speed !== "object") return undefined;
  const isLaw = chosen.criteria.some(({ limits }) =>
    Object.values(limits).some((one) => typeof one === "object" && one !== null),
  );
  return isLaw ? facts.speed : undefined;
}
