import { provenances } from "../../../src/entries/severity";
import type { Source } from "../../../src/index";

/** A text as it may stand in a cell of a table; code stays as it is. */
export function cell(text: string): string {
  const parts = text
    .replace(/\|/g, "\\|")
    .replace(/\n/g, " ")
    .split(/(`[^`]*`)/);
  return parts.map((part) => (part.startsWith("`") ? part : part.replace(/</g, "&lt;"))).join("");
}

/** A table in Markdown; numbers are set to the right. */
export function table(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(cell).join(" | ")} |`;
  const rule = `| ${heads.map((_, i) => (right.includes(i) ? "---:" : "---")).join(" | ")} |`;
  return [line(heads), rule, ...rows.map(line)].join("\n");
}

/** Several spellings, each as code. */
export function codes(spellings: readonly string[]): string {
  return spellings.map((one) => `\`${one}\``).join(", ");
}

/** A page with its title; `more` are further lines of its head. */
export function page(title: string, body: readonly string[], more: readonly string[] = []): string {
  return [
    `---\ntitle: ${JSON.stringify(title)}\ncategory: Reference${more.map((one) => `\n${one}`).join("")}\n---`,
    `# ${title}`,
    ...body,
  ]
    .join("\n\n")
    .concat("\n");
}

/** How a value is known, in one word. */
export function known({ provenance }: Source): string {
  return provenance;
}

/** A source in words, with the page it was read on. */
export function sourceText({ title, where, note, disputed, page: url }: Source): string {
  const isLink = url?.startsWith("http") === true;
  const name = isLink ? `[${title}](${url})` : title;
  return [name, where, note, disputed && `disputed: ${disputed}`, isLink ? undefined : url].filter(Boolean).join("; ");
}

export const KNOWN =
  `Known by, worst first: ${Object.entries(provenances)
    .map(([name, { text }]) => `**${name}**, ${text}`)
    .join(
      "; ",
    )}. Only values read in the publication itself or confirmed against a copy count as verified: check all ` +
  "others before relying on them.";

export const MADE = "This page is generated from the library's own tables whenever the site is built.";
