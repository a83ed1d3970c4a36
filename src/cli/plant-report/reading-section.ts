import { severityBar } from "../../chart/index";
import { assumptions } from "../../reading/index";
import { marginOf } from "../print/verdict-parts";
import type { PageCharts } from "./chart-figure";
import type { CitedSources } from "./cited-sources";
import { bullets, section, table } from "./list-parts";
import type { MachineReport, ReportPoint } from "./machine-report";
import { type Markup, markup } from "./markup";
import { zoneChip } from "./zone-chip";

/** How wide charts are drawn: as a telephone shows them, so that their print is nowhere too small. */
export const NARROW = 400;

const titles = ["point", "date", "reading", "zone", "margin", "change"];

/** What is to be known of a verdict before relying on it. */
function notesOf({ verdict }: ReportPoint): string[] {
  const { assumed, assumedFacts, setAside, unjudged, cautions } = verdict;
  return [
    ...cautions,
    ...unjudged.map(({ as, because }) => `Not judged, ${as}: ${because}.`),
    ...assumedFacts.map((text) => `Assumed: ${text}.`),
    ...assumed.map((name) => `Assumed: ${assumptions[name]}.`),
    ...setAside.map((text) => `Set aside: ${text}.`),
  ];
}

/** The last reading of each point, the worst drawn on the zones of its table; or that there is none. */
export function readingSection(
  { points, refused }: MachineReport,
  charts: PageCharts,
  sources: CitedSources,
): Markup | undefined {
  const [worst] = points;
  const left = bullets(refused.map((text) => `Refused, and not judged: ${text}`));
  if (worst === undefined) {
    return section("reading", "Last reading", markup`<p>None on the route: this machine was not judged.</p>\n`, left);
  }
  const { verdict } = worst;
  const rows = points.map(({ point, written, on = "", verdict: one, changes }) => [
    point === "" ? "the machine" : point,
    on,
    written,
    zoneChip(one),
    marginOf(one, 3),
    changes.join("; "),
  ]);
  const bar = charts.figure(severityBar({ judgement: verdict, width: NARROW }));
  return section(
    "reading",
    "Last reading",
    markup`<div class="beside">
${bar}<div>
<p class="lead-line">${worst.point !== "" && `${worst.point}: `}${zoneChip(verdict)} ${verdict.word}</p>
<p>${verdict.standard} (${verdict.edition}), measured on ${verdict.measuredOn} ${sources.cite(verdict.source)}</p>
${bullets([...new Set(notesOf(worst))])}</div>
</div>
`,
    table("Readings of the last route, the worst first", titles, rows, titles.slice(0, 4)),
    left,
  );
}
