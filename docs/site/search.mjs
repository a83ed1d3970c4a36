/**
 * A plug-in of typedoc: the index that the pages are searched by. A guide is found by its sections, each a row of its own
 * that leads to its heading, and stands before the names of the library; examples and common words are left out.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { deflateSync } from "node:zlib";

// the very copy that typedoc puts into the pages: an index is read by the version that wrote it
const lunr = createRequire(fileURLToPath(import.meta.resolve("typedoc")))("lunr");

/**
 * Words of the trade and the section of a guide that answers for each. A search for one puts that section first; the
 * tests of the pages ask for every row.
 */
const tradeWords = JSON.parse(readFileSync(new URL("trade-words.json", import.meta.url), "utf8"));

const [DOCUMENT, REFERENCE] = [8388608, 4194304];

/** How much more a row of such a page says to one who searches than a name of the library. */
const boosts = { "Worked examples": 4000, Explanations: 4000, Live: 2000, Reference: 1000 };

/** Sections at the end of a guide, which answer no question of the trade. */
const lesser = /^(checked against|cautions?|sources|in code)$/i;

const entities = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'", nbsp: " " };

/** The words of a piece of a page: without code, markup and drawings, and without the names of the library. */
function wordsOf(html) {
  return html
    .replace(/<(pre|svg|script|style)\b.*?<\/\1>/gs, " ")
    .replace(/<[^>]*>/g, " ")
    .replace(/&([a-z]+|#39);/g, (whole, name) => entities[name] ?? whole)
    .replace(/\b[a-z]+[A-Z]\w*(\.\w+)?\b|\b[A-Z][a-z]+[A-Z]\w*\b/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}

/** The sections of a page of the guides: heading, place within the page, words; the first is the page itself. */
function sectionsOf(html) {
  const body = /<div class="tsd-panel tsd-typography">(.*?)<\/div>\s*<\/div>\s*<div class="col-sidebar">/s.exec(html);
  const parts = (body?.[1] ?? "").split(/(?=<h[1-6] id=)/).filter((part) => part.startsWith("<h"));
  return parts.map((part) => {
    const [head, id, inner] = /^<h\d id="([^"]*)"[^>]*>(.*?)<\/h\d>/s.exec(part);
    return { id, heading: wordsOf(inner), text: wordsOf(part.slice(head.length)) };
  });
}

/** Rows of the pages of the guides. */
function guideRows(folder, guides) {
  const names = readdirSync(join(folder, "documents")).map((name) => `documents/${name}`);
  const rows = names.flatMap((url) => {
    const guide = guides.get(url);
    if (guide === undefined) return [];
    const boost = boosts[guide.category] ?? 1000;
    const sections = sectionsOf(readFileSync(join(folder, url), "utf8"));
    return sections.map(({ id, heading, text }, i) => ({
      row: {
        kind: DOCUMENT,
        name: i === 0 || heading === guide.name ? guide.name : `${heading} (${guide.name})`,
        url: i === 0 ? url : `${url}#${id}`,
        classes: "",
      },
      words: { name: i === 0 ? `${guide.name} ${heading}` : heading, guide: guide.name, text },
      boost: lesser.test(heading) ? boost / 20 : boost,
    }));
  });
  for (const [words, place] of tradeWords) {
    const one = rows.find(({ row }) => row.url === `documents/${place}`);
    if (one === undefined) throw new Error(`docs/site/trade-words.json: no section ${place} for "${words}"`);
    one.row.also = [...(one.row.also ?? []), words.toLowerCase()];
    one.words.name += ` ${words}`;
  }
  return rows;
}

/** The index of rows, as the script of the pages reads it. */
function searchIndex(found) {
  const builder = new lunr.Builder();
  builder.pipeline.add(lunr.trimmer, lunr.stopWordFilter);
  builder.ref("id");
  builder.field("name", { boost: 20 });
  builder.field("guide", { boost: 2 });
  builder.field("text");
  for (const [id, { words, boost }] of found.entries()) builder.add({ id, ...words }, { boost });
  return { rows: found.map(({ row }) => row), index: builder.build() };
}

/** The summary of what a name of the library is; its examples are left out. */
function summaryOf(reflection) {
  const comments = [reflection.comment, ...(reflection.signatures ?? []).map((one) => one.comment)];
  return comments
    .flatMap((one) => one?.summary ?? [])
    .map(({ text }) => text)
    .join("\n");
}

export function load(app) {
  let found = [];
  const guides = new Map();
  app.renderer.on("prepareIndex", (event) => {
    const { router, theme } = app.renderer;
    for (const one of event.searchResults.filter((reflection) => reflection.isDocument()))
      guides.set(router.getFullUrl(one), { name: one.name, category: one.frontmatter.category });
    found = event.searchResults
      .filter((one) => !one.isDocument() && one.kind !== REFERENCE)
      .map((one) => ({
        row: {
          kind: one.kind,
          name: one.name,
          url: router.getFullUrl(one),
          classes: theme.getReflectionClasses(one),
          ...(theme.getReflectionIcon(one) !== one.kind && { icon: theme.getReflectionIcon(one) }),
          ...(one.parent && !one.parent.isProject() && { parent: one.parent.getFullName() }),
        },
        words: { name: one.name, text: summaryOf(one) },
        boost: 1,
      }));
    event.searchResults = [];
  });
  app.renderer.on("endRender", ({ outputDirectory }) => {
    const index = searchIndex([...guideRows(outputDirectory, guides), ...found]);
    const packed = deflateSync(JSON.stringify(index), { level: 9 }).toString("base64");
    writeFileSync(join(outputDirectory, "assets/search.js"), `window.searchData = "${packed}";`);
  });
}
