import { frozen, same } from "../core/index";
import { factText } from "./fact-text";
import { edgesInHorsepower } from "./fan-applications";
import { contains, type Interval } from "./interval";
import type { KnownFacts } from "./machine";
import type { Condition, Scheme } from "./scheme";
import { kilowattsPer } from "./size";
import { factsOf, verdict } from "./verdict";

/** Rated outputs in kW beside which tables put a round horsepower: 75 beside 100 hp (after IEC 60072-1, from memory). */
// biome-ignore format: a row of a table is a line
const preferred = /* @__PURE__ */ frozen([
  0.06, 0.09, 0.12, 0.15, 0.18, 0.25, 0.37, 0.55, 0.75, 1, 1.1, 1.5, 2.2, 3, 3.7, 4, 5.5, 7.5,
  11, 15, 18.5, 20, 22, 30, 37, 40, 45, 55, 75, 90,
  100, 110, 132, 150, 160, 185, 200, 220, 250, 280, 300, 315, 335, 355, 375, 400, 450, 500, 560, 630, 710, 750, 800, 900,
  1000, 1500, 2000, 2500, 3000, 4000, 5000, 10_000, 20_000, 40_000, 50_000,
] as const);

/** How far a round horsepower and the output beside it are apart at most (common practice, no source). */
const ROUNDING = 0.02;

const horsepowers = /* @__PURE__ */ frozen(["hp", "PS"] as const);

/** A power given in horsepower: how many, of which, and in kW what the trade's tables or a scheme put beside it. */
interface Horsepower {
  readonly written: string;
  readonly beside: readonly number[];
}

/** What a power in kW is in horsepower, where that is a round one; undefined for any other. */
function horsepowerOf(power: number, isFan: boolean): Horsepower | undefined {
  for (const unit of horsepowers) {
    const each = kilowattsPer[unit];
    const count = Math.round((power / each) * 2) / 2;
    if (count < 0.5 || !same(count * each, power)) continue;
    const isBeside = (one: number): boolean =>
      Math.abs(one - power) <= ROUNDING * power &&
      [1, 2, 3].some((digits) => Number((one / each).toPrecision(digits)) === count);
    const printed = edgesInHorsepower.filter(([horsepower]) => isFan && unit === "hp" && horsepower === count);
    const beside = new Set([...preferred.filter(isBeside), ...printed.map(([, kilowatts]) => kilowatts)]);
    return beside.size === 0 ? undefined : { written: `${count} ${unit}`, beside: [...beside].sort((a, b) => a - b) };
  }
  return undefined;
}

/** All that a scheme asks of the power of such a machine. */
function powersOf({ within, exclusions = [], classes }: Scheme, known: KnownFacts): Interval[] {
  const conditions: (Condition | undefined)[] = [
    within,
    ...exclusions.map(({ when }) => when),
    ...classes.flatMap((one) => [one.named, one.by, one.when, one.within]),
  ];
  return conditions.flatMap((one) => {
    if (one?.power === undefined) return [];
    const isOfOther = factsOf(one).some((fact) => fact !== "power" && verdict(one, fact, known) === "unmet");
    return isOfOther ? [] : [one.power];
  });
}

/** Facts in which a power stands for two where that decides, and what is said of it. */
export interface NominalFacts {
  readonly known: KnownFacts;
  readonly assumed: readonly string[];
}

/**
 * The facts with a round horsepower as a range, where its exact value and an output in kW that tables put beside it
 * lie on different sides of an edge of these schemes: 270 hp is 201.3 kW, and stands beside 200 kW. As any range it is
 * judged on the safe side.
 */
export function withNominalPower(schemes: readonly Scheme[], known: KnownFacts): NominalFacts {
  const { power, type } = known;
  const found = typeof power === "number" ? horsepowerOf(power, type === "fan") : undefined;
  if (found === undefined) return { known, assumed: [] };
  const all = [power as number, ...found.beside];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const isApart = (one: Interval): boolean => contains(one, low) !== contains(one, high);
  if (!schemes.some((scheme) => powersOf(scheme, known).some(isApart))) return { known, assumed: [] };
  const { written, beside } = found;
  const text = `power ${factText([low, high], "kW")}: ${written} is ${factText(power as number, "kW")}, and stands beside ${beside.join(" or ")} kW in tables`;
  return { known: { ...known, power: [low, high] }, assumed: [text] };
}
