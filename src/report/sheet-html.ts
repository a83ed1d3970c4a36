import { markupText, requireText, withParameters } from "../core/index";
import { requireSheet } from "./require-sheet";
import type { Sheet, SheetSection, SheetTable } from "./sheet";
import { wellFormed } from "./well-formed";

const STYLE = `
  :root { color-scheme: light; }
  body { font: 11pt/1.4 Georgia, "Times New Roman", serif; color: #111; background: #fff; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; }
  h1 { font-size: 1.5rem; margin: 0 0 .2rem; }
  h2 { font-size: 1.05rem; margin: 1.6rem 0 .4rem; border-bottom: 1px solid #111; break-after: avoid; }
  p { margin: .3rem 0; }
  table { border-collapse: collapse; width: 100%; margin: .4rem 0; font-size: .92em; }
  th, td { text-align: left; vertical-align: top; padding: .2rem .6rem .2rem 0; border-bottom: 1px solid #bbb; }
  th { font-weight: 600; border-bottom-color: #111; }
  tr, li { break-inside: avoid; }
  td:empty { height: 1.7rem; }
  td:empty:last-child { min-width: 3.5rem; }
  td.write { min-width: 8rem; }
  .facts { table-layout: fixed; overflow-wrap: anywhere; }
  .facts th:first-child, .facts td:first-child { width: 35%; }
  .cautions { border: 1px solid #111; padding: .3rem .8rem; margin: .8rem 0; }
  .picture { break-inside: avoid; text-align: center; }
  .picture img { max-width: 100%; height: auto; }
  .blanks td:last-child { width: 65%; border-bottom: 1px solid #111; height: 2rem; }
  @page { size: A4; margin: 18mm; }
  @media print { body { margin: 0; max-width: none; padding: 0; font-size: 10pt; } }
`;

/** How the title of a column begins that takes what was found, which is more than a tick. */
const WRITE = "found";

function tableText({ columns, rows }: SheetTable): string {
  const isFacts = columns.every((title) => title === "");
  const kind = (tag: "th" | "td", i: number): string =>
    tag === "td" && (columns[i] ?? "").startsWith(WRITE) ? ' class="write"' : "";
  const row = (cells: readonly string[], tag: "th" | "td"): string =>
    `<tr>${cells.map((cell, i) => `<${tag}${kind(tag, i)}>${markupText(cell)}</${tag}>`).join("")}</tr>\n`;
  return `<table${isFacts ? ' class="facts"' : ""}>\n<thead>\n${row(columns, "th")}</thead>\n<tbody>\n${rows.map((cells) => row(cells, "td")).join("")}</tbody>\n</table>\n`;
}

function sectionText({ title, text: lines = [], table, list = [] }: SheetSection): string {
  return [
    `<h2>${markupText(title)}</h2>\n`,
    ...lines.map((one) => `<p>${markupText(one)}</p>\n`),
    ...(table === undefined ? [] : [tableText(table)]),
    ...(list.length === 0 ? [] : [`<ul>\n${list.map((one) => `<li>${markupText(one)}</li>\n`).join("")}</ul>\n`]),
  ].join("");
}

/** A picture as an image: what is in it stays apart from the page, and runs nothing. */
function pictureText({ svg, text }: NonNullable<Sheet["picture"]>): string {
  return `<p class="picture"><img alt="${markupText(text)}" src="data:image/svg+xml,${encodeURIComponent(wellFormed(svg))}"></p>\n`;
}

/**
 * A sheet as one HTML page that stands alone, set for paper.
 *
 * Its text is escaped, and it loads nothing from elsewhere.
 *
 * @param language - of the page, `"en-GB"` if not given
 * @throws {@link VeladisError} `missing-option` or `wrong-type` for what is no sheet
 * @example
 * ```ts
 * import { setpointSheet, sheetHtml } from "veladis/protection";
 *
 * sheetHtml(setpointSheet({ machine: "Circulation pump 3, gear side" })).includes("<h2>Signed</h2>"); // => true
 * ```
 */
export function sheetHtml(sheet: Sheet, language = "en-GB"): string {
  return withParameters({ sheet, language }, () => {
    const { title, subject, cautions, sections, picture, blanks } = requireSheet(sheet);
    requireText(language, 'the language of a page, such as "en-GB"', { parameter: "language" });
    return `<!doctype html>
<html lang="${markupText(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${markupText(title)}: ${markupText(subject)}</title>
<style>${STYLE}</style>
</head>
<body>
<h1>${markupText(title)}</h1>
<p>${markupText(subject)}</p>
<div class="cautions">
${cautions.map((one) => `<p>${markupText(one)}</p>\n`).join("")}</div>
${sections.map(sectionText).join("")}${picture === undefined ? "" : pictureText(picture)}<h2>Signed</h2>
<table class="blanks">
<tbody>
${blanks.map((one) => `<tr><td>${markupText(one)}</td><td></td></tr>\n`).join("")}</tbody>
</table>
</body>
</html>
`;
  });
}
