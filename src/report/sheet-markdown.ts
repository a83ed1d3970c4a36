import { withParameters } from "../core/index";
import { markdownText } from "./markdown-text";
import { requireSheet } from "./require-sheet";
import type { Sheet, SheetSection, SheetTable } from "./sheet";

function tableText({ columns, rows }: SheetTable): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(markdownText).join(" | ")} |\n`;
  return `${line(columns)}|${" --- |".repeat(columns.length)}\n${rows.map(line).join("")}`;
}

function sectionText({ title, text = [], table, list = [] }: SheetSection): string {
  const parts = [
    `## ${markdownText(title)}\n`,
    ...text.map((one) => `${markdownText(one)}\n`),
    ...(table === undefined ? [] : [tableText(table)]),
    ...(list.length === 0 ? [] : [list.map((one) => `- ${markdownText(one)}\n`).join("")]),
  ];
  return parts.join("\n");
}

/**
 * A sheet as Markdown.
 *
 * @returns the text, with an empty line between its parts and a line feed at the end
 * @throws {@link VeladisError} `missing-option` or `wrong-type` for what is no sheet
 * @example
 * ```ts
 * import { setpointSheet, sheetMarkdown } from "veladis/protection";
 *
 * sheetMarkdown(setpointSheet({ machine: "Circulation pump 3, gear side" })).split("\n")[2];
 * // => "Circulation pump 3, gear side"
 * ```
 */
export function sheetMarkdown(sheet: Sheet): string {
  return withParameters({ sheet }, () => {
    const { title, subject, cautions, sections, blanks } = requireSheet(sheet);
    const parts = [
      `# ${markdownText(title)}\n`,
      `${markdownText(subject)}\n`,
      cautions.map((one) => `> ${markdownText(one)}\n`).join(">\n"),
      ...sections.map(sectionText),
      "## Signed\n",
      `| | |\n| --- | --- |\n${blanks.map((one) => `| ${markdownText(one)} | ${"\\_".repeat(28)} |\n`).join("")}`,
    ];
    return parts.join("\n");
  });
}
