import { format, significant } from "../../reading/index";
import type { CitedSources } from "./cited-sources";
import { bullets, section, table } from "./list-parts";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";

const titles = ["setting", "as set", "proposed", "the rules allow", "what would change"];

/** What is set, where nothing is proposed. */
function asSet({ machine }: MachineReport): Markup | undefined {
  const rows = Object.entries({ alarm: machine.alarm, trip: machine.trip }).flatMap(([name, level]) =>
    level === undefined ? [] : [[name, format(level)]],
  );
  if (rows.length === 0) return undefined;
  return section("setpoints", "Setpoints", table("Setpoints as set; none are proposed", titles.slice(0, 2), rows));
}

/** Alarm and trip as they are set, and as the rules propose them; nothing is changed by it. */
export function setpointsSection(report: MachineReport, sources: CitedSources): Markup | undefined {
  const { scheduled } = report;
  if (scheduled === undefined) return asSet(report);
  const { changes, proposal } = scheduled;
  const written = (value: number, unit: string): string =>
    `${unit === "s" || unit === "%" ? Number(value.toPrecision(4)) : significant(value, 4)} ${unit}`;
  const rows = changes.map(({ setting, unit, set, proposed, allowed, text }) => [
    setting,
    set === null ? "not known" : written(set, unit),
    proposed === null ? "none" : written(proposed, unit),
    allowed === null ? "" : allowed.map((one) => written(one, unit)).join(" to "),
    text,
  ]);
  const reasons = new Map(
    [...changes.flatMap(({ why }) => why), ...(proposal.statistical?.reasons ?? [])].map(({ text, source }) => [
      text,
      source,
    ]),
  );
  return section(
    "setpoints",
    "Setpoints",
    markup`<p>A proposal for the person who answers for the machine. Nothing was changed by it.</p>\n`,
    rows.length === 0
      ? markup`<p>None is proposed.</p>\n`
      : table("Setpoints as set and as proposed", titles, rows, titles.slice(0, 3)),
    bullets(proposal.warnings.map(({ text }) => text)),
    reasons.size > 0 ? markup`<h3>Why</h3>\n` : undefined,
    bullets([...reasons].map(([text, source]) => markup`${text} ${sources.cite(source)}`)),
  );
}
