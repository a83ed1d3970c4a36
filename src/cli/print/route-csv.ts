import { cached, cellText, limitsCell } from "../../core/index";
import type { JudgedRoute, RouteBasis, RouteChange, RouteVerdict } from "../../plant/index";
import { writtenIn, writtenValue } from "../../reading/index";
import { quotedCell } from "../delimited/cells";
import { assumedOf, unjudgedOf } from "./route-told";

const titles = [
  ...["zone", "worst", "tag", "point", "date", "line", "reading", "unit", "limit", "limit value", "share"],
  ...["since baseline", "baseline change significant", "since last", "last change significant"],
  ...["scheme", "limits", "assumed", "not judged", "set aside", "remarks"],
];

/** Rows that are written at once. */
const PORTION = 2000;

const text = /* @__PURE__ */ cached((cell: string): string => quotedCell(cellText(cell), ","), { room: 20_000 });

const answers = { true: "yes", false: "no", null: "not known" } as const;

function changeCells(change: RouteChange | null): string {
  return change === null ? "," : `${change.change},${answers[`${change.significant}`]}`;
}

/** What all rows of a basis end in but for remarks of their own. */
function tailOf(basis: RouteBasis): string {
  const { schemes, provenance, confirmed, setAside, notCompared, differences } = basis;
  const cells = [
    schemes.join(" + "),
    limitsCell(provenance, confirmed),
    [...differences, ...assumedOf(basis)].join("; "),
    unjudgedOf(basis).join("; "),
    [...setAside, ...notCompared].join("; "),
  ];
  return cells.map(text).join(",");
}

/**
 * The verdicts on a route as CSV, in portions: a row each, worst first. What holds for all readings of a table, its cautions
 * and sources, is told beside it.
 */
export function* routeCsv({ verdicts, bases }: JudgedRoute): Generator<string> {
  const ends = bases.map(tailOf);
  const units = bases.map(({ as }) => text(as));
  const line = (one: RouteVerdict): string => {
    const { zone, worst, tag, point = "", date = "", reading, limit, ratio, cautions, basis } = one;
    const unit = reading.level === undefined ? units[basis] : text(writtenIn(reading));
    const remarks = cautions.length === 0 ? "" : text(cautions.join("; "));
    return `${text(zone)},${text(worst)},${text(tag)},${text(point)},${date},${one.line},${writtenValue(reading)},${unit},${text(limit.name)},${limit.value},${1 / ratio},${changeCells(one.sinceBaseline)},${changeCells(one.sinceLast)},${ends[basis]},${remarks}\n`;
  };
  yield `${titles.join(",")}\n`;
  for (let from = 0; from < verdicts.length; from += PORTION) {
    yield verdicts
      .slice(from, from + PORTION)
      .map(line)
      .join("");
  }
}
