import { same, shown, VeladisError } from "../core/index";
import { factText } from "./fact-text";
import {
  type CategoriesByPower,
  edgesInHorsepower,
  type FanApplication,
  fanApplications,
  fanCategoryRule,
} from "./fan-applications";
import { intervalText, isBeyond } from "./interval";
import { labelKey } from "./label";
import type { KnownFacts } from "./machine";
import { kilowattsPer } from "./size";

/** A power in kW, one of exactly an edge in horsepower as the edge in kW: 5 hp is 3.73 kW, and not beyond 3.7 kW. */
function powerAtEdges(power: number): number {
  return edgesInHorsepower.find(([horsepower]) => same(power, horsepower * kilowattsPer.hp))?.[1] ?? power;
}

/**
 * The categories that a fan may have by its application, and as far as it is known by its power; undefined where no
 * application is told.
 */
function openCategories({ type, application, power }: KnownFacts): CategoriesByPower | undefined {
  if ((type !== undefined && type !== "fan") || application === undefined) return undefined;
  const [low, high] = (
    power === undefined ? [1e-9, Number.MAX_VALUE] : [power, power].flat().map((one) => powerAtEdges(one as number))
  ) as [number, number];
  const row: CategoriesByPower = fanApplications[application as FanApplication];
  return row.filter(([, range]) => !isBeyond(range, low, high));
}

/** False for categories that the application of a fan and its power rule out. */
export function mayBeCategory(known: KnownFacts, wanted: readonly string[]): boolean {
  const open = openCategories(known);
  return open === undefined || open.some(([one]) => wanted.some((label) => labelKey(label) === labelKey(one)));
}

/** What the application of a fan and its power tell of the category, with how. */
export interface ToldCategory {
  /** Left out where more than one is open. */
  readonly category?: string;
  /** In words: what tells it, and where the table was read. */
  readonly text: string;
}

/**
 * The category of a fan by its application, or those that the power leaves open; undefined where no application is told.
 *
 * @throws {@link VeladisError} `out-of-range` for a category that is told and contradicts it
 */
export function toldCategory(known: KnownFacts): ToldCategory | undefined {
  const open = openCategories(known);
  if (open === undefined) return undefined;
  const { application, category, power } = known;
  const { title, where, provenance } = fanCategoryRule.source;
  const by = `${where} of ${title}, ${provenance}`;
  if (category !== undefined) {
    if (open.some(([one]) => labelKey(one) === labelKey(String(category)))) return undefined;
    const size = power === undefined ? "" : ` of ${factText(power as number, "kW")}`;
    throw new VeladisError("out-of-range", {
      expected: `a category that agrees with the application ${application}${size}: ${open.map(([one]) => one).join(" or ")} (${by})`,
      received: shown(category),
      option: "category",
    });
  }
  const [only, second] = open;
  if (only === undefined) return undefined;
  if (second !== undefined) {
    const size = power === undefined ? "" : `, power ${factText(power as number, "kW")}`;
    return { text: `category ${open.map(([one]) => one).join(" or ")}: by application ${application}${size} (${by})` };
  }
  const [told, range] = only;
  const size = Object.keys(range).length === 0 ? "" : `, power ${intervalText(range, "kW")}`;
  return { category: told, text: `category ${told}: by application ${application}${size} (${by})` };
}

/** The facts of a machine with the category that the application of a fan tells. */
export function withCategory(known: KnownFacts): KnownFacts {
  const told = toldCategory(known);
  return told?.category === undefined ? known : { ...known, category: told.category };
}
