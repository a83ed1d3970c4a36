import { checkChart } from "../../chart/index";
import { format } from "../../reading/index";
import { checkRemarks, signed, toleranceText } from "../../report/index";
import type { PageCharts } from "./chart-figure";
import type { CitedSources } from "./cited-sources";
import { bullets, section, sentence, table } from "./list-parts";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";
import { NARROW } from "./reading-section";

const titles = ["check", "known", "showed", "error", "tolerance", "verdict"];

/** The last check against a known vibration: errors against tolerance, and what they mean for the readings since. */
export function checkSection(
  { checks, checkNotes, machine, due }: MachineReport,
  charts: PageCharts,
  sources: CitedSources,
): Markup | undefined {
  const { check } = machine;
  const when = check && `On ${check.date}${check.by === undefined ? "" : `, by ${check.by}`}. `;
  const rows = checks.map(({ name, check: one }) => [
    name,
    format(one.known),
    format(one.indicated),
    `${signed(one.errorPercent)} %`,
    `${toleranceText(one)} ${one.as}`,
    one.verdict,
  ]);
  return section(
    "check",
    "Last check of the device",
    markup`<p>${when}${sentence(due.what)} ${sentence(due.why)}${due.isDue && ` ${sentence(`to do: ${due.mend}`)}`} ${sources.cite(due.source)}</p>\n`,
    checks.length === 0
      ? undefined
      : markup`<div class="beside">
${charts.figure(checkChart({ checks, width: NARROW, height: 180 }))}<div>
${bullets([...new Set([...checkNotes, ...checks.flatMap(({ check: one }) => checkRemarks(one))])])}</div>
</div>
${table("Error against tolerance", titles, rows, titles)}`,
    checks.length === 0 ? bullets(checkNotes) : undefined,
  );
}
