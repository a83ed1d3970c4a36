import { provenances, shown, VeladisError } from "../core/index";
import { slipOf } from "./confirm-slips";
import type { LimitPlace } from "./confirmable-limits";
import type { Confirmation } from "./confirmation";

/** What slip of the line a value looks like: the same limit of another row; undefined for none. */
function otherLine(place: LimitPlace, printed: number, places: readonly LimitPlace[]): string | undefined {
  const { limit, as, row } = place;
  const other = places.find(
    (one) => one.row !== row && one.limit === limit && one.as === as && one.shipped === printed,
  );
  return other && `is ${limit} of the row ${shown(other.row)}: looks like a slip of the line`;
}

/**
 * Refuses a value that cannot be taken as it is: of a limit that is confirmed already, read from a sheet of another
 * version, one that looks like a slip and was not read again, and one that raises a limit on one person's word.
 *
 * @param places - all of the table, among which a line may have been mistaken for another
 *
 * @throws {@link VeladisError} `out-of-range`, `missing-fact`
 */
export function requireConfirmable(
  place: LimitPlace,
  one: Confirmation,
  at: string,
  places: readonly LimitPlace[],
): void {
  const { shipped, as, source, limit } = place;
  const { printed } = one;
  if (source.provenance === "confirmed") {
    throw new VeladisError("out-of-range", {
      expected: `${at}: a limit that is not confirmed yet; to change it, confirm the scheme as shipped anew`,
      received: `${limit} ${shipped} ${as}, confirmed by ${source.by}`,
    });
  }
  if (one.shipped !== undefined && one.shipped !== shipped) {
    throw new VeladisError("out-of-range", {
      expected: `${at}: the value that the table has, ${shipped} ${as}: print a new check sheet`,
      received: `${one.shipped} on the sheet`,
    });
  }
  const isSquared = "part" in place.at && place.at.part === "root of";
  const slip =
    printed === shipped ? undefined : (otherLine(place, printed, places) ?? slipOf(printed, shipped, isSquared));
  if (slip !== undefined && one.reread !== true) {
    throw new VeladisError("out-of-range", {
      expected: `${at}: the value as printed, near ${shipped} ${as}, or reread to say that the page was read again and prints it so`,
      received: `${printed}, which ${slip}`,
    });
  }
  if (printed > shipped && one.second === undefined) {
    throw new VeladisError("missing-fact", {
      expected: `${at}: second, the name of another person who read it, since ${printed} ${as} raises the limit of ${shipped}`,
      received: "one name",
    });
  }
}

/** The difference between a printed value and the one in the table, as every answer tells it; undefined for none. */
export function differenceText(
  { row, limit, shipped, as, provenance }: LimitPlace,
  printed: number,
): string | undefined {
  if (printed === shipped) return undefined;
  const { cell } = provenances[provenance];
  const raise = printed > shipped ? ": this RAISES the limit" : "";
  return `${shown(row).slice(1, -1)}, ${limit}: the copy prints ${printed} ${as}, the table as shipped has ${shipped} (${cell})${raise}`;
}
