import { type Markup, markup } from "./markup";

/** A section under its heading; nothing where nothing stands in it. */
export function section(name: string, title: string, ...parts: readonly (Markup | undefined)[]): Markup | undefined {
  const inner = parts.filter((part) => part !== undefined && part.text !== "");
  if (inner.length === 0) return undefined;
  return markup`<section id="${name}">
<h2>${title}</h2>
${inner}</section>
`;
}

/** Words as a sentence. */
export function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? "" : "."}`;
}

/** A list of sentences; nothing for none. */
export function bullets(texts: readonly (string | Markup)[]): Markup | undefined {
  if (texts.length === 0) return undefined;
  return markup`<ul>
${texts.map((text) => markup`<li>${text}</li>\n`)}</ul>
`;
}

/** Rows of a table that stays on one sheet of paper. */
const WHOLE = 12;

/** Letters of a text that stays on one line. */
const SHORT = 24;

/** A cell of a table: a text, or markup. */
export type Cell = string | Markup;

/**
 * A table; in a narrow window each row is a block, with the titles before its cells.
 *
 * @param short - titles of columns whose texts stay on one line where they are short
 */
export function table(
  caption: string,
  titles: readonly string[],
  rows: readonly (readonly Cell[])[],
  short: readonly string[] = [],
): Markup {
  const kind = (one: Cell, i: number): Markup | false =>
    short.includes(titles[i] as string) && (typeof one !== "string" || one.length <= SHORT) && markup` class="short"`;
  const cell = (one: Cell, i: number): Markup =>
    i === 0
      ? markup`<th scope="row"${kind(one, i)}>${one}</th>`
      : markup`<td data-name="${titles[i]}"${kind(one, i)}>${one}</td>`;
  // what is short stays on one sheet of paper
  return markup`<table${rows.length <= WHOLE && markup` class="whole"`}>
<caption>${caption}</caption>
<thead><tr>${titles.map((title) => markup`<th scope="col">${title}</th>`)}</tr></thead>
<tbody>
${rows.map((row) => markup`<tr>${row.map(cell)}</tr>\n`)}</tbody>
</table>
`;
}

/** Names with what is said of each. */
export function facts(rows: readonly (readonly [name: string, text: string | Markup])[]): Markup | undefined {
  if (rows.length === 0) return undefined;
  return markup`<dl class="facts">
${rows.map(([name, text]) => markup`<div><dt>${name}</dt><dd>${text}</dd></div>\n`)}</dl>
`;
}
