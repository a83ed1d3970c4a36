import { VeladisError } from "../core/index";
import type { Placed } from "./confirm-criterion";
import { namesOf } from "./limit";
import type { Criterion, LimitValue, Scheme } from "./scheme";

/** A limit as numbers to compare: what it grows with, and where it stops. */
function sizeOf(limit: number | Exclude<LimitValue, number | null>): [number, number] {
  return typeof limit === "number"
    ? [limit, Number.POSITIVE_INFINITY]
    : [limit.rootOf, limit.atMost ?? Number.POSITIVE_INFINITY];
}

function textOf(limit: LimitValue): string {
  if (typeof limit === "number" || limit === null) return `${limit}`;
  const { rootOf, atMost } = limit;
  return `root(${rootOf}/n)${atMost === undefined ? "" : ` at most ${atMost}`}`;
}

/**
 * Refuses limits of one row that do not rise after confirmation: one of them was read from another row.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireRising(scheme: Scheme, criterion: Criterion, given: readonly Placed[]): void {
  const [{ place, at }] = given as [Placed];
  const told = (texts: readonly string[]): VeladisError =>
    new VeladisError("out-of-range", {
      expected: `${at}: limits of the row ${JSON.stringify(place.row)} that rise, in ${criterion.as}; is one of them read from another row?`,
      received: texts.join(", "),
    });
  const present = namesOf(scheme).flatMap((name) => {
    const limit = criterion.limits[name] ?? null;
    return limit === null ? [] : [{ name, limit, size: sizeOf(limit) }];
  });
  const falls = present.some(({ size }, i) => {
    const before = present[i - 1]?.size;
    return before !== undefined && !(size[0] > before[0] && size[1] >= before[1]);
  });
  if (falls) throw told(present.map(({ name, limit }) => `${name} ${textOf(limit)}`));
  const { ceilings } = criterion;
  // those that nobody confirmed are told of beside the limit that they contradict
  if (ceilings?.source.provenance !== "confirmed") return;
  // a setting may be above the zone that it is set by, never below its lower end
  const [alarm, trip] = [criterion.limits["B/C"], criterion.limits["C/D"]];
  const isBelow =
    (typeof alarm === "number" && ceilings.alarm < alarm) || (typeof trip === "number" && ceilings.trip < trip);
  if (ceilings.alarm < ceilings.trip && !isBelow) return;
  throw told([
    ...present.map(({ name, limit }) => `${name} ${textOf(limit)}`),
    `alarm at most ${ceilings.alarm}`,
    `trip at most ${ceilings.trip}`,
  ]);
}
