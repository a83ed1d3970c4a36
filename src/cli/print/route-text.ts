import { counted } from "../../core/index";
import type { JudgedRoute, RouteVerdict } from "../../plant/index";
import { labelled } from "./labelled";
import { changeCell, limitCell, readingCell, shareCell, zoneCell } from "./route-cells";
import { refusedMachines } from "./route-refused";
import { routeTold } from "./route-told";
import { wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

/** The days on which a route was read; nothing where no row says one. */
function daysText(verdicts: readonly RouteVerdict[]): string[] {
  let [first, last]: [string | undefined, string | undefined] = [undefined, undefined];
  for (const { date } of verdicts) {
    if (date === undefined) continue;
    if (first === undefined || date < first) first = date;
    if (last === undefined || date > last) last = date;
  }
  return first === undefined || last === undefined
    ? []
    : [first === last ? `read on ${first}` : `read from ${first} to ${last}`];
}

/** How many readings are in which zones, worst first, and what has none. */
export function routeSummary(judged: JudgedRoute): string {
  const { verdicts, bases, refused, unread } = judged;
  const { notJudged } = refusedMachines(judged);
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
    ...(notJudged.length === 0
      ? []
      : [`${counted(notJudged.length, "machine")} not judged, all their readings refused`]),
    ...(unread.length === 0
      ? notJudged.length === 0
        ? ["every machine of the list was read"]
        : []
      : [`${counted(unread.length, "machine")} of the list not read`]),
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

/** What is told of a route beside a table of all its readings. */
export function routeBeside(judged: JudgedRoute): string {
  const told = routeTold(judged).filter(({ label }) => label !== "readings");
  return `${wrapped(routeSummary(judged))}${told.map(({ label, texts }) => labelled(label, texts, 12)).join("")}`;
}

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
