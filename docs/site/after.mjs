/** What is done to the pages that typedoc wrote: charts put in place of pictures, and what readers need not load left out. */
import { appendFileSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { frameOf, joinAssets, writeFrame } from "./frame.mjs";
import { ranked } from "./ranked.mjs";

/**
 * The charts themselves in the place of their pictures, wide ones and narrow ones for a telephone: so they take the
 * colours of the page, and a screen reader finds their words.
 */
function withCharts(html, generated) {
  return html.replace(/<img src="[^"]*?([\w-]+)\.svg"[^>]*>/g, (picture, chart) => {
    const [wide, narrow] = [`${chart}.svg`, `${chart}-narrow.svg`].map((file) => join(generated, file));
    if (!existsSync(narrow)) return picture;
    // the style of charts stands once in the site's own style sheet
    const read = (file) => readFileSync(file, "utf8").replace(/<style>.*?<\/style>/s, "");
    return `<span class="chart-wide">${read(wide)}</span><span class="chart-narrow">${read(narrow)}</span>`;
  });
}

/** One member of a union of texts as typedoc writes it, whose text fits a pattern. */
const member = (text) =>
  `(?:<span class="tsd-signature-symbol">\\|</span>\\s*)?<span class="tsd-signature-type">&quot;${text}&quot;</span>(?:<br/>|\\s|&nbsp;)*(?:<span class="tsd-signature-symbol">\\|</span>\\s*)?`;

/** Unions of dozens of texts, and the name that says the same. */
const unions = [
  [new RegExp(`(?:${member("[^& ]{1,7} [a-z]+")}){20,}`, "g"), "veladis.AmplitudeType"],
  [new RegExp(`(?:${member("[^& -]{1,8}")}){25,}`, "g"), "veladis.UnitSpelling"],
  [new RegExp(`(?:${member("[a-z]+-[a-zA-Z\\d.-]+")}){25,}`, "g"), "veladis_severity.SchemeId"],
];

/** Long unions by their names. */
function named(html) {
  const base = /data-base="([^"]*)"/.exec(html)?.[1] ?? "./";
  return unions.reduce((text, [union, name]) => {
    const link = `<a href="${base}types/${name}.html" class="tsd-signature-type tsd-kind-type-alias">${name.split(".")[1]}</a>`;
    return text.replace(union, link);
  }, html);
}

/** Signs of a signature without a wrapping of their own, and a constant without its members told a second time. */
function shorter(html) {
  const plain = html
    .replace(/<meta (?:http-equiv="x-ua-compatible"|name="description")[^>]*>/g, "")
    .replace(/<span class="tsd-signature-symbol">([^<]*)<\/span>/g, "$1");
  if (!plain.includes("<h1>Variable ")) return plain;
  const from = plain.indexOf('<div class="tsd-type-declaration">');
  const until = plain.indexOf('</div>\n<div class="col-sidebar">');
  return from < 0 || until < from ? plain : plain.slice(0, from) + plain.slice(until);
}

/** A page that tells of no hierarchy without the script that unfolds one. */
function withoutHierarchy(html) {
  if (html.includes('class="tsd-panel tsd-hierarchy"')) return html;
  return html.replace(/<script async src="[^"]*hierarchy\.js" id="tsd-hierarchy-script"><\/script>/, "");
}

/** Blocks without the line ends between them, which nobody sees; code keeps its own. */
function withoutLineEnds(html) {
  const block =
    /\n+(?=<\/?(?:div|section|[uo]l|li|h\d|details|summary|p|table|thead|tbody|tr|t[dh]|nav|header|footer|dialog)\b)/g;
  return html
    .split(/(<pre.*?<\/pre>)/s)
    .map((part) => (part.startsWith("<pre") ? part : part.replace(block, "")))
    .join("");
}

/** Icons from the page itself, into which `icons.js` puts them: a page opened from a file may not load another for them. */
function ownIcons(html) {
  return html.replace(/href="[^"]*assets\/icons\.svg#/g, 'href="#');
}

/** Permalinks without a drawing each (the style sheet gives them a sign), and no drawings before the names within a page. */
function plainer(html) {
  const [content, side = ""] = html.split(/(?=<div class="col-sidebar">)/);
  const marked = content.replace(
    /<a href="(#[^"]*)" aria-label="Permalink" class="tsd-anchor-icon"><svg.*?<\/svg><\/a>/g,
    '<a href="$1" aria-label="Permalink" class="tsd-anchor-icon"></a>',
  );
  // a link within the button that folds a section cannot be reached
  const reachable = marked.replace(/<summary.*?<\/summary>/gs, (summary) =>
    summary.replace(/<a [^>]*class="tsd-anchor-icon"><\/a>/g, ""),
  );
  return reachable + side.replace(/<svg class="tsd-kind-icon".*?<\/svg>/g, "");
}

/**
 * An interface without its index and its members in one block: "On this page" names them, and below each is told; and
 * without the mark that each is read-only, since all are.
 */
function withoutSummary(html) {
  return html
    .replace(/<section class="tsd-panel-group tsd-index-group">.*?<\/details><\/section><\/section>/s, "")
    .replace(/<code class="tsd-tag">Readonly<\/code>\s?/g, "")
    .replace(/<div class="tsd-signature"><span class="tsd-signature-keyword">interface<\/span>.*?<\/div>/s, "");
}

/** The class of code that is neither word nor sign of the language, by its colours: typedoc numbers them as they come. */
function plainCode(site) {
  const style = readFileSync(join(site, "assets/highlight.css"), "utf8");
  return /--light-(hl-\d+): #000000;\s*--dark-\1: #D4D4D4;/.exec(style)?.[1];
}

/** What may be wider than a telephone, within reach of the keyboard, so that it can be scrolled without a pointer. */
function scrollable(html) {
  const wide = (code) => code.split(/<br\/>|\n/).some((line) => line.replace(/<[^>]*>/g, "").length > 36);
  return html
    .replace(/<pre>(.*?)<\/pre>/gs, (whole, code) => (wide(code) ? `<pre tabindex="0">${code}</pre>` : whole))
    .replace(/<table>(?=\s*<thead>)/g, '<table tabindex="0">');
}

/** Commands in colour, what they print plain: the rules of a shell do not hold for it. */
function plainResults(html) {
  return html.replace(/(<pre[^>]*><code class="sh">)(.*?)(<\/code>)/gs, (_, start, code, end) => {
    let command = false;
    const prompted = code.replace(/<[^>]*>/g, "").includes("$ ");
    const lines = code.split("<br/>").map((line) => {
      const text = line.replace(/<[^>]*>/g, "");
      command = command || text.startsWith("$ ") || !prompted;
      const shown = command ? line : text;
      command = command && text.endsWith("\\");
      return shown;
    });
    return start + lines.join("<br/>") + end;
  });
}

/** The page's own part as its `main` landmark, to which a screen reader and the print style go. */
function withLandmark(html) {
  return html
    .replace('<div class="col-content">', '<main class="col-content">')
    .replace(/<\/div>\s*(?=<div class="col-sidebar">|<\/div>\s*<footer>)/, "</main>");
}

/** Headings that skip no level after the one they stand under; those of the side columns are no headings of the page. */
function withOrderedHeadings(html) {
  const [content, side = ""] = html.split(/(?=<div class="col-sidebar">)/);
  const above = [];
  const ordered = content.replace(/<h([1-6])\b([^>]*)>(.*?)<\/h\1>/gs, (_, level, rest, inner) => {
    while (above.length > 0 && above.at(-1) >= Number(level)) above.pop();
    above.push(Number(level));
    return `<h${above.length}${rest}>${inner}</h${above.length}>`;
  });
  return ordered + side.replace(/<h3>(.*?)<\/h3>/g, '<span class="side-heading">$1</span>');
}

/** The light colours of the theme for paper, whichever theme the page has. */
function lightOnPaper(site) {
  const styles = ["style", "highlight"].map((name) => readFileSync(join(site, `assets/${name}.css`), "utf8")).join("");
  const names = [...new Set([...styles.matchAll(/--([\w-]+):\s*var\(--dark-\1\)/g)].map(([, name]) => name))];
  return `@media print { :root, :root[data-theme] { ${names.map((name) => `--${name}: var(--light-${name});`).join(" ")} } }`;
}

/** The script of the theme, which puts the answers of a search in the order of `ranked`. */
function withRanking(site) {
  const path = join(site, "assets/main.js");
  const replaced = [
    [/(\w+)\.index\.search\(\w+\)/, (_, state) => `(${ranked})(${state}.index,${state}.data.rows,i)`],
    [/\w\*=10\/\(1\+Math\.abs\([^)]*\)\)/, () => "0"],
  ];
  const script = replaced.reduce(
    (text, [pattern, by]) => {
      if (!pattern.test(text)) throw new Error(`the theme's script has no ${pattern}`);
      return text.replace(pattern, by);
    },
    readFileSync(path, "utf8"),
  );
  writeFileSync(path, script);
}

/** Mends every page of a site. */
export function mendPages(site, generated) {
  withRanking(site);
  const plain = plainCode(site);
  const { told, framed } = frameOf();
  const wrapped = new RegExp(`<span class="${plain}">([^<]*)</span>`, "g");
  for (const name of readdirSync(site, { recursive: true })) {
    if (!name.endsWith(".html")) continue;
    const path = join(site, name);
    const before = readFileSync(path, "utf8").replace(wrapped, "$1");
    const charted = name.startsWith("documents") ? withCharts(before, generated) : shorter(named(before));
    const after = plainResults(
      scrollable(
        ownIcons(withoutHierarchy(plainer(name.startsWith("interfaces") ? withoutSummary(charted) : charted))),
      ),
    );
    writeFileSync(path, framed(withLandmark(withOrderedHeadings(withoutLineEnds(after)))));
  }
  writeFrame(site, told);
  const [, style] = /<style>(.*?)<\/style>/s.exec(readFileSync(join(generated, "trend.svg"), "utf8"));
  appendFileSync(
    join(site, "assets/custom.css"),
    `\npre code { color: var(--${plain}); }\n${style}\n${lightOnPaper(site)}\n`,
  );
  joinAssets(site);
  // charts stand in the pages themselves; what pages link to stays
  const media = join(site, "media");
  for (const name of readdirSync(media)) if (existsSync(join(generated, name))) rmSync(join(media, name));
}
