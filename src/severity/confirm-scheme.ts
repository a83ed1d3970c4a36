import { frozen, requireList, shown, VeladisError, withParameters } from "../core/index";
import { asChecked } from "./checked";
import { confirmedCriterion, type Placed } from "./confirm-criterion";
import { confirmedPlace } from "./confirm-place";
import { requireRising } from "./confirm-rising";
import { requireConfirmable } from "./confirm-value";
import { limitPlaces } from "./confirmable-limits";
import { type Confirmation, checkedConfirmation } from "./confirmation";
import type { SchemeKind } from "./kinds";
import type { Criterion, Scheme } from "./scheme";
import { type IdOf, type KindOf, type SchemeRef, schemeOf } from "./scheme-of";

/** Where a confirmation stands, for refusals: as it says itself, else its number. */
export function placeOf(given: unknown, i: number): string {
  const readAt = (given as Partial<Confirmation> | null | undefined)?.readAt;
  return typeof readAt === "string" && readAt.trim() !== "" ? readAt.slice(0, 120) : `confirmation ${i + 1}`;
}

/** The confirmations with the places that they name, each limit once. */
function placedIn(
  scheme: Scheme,
  confirmations: readonly Confirmation[],
): { placed: Placed[]; places: ReturnType<typeof limitPlaces> } {
  const places = limitPlaces(scheme);
  const seen = new Map<object, string>();
  const placed = confirmations.map((given, i): Placed => {
    const at = placeOf(given, i);
    const one = checkedConfirmation(given, at);
    const place = confirmedPlace(scheme, places, one, at);
    const before = seen.get(place);
    if (before !== undefined) {
      throw new VeladisError("out-of-range", {
        expected: `${at}: each limit once`,
        received: `${shown(place.limit)} of the row ${shown(place.row)} again, after ${before}`,
      });
    }
    seen.set(place, at);
    requireConfirmable(place, one, at, places);
    return { one, place, at };
  });
  return { placed, places };
}

/**
 * A scheme whose limits were checked by a person against their own printed copy.
 *
 * Each limit named has the value that the copy prints, a source with provenance `confirmed`, and who read it, when and
 * on which page. Where the copy prints another value than the table, the printed one governs, and every answer by it
 * says so first of its cautions. Answers that rest on confirmed limits alone are `verified`. All or nothing: one
 * confirmation that is refused refuses them all.
 *
 * The scheme keeps its id, and is plain data as {@link defineScheme} makes it: `JSON.stringify` writes it, and the copy
 * that `JSON.parse` gives back is taken wherever a scheme is. For the choice of schemes by the facts of a machine, see
 * {@link confirmedSchemes}.
 *
 * @param scheme - the id of a built-in scheme, or a scheme
 * @param confirmations - limits by the names that {@link confirmableLimits} gives them
 * @throws {@link VeladisError} `unknown-option` for another edition and for a row, limit or unit that the table has not;
 *   `out-of-range` for a limit named twice or confirmed before, limits of a row that do not rise, a day in the future, and
 *   a value that looks like a slip (by a power of ten, 25.4, 17.96, 9.81, 39.37, 2, root 2 or 2 root 2 beside the table's,
 *   rounded perhaps, or by more than 1.5; or the same limit of another row) without `reread`;
 *   `missing-fact` without page, name or day, without the second name for a value that raises a limit, and for one of two
 *   numbers that stand together; `syntax`, `wrong-type`, `not-positive`
 * @example
 * ```ts
 * import { classify, confirmScheme } from "veladis/severity";
 *
 * const read = { scheme: "iso-10816-7-2009", edition: "2009", row: "category II, power up to 200 kW", as: "mm/s rms" };
 * const signed = { page: "12", by: "J. Example", on: "2024-03-04" };
 * const scheme = confirmScheme("iso-10816-7-2009", [
 *   { ...read, limit: "A/B", printed: 3.2, ...signed },
 *   { ...read, limit: "B/C", printed: 5.1, ...signed },
 *   { ...read, limit: "C/D", printed: 8.3, ...signed },
 * ]);
 * const { zone, verified, confirmed, cautions } = classify("4.1 mm/s rms", { scheme, machine: "pump 90 kW category II 2980 r/min" });
 * zone; // => "B"
 * verified; // => true
 * confirmed; // => ["confirmed by J. Example, 2024-03-04, p. 12"]
 * cautions[0]?.split(": ")[2]; // => "the copy prints 8.3 mm/s rms, the table as shipped has 8.5 (reported)"
 * confirmScheme(scheme, [{ ...read, limit: "A/B", printed: 3.2, ...signed }]); // throws out-of-range
 * confirmScheme("iso-10816-7-2009", [{ ...read, edition: "2018", limit: "A/B", printed: 3.2, ...signed }]); // throws unknown-option
 * ```
 */
export function confirmScheme<const S extends SchemeRef>(
  scheme: S,
  confirmations: readonly Confirmation[],
): Scheme<KindOf<S>, IdOf<S>> {
  return withParameters({ scheme, confirmations }, () => {
    const known: Scheme<SchemeKind> = schemeOf(scheme);
    const { placed, places } = placedIn(
      known,
      requireList(confirmations, "confirmations as a list", { parameter: "confirmations" }),
    );
    const byCriterion = new Map<Criterion, Placed[]>();
    for (const one of placed) {
      const [first] = one.place.criteria as [Criterion];
      byCriterion.set(first, [...(byCriterion.get(first) ?? []), one]);
    }
    const changed = new Map<Criterion, Criterion>();
    for (const [criterion, given] of byCriterion) {
      const made = confirmedCriterion(known, criterion, given, places);
      requireRising(known, made, given);
      // a criterion of every row stays one, so that it is counted once
      for (const one of (given[0] as Placed).place.criteria) changed.set(one, made);
    }
    const classes = known.classes.map(({ criteria, ...rest }) => ({
      ...rest,
      criteria: criteria.map((one) => changed.get(one) ?? one),
    }));
    return frozen(asChecked({ ...known, classes })) as Scheme as Scheme<KindOf<S>, IdOf<S>>;
  });
}
