import { countLimits } from "veladis/severity";

/** The mark that opens the generated part of a page. */
export const BEGIN = "<!-- limits:begin -->";

/** The mark that closes it. */
export const END = "<!-- limits:end -->";

/** The counts as the README shows them: one sentence and the caution. */
export function limitsSummary(): string {
  const { published, memory, schemes } = countLimits();
  return `${schemes.length} tables hold ${published + memory} limits: ${published} were read in print (the page is named with each), ${memory} are from memory and marked so.
Check a limit from memory against the standard before relying on it.`;
}

/** The counts table by table, as Markdown. */
function limitsTable(): string {
  const { schemes } = countLimits();
  const rows = schemes.map(
    ({ scheme, published, memory }) =>
      `| \`${scheme.id}\` | ${scheme.standard} (${scheme.edition}) | ${scheme.kind} | ${scheme.status} | ${published} | ${memory} |`,
  );
  const head = ["| table | standard | kind | status | read | memory |", "| --- | --- | --- | --- | ---: | ---: |"];
  return [...head, ...rows].join("\n");
}

/** What stands between the marks in docs/guides/severity-sources.md. */
export function limitsSection(): string {
  return `${BEGIN}\n${limitsSummary()}\n\n${limitsTable()}\n${END}`;
}

/** The part of a page from mark to mark, or undefined when there is none. */
export function generatedPart(page: string): string | undefined {
  const start = page.indexOf(BEGIN);
  const end = page.indexOf(END);
  return start < 0 || end < start ? undefined : page.slice(start, end + END.length);
}
