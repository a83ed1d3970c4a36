import { scaleLinear, scaleUtc } from "d3-scale";
import { roundTicks, spacedTicks, type Tick } from "./axis";
import type { CurvePoint } from "./reduced-curve";
import { widthOf } from "./text-width";

/** A day in milliseconds. */
export const DAY = 86_400_000;

/** A date as it is told: the day. */
export function dateText(time: number): string {
  return new Date(time).toISOString().slice(0, 10);
}

/** Places in time: a function to pixels, ticks with words, what they count, and places of months between them. */
interface TimeAxis {
  readonly x: (time: number) => number;
  readonly ticks: readonly Tick[];
  readonly unit: string;
  readonly between: readonly number[];
}

/** The first of each month from a time to another. */
function monthsBetween(from: number, to: number): number[] {
  const first = new Date(from);
  const all: number[] = [];
  for (let month = 0; all.length < 1000; month++) {
    const time = Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + month, 1);
    if (time > to) break;
    if (time >= from) all.push(time);
  }
  return all;
}

const isMidnight = (time: number): boolean => time % DAY === 0;
const isFirst = (time: number): boolean => isMidnight(time) && new Date(time).getUTCDate() === 1;

/** What dates count: months where each is the first of one, days where none has a time of day; else the zone of time. */
function dateUnit(points: readonly CurvePoint[]): string {
  if (points.length > 1 && points.every(({ x }) => isFirst(x))) return "month";
  return points.every(({ x }) => isMidnight(x)) ? "date" : "UTC";
}

/**
 * Places and words of the ticks of time.
 *
 * @param points - in rising order
 * @param numbersOf - what numbers count; undefined for dates
 */
export function timeAxis(points: readonly CurvePoint[], width: number, numbersOf: string | undefined): TimeAxis {
  const [from, to] = [(points[0] as CurvePoint).x, (points.at(-1) as CurvePoint).x];
  const count = Math.max(2, Math.round(width / 80));
  if (numbersOf !== undefined) {
    const x = scaleLinear([from, to === from ? from + 1 : to], [0, width]);
    return { x: (t: number) => x(t), ticks: roundTicks(x, count), unit: numbersOf, between: [] };
  }
  const x = scaleUtc([from, to === from ? from + DAY : to], [0, width]);
  const all = x.ticks(count);
  const areMonths = all.every((date) => isFirst(date.getTime()));
  const short = to - from <= 3 * DAY;
  const text = (date: Date): string =>
    short ? date.toISOString().slice(5, 16).replace("T", " ") : date.toISOString().slice(0, areMonths ? 7 : 10);
  const ticks = spacedTicks(
    all.map((date) => ({ at: x(date), text: text(date) })),
    (words) => widthOf(words) + 12,
  );
  const months = areMonths ? monthsBetween(from, to).map((time) => x(time)) : [];
  // months that would stand closer than this are a bar
  const between = months.length > 1 && width / months.length >= 4 ? months : [];
  return { x: (t: number) => x(t), ticks, unit: dateUnit(points), between };
}
