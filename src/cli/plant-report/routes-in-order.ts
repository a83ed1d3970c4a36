import { counted, shown, VeladisError } from "../../core/index";
import { pointKey, type RouteReading } from "../../plant/index";

/** A route with the name of its file. */
export interface NamedRoute {
  readonly file: string;
  readonly read: { readonly route: readonly RouteReading[] };
}

/** The latest day that a route says; undefined for one that says none. */
function latestDay({ read }: NamedRoute): string | undefined {
  return read.route.reduce<string | undefined>((last, { date }) => {
    return date !== undefined && (last === undefined || date > last) ? date : last;
  }, undefined);
}

/** Refuses a point that an earlier route has on the same day as a later one, or after it: an older reading would stand as its last. */
function requireLater(routes: readonly NamedRoute[]): void {
  const known = new Map<string, { readonly file: string; readonly date: string }>();
  for (const { file, read } of routes) {
    const own = new Map<string, string>();
    for (const row of read.route) {
      const { tag, point = "", line, date } = row;
      if (date === undefined) continue;
      const key = pointKey(row);
      const before = known.get(key);
      if (before !== undefined && before.date >= date) {
        throw new VeladisError("out-of-range", {
          expected: "routes of which each has the readings of a point on later days than those before it",
          received: `${[tag, point].filter(Boolean).join(" ")} on ${date} (${file}, line ${line}) and on ${before.date} (${before.file})`,
          option: "route",
        });
      }
      const last = own.get(key);
      if (last === undefined || date > last) own.set(key, date);
    }
    for (const [key, date] of own) known.set(key, { file, date });
  }
}

/**
 * Routes by their days, the latest at the end, in whatever order they were given; where none says a day, as they were given.
 *
 * @throws {@link VeladisError} `missing-fact` where some say a day and others none, `out-of-range` for two that end on one
 *   day, and for a point that an earlier route has no earlier
 */
export function routesInOrder<Route extends NamedRoute>(given: readonly Route[]): readonly Route[] {
  const days = given.map(latestDay);
  const undated = given.filter((_, i) => days[i] === undefined);
  if (undated.length === given.length) return given;
  if (undated.length > 0) {
    throw new VeladisError("missing-fact", {
      expected: "a column date on every route: the last one is judged, and its days tell which that is",
      received: `${counted(undated.length, "route")} without a day: ${undated.map(({ file }) => shown(file)).join(", ")}`,
      option: "route",
    });
  }
  const dated = given.map((one, i) => ({ one, day: days[i] as string }));
  const sorted = dated.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  const ordered = sorted.map(({ one }) => one);
  for (const [i, { one, day }] of sorted.entries()) {
    const next = sorted[i + 1];
    if (next?.day !== day) continue;
    throw new VeladisError("out-of-range", {
      expected: "routes that end on different days: the last one is judged",
      received: `${shown(one.file)} and ${shown(next.one.file)}, both up to ${day}`,
      option: "route",
    });
  }
  requireLater(ordered);
  return ordered;
}
