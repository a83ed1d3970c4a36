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

/** A list of sentences; nothing for none. */
export function bullets(texts: readonly (string | Markup)[]): Markup | undefined {
  if (texts.length === 0) return undefined;
  return markup`<ul>
${texts.map((text) => markup`<li>${text}</li>\n`)}</ul>
`;
}

/** A column of a table: numbers stand at the right. */
export interface Column {
  readonly title: string;
  readonly number?: true;
}

/** A table, which may be wider than a narrow window and then moves within its own frame. */
export function table(
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly (string | Markup)[])[],
): Markup {
  const kind = (i: number): Markup | undefined => (columns[i]?.number ? markup` class="number"` : undefined);
  return markup`<div class="frame" tabindex="0" role="region" aria-label="${caption}">
<table>
<caption>${caption}</caption>
<thead><tr>${columns.map(({ title }, i) => markup`<th scope="col"${kind(i)}>${title}</th>`)}</tr></thead>
<tbody>
${rows.map((row) => markup`<tr>${row.map((cell, i) => (i === 0 ? markup`<th scope="row">${cell}</th>` : markup`<td${kind(i)}>${cell}</td>`))}</tr>\n`)}</tbody>
</table>
</div>
`;
}

/** Names with what is said of each. */
export function facts(rows: readonly (readonly [name: string, text: string | Markup])[]): Markup | undefined {
  if (rows.length === 0) return undefined;
  return markup`<dl class="facts">
${rows.map(([name, text]) => markup`<div><dt>${name}</dt><dd>${text}</dd></div>\n`)}</dl>
`;
}
