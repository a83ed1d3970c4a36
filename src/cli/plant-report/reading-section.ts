import { severityBar } from "../../chart/index";
import { assumptions } from "../../reading/index";
import type { PageCharts } from "./chart-figure";
import type { CitedSources } from "./cited-sources";
import { bullets, section, table } from "./list-parts";
import type { MachineReport, ReadPoint } from "./machine-report";
import { type Markup, markup } from "./markup";
import { changesWords, marginWords, readingText, refusedPoints } from "./reading-text";
import { zoneChip } from "./zone-chip";

/** How wide charts are drawn: as a telephone shows them, so that their print is nowhere too small. */
export const NARROW = 400;

const titles = ["point", "date", "reading", "zone", "margin", "change"];

/** What is to be known of a verdict before relying on it. */
function notesOf({ verdict, basis }: ReadPoint): string[] {
  return [
    ...basis.differences,
    ...verdict.cautions,
    ...basis.cautions,
    ...basis.unjudged.map(({ as, because }) => `Not judged, ${as}: ${because}.`),
    ...basis.assumedFacts.map((text) => `Assumed: ${text}.`),
    ...[...basis.assumed, ...verdict.assumed].map((name) => `Assumed: ${assumptions[name]}.`),
    ...basis.setAside.map((text) => `Set aside: ${text}.`),
    ...basis.notCompared.map((text) => `No change told: ${text}.`),
  ];
}

/** The last reading of each point, the worst drawn on the zones of its table; or that there is none. */
export function readingSection(
  { points, unjudged, refused, verdict }: MachineReport,
  charts: PageCharts,
  sources: CitedSources,
): Markup | undefined {
  const [worst, ...others] = points;
  const left = bullets(refused);
  if (worst === undefined) {
    const why =
      unjudged.length === 0
        ? "None on the route: this machine was not judged."
        : "All readings of this machine on the route were refused: it was not judged.";
    return section("reading", "Last reading", markup`<p>${why}</p>\n`, left);
  }
  const { point = "" } = worst.verdict;
  const rows = points.map((one) => [
    one.verdict.point ?? "the machine",
    one.verdict.date ?? "",
    readingText(one),
    zoneChip(one),
    marginWords(one),
    changesWords(one),
  ]);
  const cites = worst.basis.limitSources.map((source) => sources.cite(source));
  return section(
    "reading",
    "Last reading",
    markup`<div class="beside">
${verdict && charts.figure(severityBar({ judgement: verdict, width: NARROW }))}<div>
<p class="lead-line">${point !== "" && `${point}: `}${zoneChip(worst)} ${verdict?.word}${unjudged.length > 0 && markup` <strong>of the readings that could be read; ${refusedPoints(unjudged)}</strong>`}</p>
<p>${worst.basis.standards.join("; ")}${verdict && `, measured on ${verdict.measuredOn}`} ${cites}</p>
${bullets([...new Set(notesOf(worst))])}</div>
</div>
`,
    table("Readings of the last route, the worst first", titles, rows, titles.slice(0, 4)),
    bullets(
      others.flatMap(({ verdict: { point: name, line, cautions } }) =>
        cautions.map((text) => `${name ?? "the machine"} (line ${line}): ${text}`),
      ),
    ),
    left,
  );
}
