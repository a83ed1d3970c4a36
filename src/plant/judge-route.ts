import {
  type Attempt,
  attempt,
  cached,
  cautions,
  requireKnownOptions,
  VeladisError,
  withParameters,
} from "../core/index";
import type { Amplitude } from "../reading/index";
import { requirePlacedName, type SchemeRef, zoneLevel } from "../severity/index";
import { type Earlier, earlierReadings, plainPoint, pointKey } from "./earlier-route";
import { knownDay } from "./known-day";
import type { Plant } from "./plant-machine";
import { refusedReading } from "./refused-reading";
import { requirePlant } from "./require-plant";
import { requireSchemes } from "./require-schemes";
import { type AlikeBasis, alikeBasis, type JudgedBasis, type RouteMachine, routeBasis } from "./route-basis";
import { factNotes } from "./route-facts";
import { requireNamed } from "./route-point";
import { isPlain, type RouteReading, routeAmplitude } from "./route-reading";
import { checkedRows } from "./route-rows";
import { machineByTag } from "./route-tags";
import type { JudgedRoute, RefusedReading, RouteBasis, RouteVerdict } from "./route-verdict";
import { type RowRead, rowVerdict } from "./row-verdict";

/** What {@link judgeRoute} can be told besides the list and the route. */
export interface JudgeRouteOptions {
  /** The route before, for what has changed since. */
  readonly before?: readonly RouteReading[];
  /** The schemes to choose from, such as confirmed ones; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
}

const keys: Readonly<Record<keyof JudgeRouteOptions, true>> = /* @__PURE__ */ Object.freeze({
  before: true,
  schemes: true,
});

const BY_QUARTER =
  "a change is significant above a quarter of the limit B/C (Criterion II of ISO 10816-1, for a change since the baseline, from memory); since the last route the same is taken: common practice, no source";

/** The kind of a reading that says a unit and a detector alone, made once for each. */
const plainKind = /* @__PURE__ */ cached((unit) => cached((detector) => `${unit} ${detector} `));

/** What readings that are judged alike have in common beside their machine; a history, or what it assumed, is part of it. */
function kindOf(reading: Amplitude): string {
  const { unit, detector, hertz, level, crestFactor, state, assumed, history } = reading;
  if (hertz === undefined && isPlain(reading)) return plainKind(unit)(detector);
  const plain = `${unit} ${detector} ${hertz ?? ""}`;
  if (isPlain(reading)) return plain;
  return JSON.stringify([
    plain,
    level?.re,
    crestFactor,
    state,
    assumed,
    history?.map(({ does, type }) => [does, type]),
  ]);
}

/** The line of the row of a point, or the lines of several; by tag and point. */
type PointLines = ReadonlyMap<string, ReadonlyMap<string, number | readonly number[]>>;

function pointLines(route: readonly RouteReading[]): PointLines {
  const found = new Map<string, Map<string, number | number[]>>();
  for (const { tag, point = "", line } of route) {
    let points = found.get(tag);
    if (points === undefined) {
      points = new Map();
      found.set(tag, points);
    }
    const key = plainPoint(point);
    const known = points.get(key);
    if (known === undefined) points.set(key, line);
    else if (typeof known === "number") points.set(key, [known, line]);
    else known.push(line);
  }
  return found;
}

/** The rows of a list in its order, each once, also those that were refused: a machine that cannot be judged is no healthy one. */
function unreadRows({ machines, refused }: Plant): readonly { readonly tag: string; readonly line: number }[] {
  const rows = new Map([...machines, ...refused].map(({ tag, line }) => [line, Object.freeze({ tag, line })]));
  const tags = new Set(machines.map(({ tag }) => tag));
  const own = new Set(machines.map(({ line }) => line));
  return [...rows.values()].filter(({ tag, line }) => own.has(line) || !tags.has(tag)).sort((a, b) => a.line - b.line);
}

/** Worst first; of two that are as bad, in the order of the route. */
function worstFirst(verdicts: readonly RouteVerdict[]): readonly RouteVerdict[] {
  const badness = ({ kind, worst, zone }: RouteVerdict): number => zoneLevel(kind, worst) * 10 + zoneLevel(kind, zone);
  const found = new Map<number, RouteVerdict[]>();
  for (const one of verdicts) {
    const level = badness(one);
    const same = found.get(level);
    if (same === undefined) found.set(level, [one]);
    else same.push(one);
  }
  return Object.freeze([...found].sort(([a], [b]) => b - a).flatMap(([, same]) => same));
}

/**
 * The verdicts on a route: readings by tag, in any units and order and of several points a machine, each judged by its own
 * machine's table.
 *
 * The table is the one that the row of the list names, as {@link classify} judges; else limits of the maker or the site that
 * it states; else every scheme that the nameplate admits, of which the worst governs, as in {@link judge}. Facts that the row
 * leaves empty are taken for their lowest limits, and named; of a range of speeds all are admitted. What holds for all
 * readings of a machine in one type stands once, in `bases`.
 *
 * A reading of another quantity than all limits of its machine needs a frequency, of its own or in `at`: the running speed of
 * the list is not taken for it. A reading whose tag no row has, or two, and one of a machine whose row was refused, gets no
 * verdict, but a place among `refused`.
 *
 * A reading that reaches the trip or the alarm of its row is told so among its cautions, whatever its zone; setpoints that
 * cannot be held against it are told in its basis.
 *
 * A change since the baseline counts as significant by the rule of {@link changeFromBaseline}, by the lowest limit B/C of all
 * tables that judge; since the last route the same amount is taken. The list's baseline names no point: where several points
 * of a machine are read, a rise above it counts at each, a fall below it at none.
 *
 * @param plant - the list
 * @param route - the readings
 * @param options - `before`, the route before; `schemes` to choose from
 * @returns verdicts, worst first, what they rest on, what was refused, and which machines were not read
 * @throws {@link VeladisError} `wrong-type`, `missing-option`, `unknown-option` for what is no list, route or option; never for
 *   a single row
 * @example
 * ```ts
 * import { judgeRoute } from "veladis/plant";
 *
 * const row = { settings: {}, device: {}, own: {} };
 * const fan = { ...row, tag: "LU-02", line: 2, machine: { type: "fan" }, table: "iso-14694-2003" } as const;
 * const pump = {
 *   ...{ ...row, tag: "PU-03", line: 3 },
 *   machine: { type: "pump", power: "90 kW", speed: "2980 r/min", category: "II" },
 * } as const;
 * const { verdicts, refused, unread, bases } = judgeRoute({ machines: [pump], refused: [], ownColumns: [] }, [
 *   { tag: "PU-03", line: 2, point: "DE-H", reading: "0.12 in/s pk" },
 *   { tag: "PU-03", line: 3, point: "NDE-H", reading: "5.9 mm/s rms" },
 *   { tag: "PU-30", line: 4, reading: "2.1 mm/s rms" },
 * ]);
 * verdicts.map(({ point, headline }) => [point, headline]); // => [["NDE-H", "zone C"], ["DE-H", "zone A"]]
 * bases[verdicts[0]?.basis ?? 0]?.schemes; // => ["iso-10816-7-2009"]
 * refused.map(({ line, code }) => [line, code]); // => [[4, "unknown-option"]]
 * unread; // => []
 * judgeRoute({ machines: [fan, pump], refused: [], ownColumns: [] }, []).unread.map(({ tag }) => tag); // => ["LU-02", "PU-03"]
 * ```
 */
export function judgeRoute(plant: Plant, route: readonly RouteReading[], options: JudgeRouteOptions = {}): JudgedRoute {
  return withParameters({ plant, route, options }, () => {
    const { before = [], schemes } = requireKnownOptions(options, keys, {
      what: "an option of a route",
      form: "options such as { before: [] }",
    });
    requirePlant(plant);
    requireSchemes(schemes);
    const rows = checkedRows(route, "route");
    const find = machineByTag(plant, schemes);
    const refused: RefusedReading[] = [];
    const earlier: ReadonlyMap<string, Earlier> = earlierReadings(checkedRows(before, "options"), find, (row, error) =>
      refused.push(refusedReading("before", row, error)),
    );
    const lines = pointLines(rows);
    const bases: RouteBasis[] = [];
    const ofAlike = new Map<string, Attempt<AlikeBasis>>();
    const alike = (machine: RouteMachine, kind: string, reading: Amplitude): AlikeBasis => {
      const key = `${machine.alike}\n${kind}`;
      const found = ofAlike.get(key) ?? attempt(() => alikeBasis(machine, reading));
      ofAlike.set(key, found);
      if (!found.ok) throw found.error;
      return found.value;
    };
    const known = new Map<RouteMachine, Map<string, JudgedBasis>>();
    const basisOf = (machine: RouteMachine, reading: Amplitude): JudgedBasis => {
      let own = known.get(machine);
      if (own === undefined) {
        own = new Map();
        known.set(machine, own);
      }
      const kind = kindOf(reading);
      const before = own.get(kind);
      if (before !== undefined) return before;
      const found = routeBasis(alike(machine, kind, reading), machine, bases.length, reading);
      bases.push(found.basis);
      own.set(kind, found);
      return found;
    };
    const judged = (row: RouteReading): RouteVerdict => {
      const machine = find(row.tag);
      if (machine instanceof VeladisError) throw machine;
      requireNamed(row.point);
      if (row.date !== undefined) knownDay(row.date, { option: "date" });
      const reading = routeAmplitude(row);
      const points = lines.get(row.tag) as NonNullable<ReturnType<PointLines["get"]>>;
      const told: RowRead = {
        row,
        reading,
        machine,
        earlier: earlier.size === 0 ? undefined : earlier.get(pointKey(row)),
        isOfSeveral: points.size > 1,
        lines: points.get(plainPoint(row.point ?? "")) as number | readonly number[],
        notes: factNotes(row.machine, machine.machine.machine),
      };
      const basis = basisOf(machine, reading);
      if (row.point !== undefined) requirePlacedName(row.point, machine.machine.machine.place, basis.measuredOn);
      return rowVerdict(told, basis);
    };
    const verdicts: RouteVerdict[] = [];
    for (const row of rows) {
      try {
        verdicts.push(judged(row));
      } catch (error) {
        if (!VeladisError.is(error)) throw error;
        refused.push(refusedReading("route", row, error));
      }
    }
    const missed = [...earlier.values()].filter(({ row: { tag, point } }) => {
      return point !== undefined && lines.get(tag)?.has(plainPoint(point)) === false;
    });
    return Object.freeze({
      verdicts: worstFirst(verdicts),
      bases: Object.freeze(bases),
      refused: Object.freeze(refused),
      unread: Object.freeze(unreadRows(plant).filter(({ tag }) => !lines.has(tag))),
      pointsUnread: Object.freeze(
        missed.map(({ row }) => Object.freeze({ tag: row.tag, point: row.point as string, line: row.line })),
      ),
      cautions: Object.freeze([
        ...(verdicts.some(({ sinceBaseline, sinceLast }) => sinceBaseline ?? sinceLast) ? [BY_QUARTER] : []),
        ...cautions,
      ]),
    });
  });
}
