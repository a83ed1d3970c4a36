import type { CitedSources } from "./cited-sources";
import { bullets, section } from "./list-parts";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";

/** The open findings, the gravest first: what, why, what would mend it, and where the rule is from. */
export function findingsSection(
  { findings, unanswered, notChecked }: MachineReport,
  sources: CitedSources,
): Markup | undefined {
  const rows = findings.map(
    ({ gravity, name, what, why, mend, source }) => markup`<li class="finding ${gravity}">
<p class="what"><span class="level">${gravity}</span> ${what} <span class="aside">${name}</span></p>
<p>${why} ${sources.cite(source)}</p>
<p><span class="lead">To mend it:</span> ${mend}</p>
</li>
`,
  );
  const open = unanswered.map(
    (text) => markup`<li class="finding warning">
<p class="what"><span class="level">not answered</span> ${text}</p>
</li>
`,
  );
  return section(
    "findings",
    "Open findings",
    rows.length + open.length === 0
      ? markup`<p>None: nothing that this report looks at was found wrong or lacking in the row of this machine.</p>\n`
      : markup`<ol class="findings">\n${rows}${open}</ol>\n`,
    notChecked.length === 0 ? undefined : markup`<h3>Not looked for, since facts are missing</h3>\n`,
    bullets(notChecked),
  );
}
