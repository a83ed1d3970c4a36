import { nearest, shown, unknownOption, VeladisError } from "../core/index";
import { parsedType } from "../reading/index";
import type { LimitPlace } from "./confirmable-limits";
import type { Confirmation } from "./confirmation";
import type { Scheme } from "./scheme";

const keyOf = (text: string): string => text.toLowerCase().replace(/\s+/g, " ").trim();

/** The rows nearest to one that there is none of: spelled nearly so, else those that share most of its words. */
function nearRows(row: string, rows: readonly string[]): string[] {
  const close = nearest(row, rows);
  if (close.length > 0) return close;
  const words = new Set(
    keyOf(row)
      .slice(0, 200)
      .split(/[\s,]+/),
  );
  const shared = (other: string): number =>
    keyOf(other)
      .split(/[\s,]+/)
      .filter((word) => words.has(word)).length;
  return rows
    .map((other) => [other, shared(other)] as const)
    .filter(([, count]) => count > 1)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 3)
    .map(([other]) => other);
}

/** The row, by its words. */
function inRow({ row }: Confirmation, places: readonly LimitPlace[], at: string): readonly LimitPlace[] {
  const found = places.filter((one) => keyOf(one.row) === keyOf(row));
  if (found.length > 0) return found;
  const rows = [...new Set(places.map((one) => one.row))];
  throw new VeladisError("unknown-option", {
    expected: `${at}: a row of the table`,
    received: shown(row),
    option: "row",
    didYouMean: nearRows(row, rows),
    allowed: rows,
  });
}

/** What a type is written in, in its plain spelling; the text itself where it is none. */
function typeText(as: string): string {
  try {
    return parsedType(as).type;
  } catch (error) {
    if (error instanceof VeladisError) return as;
    throw error;
  }
}

/**
 * The place in the scheme that a confirmation names.
 *
 * @throws {@link VeladisError} `unknown-option` for another scheme, another edition, a row, a limit or a unit that the
 *   table has not, with those that it has
 */
export function confirmedPlace(
  scheme: Scheme,
  places: readonly LimitPlace[],
  one: Confirmation,
  at: string,
): LimitPlace {
  const { id, edition } = scheme;
  if (keyOf(one.scheme) !== keyOf(id))
    throw unknownOption(one.scheme, [id], `${at}: the scheme that is confirmed`, { option: "scheme" });
  if (keyOf(one.edition) !== keyOf(edition)) {
    throw new VeladisError("unknown-option", {
      expected: `${at}: the edition of the scheme, since another edition is another table`,
      received: shown(one.edition),
      option: "edition",
      allowed: [edition],
    });
  }
  const row = inRow(one, places, at);
  const named = row.filter(({ limit }) => keyOf(limit) === keyOf(one.limit));
  if (named.length === 0) {
    const limits = [...new Set(row.map(({ limit }) => limit))];
    throw unknownOption(one.limit, limits, `${at}: a limit of the row ${shown(row[0]?.row)}`, { option: "limit" });
  }
  const type = typeText(one.as);
  const found = named.find(({ as }) => as === type);
  if (found !== undefined) return found;
  const types = named.map(({ as }) => as);
  throw unknownOption(one.as, types, `${at}: unit and detector of the table (as)`, { option: "as" });
}
