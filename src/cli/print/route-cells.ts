import type { RouteChange, RouteVerdict } from "../../plant/index";
import { format, significant } from "../../reading/index";

/** The zones of a verdict, without the word before a letter. */
export function zoneCell({ headline }: Pick<RouteVerdict, "headline">): string {
  return headline.replace(/^zone /, "");
}

/** A reading with its unit. */
export function readingCell({ reading }: Pick<RouteVerdict, "reading">, digits: number): string {
  return format(reading, { digits });
}

/** The limit that ends the zone upwards, or the last one that is exceeded. */
export function limitCell({ limit }: Pick<RouteVerdict, "limit">, digits: number): string {
  return `${limit.name} ${significant(limit.value, digits)}`;
}

/** The reading in percent of that limit. */
export function shareCell({ margin }: Pick<RouteVerdict, "margin">): string {
  return `${significant(100 / margin.ratio, 3)} %`;
}

/** A change with its sign; a star behind a significant one, a question mark where that is not known. */
export function changeCell(change: RouteChange | null, digits: number): string {
  if (change === null) return "";
  const mark = change.significant === null ? " ?" : change.significant ? " *" : "";
  const size = significant(Math.abs(change.change), digits);
  return `${change.direction === "rise" ? "+" : change.direction === "fall" ? "-" : ""}${size}${mark}`;
}
