import { limitsListed } from "../reading/index";
import type { OwnLimits } from "../setpoints/index";
import { type SchemeRef, schemeById } from "../severity/index";
import { type CellOptions, pointed } from "./cell-readers";

/** Where limits of the maker or the site come from, where the row does not say it. */
export const UNSAID_SOURCE = "a source that the list does not name";

const LIMITS = 'limits B/C and C/D such as "4.5, 7.1 mm/s rms"';

/** Limits of the maker or the site, as a cell lists them. */
export function ownLimits(cell: string, source: string | undefined, options: CellOptions): OwnLimits {
  const { limits } = limitsListed(pointed(cell, options), [2], LIMITS);
  const [lower, upper] = limits;
  return { "B/C": lower, "C/D": upper, source: source ?? UNSAID_SOURCE } as OwnLimits;
}

/** The id of the table that a cell names. */
export function tableId(cell: string, schemes: readonly SchemeRef[] | undefined): string {
  const given = schemes?.find((one) => (typeof one === "string" ? one : one.id).toLowerCase() === cell.toLowerCase());
  if (given !== undefined) return typeof given === "string" ? given : given.id;
  return schemeById(cell).id;
}
