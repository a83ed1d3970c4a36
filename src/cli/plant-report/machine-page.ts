import { changesSection } from "./changes-section";
import { PageCharts } from "./chart-figure";
import { checkSection } from "./check-section";
import { CitedSources } from "./cited-sources";
import { factsSection } from "./facts-section";
import { findingsSection } from "./findings-section";
import { historySection } from "./history-section";
import { limitsSection } from "./limits-section";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";
import { cautionsBox, pageText } from "./page-frame";
import { readingSection } from "./reading-section";
import type { ReportHead } from "./report-head";
import { setpointsSection } from "./setpoints-section";
import { countChips, standingChip } from "./standing";

/** A page beside another in the order of the index. */
export interface Neighbour {
  readonly tag: string;
  readonly page: string;
}

function link(one: Neighbour | undefined, words: string, kind: "prev" | "next"): Markup | false {
  return one !== undefined && markup`<a rel="${kind}" class="to-${kind}" href="${one.page}">${words}: ${one.tag}</a>\n`;
}

/** The page of a machine: how it stands first, then what that rests on. */
export function machinePage(
  report: MachineReport,
  head: Pick<ReportHead, "name" | "on" | "from">,
  beside: { readonly index: string; readonly before?: Neighbour | undefined; readonly next?: Neighbour | undefined },
): string {
  const { machine, due } = report;
  const { tag, description, line } = machine;
  const sources = new CitedSources();
  const charts = new PageCharts();
  const chips = [standingChip(report), ...countChips(report)];
  // in the order in which they cite, so that the numbers rise down the page
  const sections = [
    findingsSection(report, sources),
    readingSection(report, charts, sources),
    limitsSection(report, sources),
    setpointsSection(report, sources),
    historySection(report, charts),
    checkSection(report, charts, sources),
    changesSection(report),
    factsSection(machine),
    sources.section(),
  ];
  const body = markup`<nav aria-label="Pages">
<a href="${beside.index}">All machines</a>
${link(beside.before, "Before it", "prev")}${link(beside.next, "Next", "next")}</nav>
<header>
<p class="over">${head.name}, on ${head.on}</p>
<h1>${tag}</h1>
${description !== undefined && markup`<p class="subject">${description}</p>\n`}<ul class="standing">
${chips.map((chip) => markup`<li>${chip}</li>\n`)}<li>check of the device: ${due.state}${due.due !== null && `, ${due.due}`}</li>
</ul>
</header>
<main>
${cautionsBox()}${sections}</main>
<footer>
<p>Made from ${head.from.join(", ")}; the row of this machine is line ${line} of ${head.from[0]}.</p>
</footer>
`;
  return pageText({ title: `${tag}: ${head.name}`, style: charts.style, body });
}
