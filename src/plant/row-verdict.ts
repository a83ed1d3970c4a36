import { type Amplitude, writtenValue } from "../reading/index";
import { headlineOf, type Margin, type Verdict, ZERO_READING } from "../severity/index";
import { type Earlier, notEarlier } from "./earlier-route";
import { verdictBy } from "./machine-verdict";
import type { JudgedBasis, RouteMachine } from "./route-basis";
import { earlierValue, routeChange } from "./route-change";
import type { RouteReading } from "./route-reading";
import type { RouteBasis, RouteChange, RouteLimit, RouteVerdict } from "./route-verdict";

/** A row of a route as it was read. */
export interface RowRead {
  readonly row: RouteReading;
  readonly reading: Amplitude;
  readonly machine: RouteMachine;
  readonly earlier: Earlier | undefined;
  /** Whether the machine is read at several points. */
  readonly isOfSeveral: boolean;
  /** Lines of other rows of the same point. */
  readonly twice: readonly number[];
}

/** What of a verdict depends on the size of the reading. */
type OfSize = Pick<
  RouteVerdict,
  "zone" | "worst" | "headline" | "limit" | "margin" | "assumed" | "history" | "cautions"
>;

const none: readonly never[] = /* @__PURE__ */ Object.freeze([]);
const ofZero: readonly string[] = /* @__PURE__ */ Object.freeze([ZERO_READING]);

function marginOf(limit: number, value: number): Margin {
  const ratio = limit / value;
  return { ratio, decibels: 20 * Math.log10(ratio) };
}

/** By the ladder of the machine, for a reading as it stands. */
function byLadder(
  { basis, ladder }: JudgedBasis & { ladder: NonNullable<JudgedBasis["ladder"]> },
  value: number,
): OfSize {
  const { judge, isOpen } = ladder;
  const { kind, zones, limits } = basis;
  const at = judge.index(value);
  const worst = judge.complete ? judge.zones[at] : judge.worst(value);
  const upTo = judge.complete ? at : judge.zones.indexOf(worst as never);
  const limit = limits[Math.min(at, limits.length - 1)] as RouteLimit;
  return {
    ...{ zone: judge.zones[at] as string, worst: worst as string },
    headline: headlineOf(kind, zones.slice(at, upTo + 1), isOpen),
    ...{ limit, margin: marginOf(limit.value, value), assumed: none, cautions: value === 0 ? ofZero : none },
  };
}

/** By a judgement of its own, for a reading with a history. */
function byItself(verdict: Verdict, basis: RouteBasis, { assumed = [] }: Amplitude): OfSize {
  const { zone, worst, headline, limit, margin, history } = verdict;
  return {
    ...{ zone, worst, headline, margin, history, assumed },
    limit: { name: limit.name, value: writtenValue(limit) },
    cautions: verdict.cautions.filter((one) => !basis.cautions.includes(one)),
  };
}

/** What has changed since the baseline, and why nothing is told. */
function sinceBaseline(read: RowRead, basis: RouteBasis, notes: string[]): RouteChange | null {
  const { baseline } = basis;
  if (baseline === null || read.reading.level !== undefined) return null;
  const { date } = read.row;
  if (baseline.date !== undefined && date !== undefined && baseline.date > date) {
    notes.push(`the baseline is of ${baseline.date}, after this reading: no change since is told`);
    return null;
  }
  const before = {
    before: baseline.value,
    assumed: baseline.assumed,
    ...(baseline.date !== undefined && { date: baseline.date }),
  };
  const change = routeChange(read.reading, before, basis);
  // the list's baseline names no point, and one point is lower than another
  return read.isOfSeveral && change.direction === "fall" ? { ...change, significant: null } : change;
}

/** What has changed since the last route, and why nothing is told. */
function sinceLast({ reading, row, earlier }: RowRead, basis: RouteBasis, notes: string[]): RouteChange | null {
  if (earlier === undefined || reading.level !== undefined) return null;
  const why = notEarlier(earlier, row.date);
  const value = why ?? earlierValue(earlier.amplitude, reading);
  if (typeof value === "string") {
    notes.push(value);
    return null;
  }
  const { date } = earlier.row;
  return routeChange(reading, { ...value, ...(date !== undefined && { date }) }, basis);
}

/**
 * The verdict on a row of a route.
 *
 * @throws {@link VeladisError} as {@link judge}
 */
export function rowVerdict(read: RowRead, judged: JudgedBasis & { readonly at: number }): RouteVerdict {
  const { row, reading, machine, twice } = read;
  const { basis, ladder, at } = judged;
  const own =
    ladder === undefined
      ? byItself(verdictBy(machine.machine, machine.limits, reading, machine.schemes), basis, reading)
      : byLadder({ basis, ladder }, reading.value);
  const notes: string[] = [];
  const baseline = sinceBaseline(read, basis, notes);
  const last = sinceLast(read, basis, notes);
  if (twice.length > 0)
    notes.push(`this point stands on the route more than once: also on line ${twice.slice(0, 5).join(", ")}`);
  return {
    ...{ tag: row.tag, line: row.line },
    ...(row.point !== undefined && { point: row.point }),
    ...(row.date !== undefined && { date: row.date }),
    ...{ reading, kind: basis.kind, ...own, basis: at, sinceBaseline: baseline, sinceLast: last },
    ...(notes.length > 0 && { cautions: [...own.cautions, ...notes] }),
  };
}
