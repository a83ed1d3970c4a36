import { counted } from "../../core/index";
import type { JudgedRoute, RouteVerdict } from "../../plant/index";
import { labelled } from "./labelled";
import { changeCell, limitCell, readingCell, shareCell, zoneCell } from "./route-cells";
import { routeTold } from "./route-told";
import { wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

/** The days on which a route was read; nothing where no row says one. */
function daysText(verdicts: readonly RouteVerdict[]): string[] {
  const days = verdicts.flatMap(({ date }) => (date === undefined ? [] : [date])).sort();
  const [first, last] = [days[0], days.at(-1)];
  return first === undefined || last === undefined
    ? []
    : [first === last ? `read on ${first}` : `read from ${first} to ${last}`];
}

/** How many readings are in which zones, worst first, and what has none. */
export function routeSummary({ verdicts, bases, refused, unread }: JudgedRoute): string {
  const zones = new Map<string, number>();
  for (const one of verdicts) zones.set(zoneCell(one), (zones.get(zoneCell(one)) ?? 0) + 1);
  const machines = new Set(bases.map(({ tag }) => tag)).size;
  const parts = [
    `${counted(verdicts.length, "reading")} of ${counted(machines, "machine")} judged`,
    ...(zones.size === 0 ? [] : [[...zones].map(([zone, count]) => `${zone} ${count}`).join(", ")]),
  ];
  return [
    parts.join(": "),
    ...daysText(verdicts),
    `${refused.length} refused`,
    unread.length === 0
      ? "every machine of the list was read"
      : `${counted(unread.length, "machine")} of the list not read`,
  ].join("; ");
}

function row(one: RouteVerdict, digits: number): string[] {
  return [
    zoneCell(one),
    one.tag,
    one.point ?? "",
    readingCell(one, digits),
    limitCell(one, digits),
    shareCell(one),
    changeCell(one.sinceBaseline, digits),
    changeCell(one.sinceLast, digits),
  ];
}

const columns = [
  { title: "zone" },
  { title: "tag", wraps: true },
  { title: "point", wraps: true },
  { title: "reading" },
  { title: "limit", align: "right" },
  { title: "of it", align: "right" },
  { title: "baseline", align: "right" },
  { title: "last", align: "right" },
] as const;

/** The verdicts on a route as a person reads them: worst first, and what they rest on below. */
export function routeText(judged: JudgedRoute, digits: number): string {
  const { verdicts } = judged;
  const cells = verdicts.map((one) => row(one, digits).map((cell) => [cell]));
  const changed = verdicts.some(({ sinceBaseline, sinceLast }) => (sinceBaseline ?? sinceLast) !== null);
  const key = changed ? "baseline, last: what has changed since; * significant, ? not known whether it is\n" : "";
  const table = verdicts.length === 0 ? "" : `\n${wrappedTable(columns, cells)}${key}`;
  const told = routeTold(judged).map(({ label, texts }) => labelled(label, texts, 12));
  return `${wrapped(routeSummary(judged))}${table}\n${told.join("")}`;
}
