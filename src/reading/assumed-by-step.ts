import type { Assumption } from "./assumptions";
import { parsedType } from "./parsed-type";
import type { Step } from "./step";

/** What a conversion says that carries a reading to another quantity as a bound: it takes no vibration of one frequency. */
export const BOUND_NOTE = "a bound: nothing below running speed";

/** What a conversion assumes by the types it goes between. */
function ofConversion({ of = [], type, crestFactor, note }: Step, before: readonly Step[]): Assumption[] {
  const from = parsedType((before[of[0] as number] as Step).type);
  const to = parsedType(type);
  const related = from.pi !== to.pi || from.rootTwo !== to.rootTwo;
  return [
    ...(from.order === to.order || note === BOUND_NOTE ? [] : (["one-frequency"] as const)),
    ...(related ? [crestFactor === undefined ? ("sine" as const) : ("crest-factor" as const)] : []),
  ];
}

/** What a step assumes by what it does, whatever it says of it; nothing where that does not decide. */
function decided(step: Step, before: readonly Step[]): readonly Assumption[] {
  if (step.does === "convert") return ofConversion(step, before);
  if (step.does === "vector difference") return ["one-frequency"];
  return step.does === "rss" || step.does === "rss difference" ? ["uncorrelated"] : [];
}

/** What a step from outside assumed: what it says, and what it cannot have done without. */
export function assumedByStep(step: Step, before: readonly Step[]): readonly Assumption[] {
  const { assumed = [] } = step;
  const lost = decided(step, before).filter((one) => !assumed.includes(one));
  return lost.length === 0 ? assumed : [...lost, ...assumed];
}
