import { markupText } from "../../core/index";
import type { JudgedRoute, RefusedReading, RouteBasis, RouteVerdict } from "../../plant/index";
import { zoneWord } from "../../severity/index";
import { changeCell, limitCell, readingCell, shareCell, zoneCell } from "./route-cells";
import { routeSummary } from "./route-text";
import { routeTold } from "./route-told";

const STYLE = `
  :root { color-scheme: light; }
  body { font: 15px/1.45 system-ui, sans-serif; color: #14181d; background: #fff; max-width: 70rem; margin: 2rem auto; padding: 0 1rem; }
  h1 { font-size: 1.5rem; margin: 0 0 .3rem; }
  h2 { font-size: 1.1rem; margin: 1.6rem 0 .4rem; border-bottom: 1px solid #14181d; break-after: avoid; }
  p, ul { margin: .3rem 0; }
  li { overflow-wrap: anywhere; }
  .table { overflow-x: auto; }
  table { border-collapse: collapse; width: 100%; font-size: .92em; }
  caption { text-align: left; padding: .2rem 0; }
  th, td { text-align: left; vertical-align: top; padding: .25rem .7rem .25rem 0; border-bottom: 1px solid #b8bec5; }
  th { font-weight: 600; border-bottom-color: #14181d; }
  td.number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
  td.zone { font-weight: 600; white-space: nowrap; }
  td.word { min-width: 9rem; }
  thead { display: table-header-group; }
  tr, li { break-inside: avoid; }
  @page { size: A4 landscape; margin: 14mm; }
  @media print { body { margin: 0; max-width: none; padding: 0; font-size: 9pt; } .table { overflow: visible; } }
`;

const titles = [
  "zone",
  "meaning",
  "tag",
  "point",
  "date",
  "reading",
  "limits",
  "next limit",
  "of it",
  "since baseline",
  "since last",
];

/** All limits of a basis, in a line. */
function limitsText({ limits, as }: RouteBasis, digits: number): string {
  return `${limits.map((limit) => limitCell({ limit }, digits)).join(", ")} ${as}`;
}

function row(one: RouteVerdict, basis: RouteBasis, digits: number): string {
  const meaning =
    one.worst === one.zone
      ? zoneWord(one.kind, one.zone)
      : `${zoneWord(one.kind, one.zone)}; possible: ${zoneWord(one.kind, one.worst)}`;
  const cells: readonly (readonly [kind: string, text: string])[] = [
    ["zone", zoneCell(one)],
    ["word", meaning],
    ["", one.tag],
    ["", one.point ?? ""],
    ["", one.date ?? ""],
    ["number", readingCell(one, digits)],
    ["", limitsText(basis, digits)],
    ["number", limitCell(one, digits)],
    ["number", shareCell(one)],
    ["number", changeCell(one.sinceBaseline, digits)],
    ["number", changeCell(one.sinceLast, digits)],
  ];
  return `<tr>${cells.map(([kind, text]) => `<td${kind && ` class="${kind}"`}>${markupText(text)}</td>`).join("")}</tr>\n`;
}

function listOf(title: string, texts: readonly string[]): string {
  if (texts.length === 0) return "";
  return `<h2>${markupText(title)}</h2>\n<ul>\n${texts.map((one) => `<li>${markupText(one)}</li>\n`).join("")}</ul>\n`;
}

function refusedLine({ from, line, tag, point, message }: RefusedReading): string {
  const where = [from === "before" ? "route before" : "route", `line ${line}`, tag, point].filter(Boolean).join(", ");
  return `${where}: ${message}`;
}

/** What the page calls what is told beside the verdicts. */
const headings: Readonly<Record<string, string>> = {
  "judged by": "Judged by",
  known: "How the limits are known",
  assumed: "Assumed",
  "set aside": "Set aside",
  "not judged": "Not judged",
  change: "Changes that are not told",
  readings: "Of single readings",
  refused: "Machines with refused readings",
  "not read": "Machines that were not read",
  points: "Points that were not read",
  source: "Sources",
  caution: "Cautions",
};

/** The verdicts on a route as one HTML page that stands alone, without a script, set for the screen and A4 paper. */
export function routeHtml(
  judged: JudgedRoute,
  { file, digits }: { readonly file: string; readonly digits: number },
): string {
  const { verdicts, bases, refused } = judged;
  const table =
    verdicts.length === 0
      ? ""
      : `<div class="table" role="region" aria-label="Readings" tabindex="0">
<table>
<caption>Worst first. Since baseline, since last: what has changed; * significant, ? not known whether it is.</caption>
<thead>
<tr>${titles.map((title) => `<th scope="col">${title}</th>`).join("")}</tr>
</thead>
<tbody>
${verdicts.map((one) => row(one, bases[one.basis] as RouteBasis, digits)).join("")}</tbody>
</table>
</div>
`;
  const told = routeTold(judged);
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Route ${markupText(file)}</title>
<style>${STYLE}</style>
</head>
<body>
<main>
<h1>Route ${markupText(file)}</h1>
<p>${markupText(routeSummary(judged))}</p>
${table}${listOf("Refused: no verdict is given", refused.map(refusedLine))}${told.map(({ label, texts }) => listOf(headings[label] ?? label, texts)).join("")}</main>
</body>
</html>
`;
}
