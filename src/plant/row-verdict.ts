import { type Amplitude, writtenValue } from "../reading/index";
import { headlineOf, type Verdict, ZERO_READING, type Zone } from "../severity/index";
import { type Earlier, notEarlier } from "./earlier-route";
import { verdictBy } from "./machine-verdict";
import type { JudgedBasis, RouteMachine, ZoneFound } from "./route-basis";
import { earlierValue, routeChange } from "./route-change";
import type { RouteReading } from "./route-reading";
import { reachedSetpoint } from "./route-setpoints";
import type { RouteBasis, RouteChange, RouteLimit, RouteVerdict } from "./route-verdict";

/** A row of a route as it was read. */
export interface RowRead {
  readonly row: RouteReading;
  readonly reading: Amplitude;
  readonly machine: RouteMachine;
  readonly earlier: Earlier | undefined;
  /** Whether the machine is read at several points. */
  readonly isOfSeveral: boolean;
  /** The line of the row, or of all rows of the same point. */
  readonly lines: number | readonly number[];
  /** What is to be noted of the facts that the row says. */
  readonly notes: readonly string[];
}

/** What is noted of a row, where there is anything. */
interface Notes {
  list: string[] | undefined;
}

function note(notes: Notes, text: string): void {
  if (notes.list === undefined) notes.list = [text];
  else notes.list.push(text);
}

const none: readonly never[] = /* @__PURE__ */ Object.freeze([]);
const ofZero: readonly string[] = /* @__PURE__ */ Object.freeze([ZERO_READING]);

/** The zone of a value and what goes with it, made once for all values of that zone. */
function zoneFound(
  { basis, zonesFound }: JudgedBasis,
  ladder: NonNullable<JudgedBasis["ladder"]>,
  value: number,
): ZoneFound {
  const { judge, isOpen } = ladder;
  const at = judge.index(value);
  const upTo = judge.complete ? at : judge.zones.indexOf(judge.worst(value));
  const known = zonesFound.get(at * 64 + upTo);
  if (known !== undefined) return known;
  const { kind, zones, limits } = basis;
  const found = {
    zone: zones[at] as Zone,
    worst: zones[upTo] as Zone,
    headline: headlineOf(kind, zones.slice(at, upTo + 1), isOpen),
    limit: limits[Math.min(at, limits.length - 1)] as RouteLimit,
  };
  zonesFound.set(at * 64 + upTo, found);
  return found;
}

/** What has changed since the baseline; what keeps it from being told goes to the notes. */
function sinceBaseline(read: RowRead, basis: RouteBasis, notes: Notes): RouteChange | null {
  const { baseline } = basis;
  if (baseline === null || read.reading.level !== undefined) return null;
  const { date } = read.row;
  if (baseline.date !== undefined && date !== undefined && baseline.date > date) {
    note(notes, `the baseline is of ${baseline.date}, after this reading: no change since is told`);
    return null;
  }
  // the list's baseline names no point, and one point is lower than another
  const { value: before, date: on, assumed } = baseline;
  return routeChange(read.reading, { before, date: on, assumed, isFallKnown: !read.isOfSeveral }, basis);
}

/** What has changed since the last route; what keeps it from being told goes to the notes. */
function sinceLast({ reading, row, earlier }: RowRead, basis: RouteBasis, notes: Notes): RouteChange | null {
  if (earlier === undefined || reading.level !== undefined) return null;
  const found = notEarlier(earlier, row.date) ?? earlierValue(earlier.amplitude, reading);
  if (typeof found !== "string") {
    return routeChange(reading, { ...found, date: earlier.row.date, isFallKnown: true }, basis);
  }
  note(notes, found);
  return null;
}

/** Of a reading with a history the judgement of its own. */
function ofItself(verdict: Verdict): ZoneFound {
  const { zone, worst, headline, limit } = verdict;
  return { zone, worst, headline, limit: { name: limit.name, value: writtenValue(limit) } };
}

/**
 * The verdict on a row of a route.
 *
 * @throws {@link VeladisError} as {@link judge}
 */
export function rowVerdict(read: RowRead, judged: JudgedBasis): RouteVerdict {
  const { row, reading, machine, lines } = read;
  const { basis, ladder, at } = judged;
  const own = ladder === undefined ? verdictBy(machine.machine, machine.limits, reading, machine.schemes) : undefined;
  const found =
    own === undefined ? zoneFound(judged, ladder as NonNullable<typeof ladder>, reading.value) : ofItself(own);
  const notes: Notes = { list: undefined };
  for (const text of read.notes) note(notes, text);
  const reached = reachedSetpoint(reading.value, judged.setpoints);
  if (reached !== undefined) note(notes, reached);
  const changedSinceBaseline = sinceBaseline(read, basis, notes);
  const changedSinceLast = sinceLast(read, basis, notes);
  if (typeof lines !== "number") {
    const others = lines.filter((line) => line !== row.line).slice(0, 5);
    note(notes, `this point stands on the route more than once: also on line ${others.join(", ")}`);
  }
  const cautions =
    own !== undefined
      ? own.cautions.filter((one) => !basis.cautions.includes(one))
      : reading.value === 0
        ? ofZero
        : none;
  // written out, since there may be a hundred thousand
  return {
    tag: row.tag,
    line: row.line,
    point: row.point,
    date: row.date,
    reading,
    kind: basis.kind,
    zone: found.zone,
    worst: found.worst,
    headline: found.headline,
    limit: found.limit,
    ratio: own === undefined ? found.limit.value / reading.value : own.margin.ratio,
    basis: at,
    sinceBaseline: changedSinceBaseline,
    sinceLast: changedSinceLast,
    assumed: reading.assumed ?? none,
    history: own?.history,
    cautions: notes.list === undefined ? cautions : [...cautions, ...notes.list],
  };
}
