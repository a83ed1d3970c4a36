import { cellText, limitsCell } from "../../core/index";
import type { JudgedRoute, RouteBasis, RouteChange, RouteVerdict } from "../../plant/index";
import { writtenIn, writtenValue } from "../../reading/index";
import { quotedCell } from "../delimited/cells";
import { assumedOf, unjudgedOf } from "./route-told";

const titles = [
  ...["zone", "worst", "tag", "point", "date", "line", "reading", "unit", "limit", "limit value", "share"],
  ...["since baseline", "baseline change significant", "since last", "last change significant"],
  ...["scheme", "limits", "assumed", "not judged", "set aside", "cautions"],
];

const text = (cell: string): string => quotedCell(cellText(cell), ",");

const answers = { true: "yes", false: "no", null: "not known" } as const;

function changeCells(change: RouteChange | null): string {
  return change === null ? "," : `${change.change},${answers[`${change.significant}`]}`;
}

/** What all rows of a basis end in but for cautions of their own. */
function tailOf(basis: RouteBasis): readonly [cells: string, cautions: string] {
  const { schemes, provenance, confirmed, setAside, cautions, notCompared, differences } = basis;
  const cells = [
    schemes.join(" + "),
    limitsCell(provenance, confirmed),
    [...differences, ...assumedOf(basis)].join("; "),
    unjudgedOf(basis).join("; "),
    setAside.join("; "),
  ];
  return [cells.map(text).join(","), [...cautions, ...notCompared].join("; ")];
}

/** The verdicts on a route as CSV: a row each, worst first, with all that is known of it. */
export function routeCsv({ verdicts, bases }: JudgedRoute): string {
  const tails = bases.map(tailOf);
  const ends = tails.map(([cells, cautions]) => `${cells},${text(cautions)}`);
  const units = bases.map(({ as }) => text(as));
  const line = (one: RouteVerdict): string => {
    const { zone, worst, tag, point = "", date = "", reading, limit, margin, cautions, basis } = one;
    const [cells, always] = tails[basis] as readonly [string, string];
    const end =
      cautions.length === 0
        ? (ends[basis] as string)
        : `${cells},${text([...cautions, always].filter(Boolean).join("; "))}`;
    const unit = reading.level === undefined ? units[basis] : text(writtenIn(reading));
    return `${text(zone)},${text(worst)},${text(tag)},${text(point)},${date},${one.line},${writtenValue(reading)},${unit},${text(limit.name)},${limit.value},${1 / margin.ratio},${changeCells(one.sinceBaseline)},${changeCells(one.sinceLast)},${end}\n`;
  };
  return `${titles.join(",")}\n${verdicts.map(line).join("")}`;
}
