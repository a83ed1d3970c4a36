import { withParameters } from "../core/index";
import { markdownText } from "./markdown-text";
import { requireSheet } from "./require-sheet";
import type { Sheet, SheetSection, SheetTable } from "./sheet";
import { wellFormed } from "./well-formed";

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

/** A picture in its file; in words where it is in none. */
function pictureText({ text, file }: NonNullable<Sheet["picture"]>): string {
  if (file === undefined) return `Picture in words: ${markdownText(text)}\n`;
  const address = encodeURI(wellFormed(file)).replace(/[()]/g, (one) => `%${one.charCodeAt(0).toString(16)}`);
  return `![${markdownText(text)}](${address})\n`;
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
    const { title, subject, cautions, sections, picture, blanks } = requireSheet(sheet);
    const parts = [
      `# ${markdownText(title)}\n`,
      `${markdownText(subject)}\n`,
      cautions.map((one) => `> ${markdownText(one)}\n`).join(">\n"),
      ...sections.map(sectionText),
      ...(picture === undefined ? [] : [pictureText(picture)]),
      "## Signed\n",
      `| | |\n| --- | --- |\n${blanks.map((one) => `| ${markdownText(one)} | ${"\\_".repeat(28)} |\n`).join("")}`,
    ];
    return parts.join("\n");
  });
}
