import { shown, VeladisError } from "../core/index";
import { factText } from "./fact-text";
import { type CategoriesByPower, type FanApplication, fanCategoryRule } from "./fan-applications";
import { intervalText, isBeyond } from "./interval";
import { labelKey } from "./label";
import type { KnownFacts } from "./machine";

/** The highest power in kW of a category told without an application: any application but a residence ends there. */
const MOST_OF_BV_2 = 3.7;

function refuse(expected: string, received: string): never {
  throw new VeladisError("out-of-range", { expected, received });
}

function requireSmall({ category, power }: KnownFacts): void {
  if (typeof category !== "string" || labelKey(category) !== labelKey("BV-2") || power === undefined) return;
  const least = typeof power === "object" ? (power[0] as number) : (power as number);
  if (least <= MOST_OF_BV_2) return;
  refuse(
    `a fan whose category and power agree: BV-2 to ${MOST_OF_BV_2} kW, or above it with "residential"`,
    `category ${category}, power ${factText(power as number, "kW")}`,
  );
}

/** The category that the application of a fan and its power tell, with how. */
export interface ToldCategory {
  readonly category: string;
  /** In words: what tells it, and where the table was read. */
  readonly text: string;
}

/**
 * The category of a fan by its application; undefined where none is told, or where the power leaves several open.
 *
 * @throws {@link VeladisError} `out-of-range` for a category that is told and contradicts it
 */
export function toldCategory(known: KnownFacts): ToldCategory | undefined {
  const { type, application, category, power } = known;
  if (type !== "fan") return undefined;
  if (application === undefined) {
    requireSmall(known);
    return undefined;
  }
  const [low, high] = power === undefined ? [1e-9, Number.MAX_VALUE] : ([power, power].flat() as number[]);
  const row: CategoriesByPower = fanCategoryRule.applications[application as FanApplication];
  const open = row.filter(([, range]) => !isBeyond(range, low as number, Math.max(high as number, low as number)));
  const { title, where, provenance } = fanCategoryRule.source;
  const by = `${where} of ${title}, ${provenance}`;
  if (category !== undefined) {
    if (open.some(([one]) => labelKey(one) === labelKey(String(category)))) return undefined;
    const those = open.map(([one]) => one).join(" or ");
    const size = power === undefined ? "" : ` of ${factText(power as number, "kW")}`;
    refuse(`a category that agrees with the application ${application}${size}: ${those} (${by})`, shown(category));
  }
  const [only, second] = open;
  if (only === undefined || second !== undefined) return undefined;
  const [told, range] = only;
  const size = Object.keys(range).length === 0 ? "" : `, power ${intervalText(range, "kW")}`;
  return { category: told, text: `category ${told}: by application ${application}${size} (${by})` };
}

/** The facts of a machine with the category that the application of a fan tells. */
export function withCategory(known: KnownFacts): KnownFacts {
  const told = toldCategory(known);
  return told === undefined ? known : { ...known, category: told.category };
}
