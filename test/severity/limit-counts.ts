import { builtInSchemes, countLimits, type Provenance, provenances } from "veladis/severity";
import { countsText } from "../../src/cli/print/counts-text";
import { inListOrder } from "../../src/severity/index";

/** Ways to know a limit, worst first, of the tables that are shipped: a confirmation is the user's own. */
const grades = (Object.keys(provenances) as Provenance[]).filter((one) => one !== "confirmed");

/** The mark that opens the generated part of a page. */
export const BEGIN = "<!-- limits:begin -->";

/** The mark that closes it. */
export const END = "<!-- limits:end -->";

/** The counts as the README shows them: one sentence and the caution. */
export function limitsSummary(): string {
  const { schemes, ...counts } = countLimits();
  const told = grades.filter((one) => counts[one] > 0).map((one) => `${counts[one]} ${provenances[one].text}`);
  return `${schemes.length} tables hold ${counts.limits} limits: ${told.join(", ")}. Every one says so, and names the page where it was read.
Check a limit against the standard before relying on it, unless it was read in the publication itself or you confirmed it.`;
}

/** The counts table by table, as Markdown. */
function limitsTable(): string {
  const rows = countLimits(inListOrder(builtInSchemes)).schemes.map(
    ({ scheme, ...counts }) =>
      `| [\`${scheme.id}\`](../generated/scheme-${scheme.id.toLowerCase()}.md) | ${scheme.standard} (${scheme.edition}) | ${scheme.kind} | ${scheme.status} | ${countsText(counts)} |`,
  );
  const head = ["| table | standard | kind | status | limits |", "| --- | --- | --- | --- | --- |"];
  return [...head, ...rows].join("\n");
}

/** What stands between the marks in docs/guides/severity-sources.md. */
export function limitsSection(): string {
  return `${BEGIN}\n${limitsSummary()}\n\nBy standard, part and edition:\n\n${limitsTable()}\n${END}`;
}

/** The part of a page from mark to mark, or undefined when there is none. */
export function generatedPart(page: string): string | undefined {
  const start = page.indexOf(BEGIN);
  const end = page.indexOf(END);
  return start < 0 || end < start ? undefined : page.slice(start, end + END.length);
}
