import { cached, shown, VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { knownDay } from "./known-day";
import type { RouteMachine } from "./route-basis";
import { factNotes } from "./route-facts";
import { requireNamed } from "./route-point";
import { type RouteReading, routeAmplitude } from "./route-reading";

/** A name of a point as it is compared: without regard to case and white space. */
export const plainPoint = /* @__PURE__ */ cached((point) => point.trim().replace(/\s+/g, " ").toLowerCase(), {
  room: 10_000,
});

/** What two readings of one point of one machine have in common. */
export function pointKey({ tag, point = "" }: Pick<RouteReading, "tag" | "point">): string {
  return `${tag}\n${plainPoint(point)}`;
}

/** The reading of a point on an earlier route; `isTwice` where two of one day stand there, and neither counts. */
export interface Earlier {
  readonly row: RouteReading;
  readonly amplitude: Amplitude;
  readonly isTwice: boolean;
}

/** The readings of an earlier route by tag and point, of several the latest. */
export function earlierReadings(
  route: readonly RouteReading[],
  find: (tag: string) => RouteMachine | VeladisError,
  refuse: (row: RouteReading, error: VeladisError) => void,
): ReadonlyMap<string, Earlier> {
  const found = new Map<string, Earlier>();
  for (const row of route) {
    try {
      const machine = find(row.tag);
      if (machine instanceof VeladisError) throw machine;
      requireNamed(row.point);
      factNotes(row.machine, machine.machine.machine);
      if (row.date !== undefined) knownDay(row.date, { option: "date" });
      const amplitude = routeAmplitude(row);
      const key = pointKey(row);
      const known = found.get(key);
      if (known === undefined) found.set(key, { row, amplitude, isTwice: false });
      else if (known.row.date === row.date || known.row.date === undefined || row.date === undefined) {
        found.set(key, { ...known, isTwice: true });
      } else if (row.date > known.row.date) found.set(key, { row, amplitude, isTwice: false });
    } catch (error) {
      if (!VeladisError.is(error)) throw error;
      refuse(row, error);
    }
  }
  return found;
}

/** Why an earlier reading is not held against a later one; undefined where it may be. */
export function notEarlier({ row, isTwice }: Earlier, date: string | undefined): string | undefined {
  if (isTwice) {
    return `the earlier route has this point more than once, and no day tells which is the later: no change since is told`;
  }
  if (row.date === undefined || date === undefined || row.date < date) return undefined;
  return `the earlier route has this point on ${shown(row.date)}, which is not before: no change since is told`;
}
