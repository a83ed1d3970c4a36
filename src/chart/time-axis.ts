import { scaleLinear, scaleUtc } from "d3-scale";
import { spacedTicks, tickText } from "./axis";
import { widthOf } from "./text-width";

/** A day in milliseconds. */
export const DAY = 86_400_000;

/** A date as it is told: the day. */
export function dateText(time: number): string {
  return new Date(time).toISOString().slice(0, 10);
}

/** Places and words of the ticks of time. */
export function timeAxis(from: number, to: number, width: number, dated: boolean) {
  const count = Math.max(2, Math.round(width / 80));
  if (!dated) {
    const x = scaleLinear([from, to === from ? from + 1 : to], [0, width]);
    return { x: (t: number) => x(t), ticks: x.ticks(count).map((t) => ({ at: x(t), text: tickText(t) })) };
  }
  const x = scaleUtc([from, to === from ? from + 86_400_000 : to], [0, width]);
  const all = x.ticks(count);
  const digits = all.every((date) => date.getUTCDate() === 1 && date.getUTCHours() === 0) ? 7 : 10;
  const short = to - from <= 3 * 86_400_000;
  const text = (date: Date): string =>
    short ? date.toISOString().slice(5, 16).replace("T", " ") : date.toISOString().slice(0, digits);
  const ticks = spacedTicks(
    all.map((date) => ({ at: x(date), text: text(date) })),
    (words) => widthOf(words) + 12,
  );
  return { x: (t: number) => x(t), ticks };
}
