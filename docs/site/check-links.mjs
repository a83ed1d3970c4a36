/** What does not resolve in a built site: links of its pages to files or headings that are not there. */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";

/** Text of an attribute as the browser reads it. */
const plain = (text) =>
  text
    .replace(/&amp;/g, "&")
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'");

/** The values of some attributes of a page; what scripts write there is not looked at. */
function values(html, names) {
  const markup = html.replace(/<script\b[^>]*>.*?<\/script>/gs, (script) => script.slice(0, script.indexOf(">") + 1));
  const pattern = new RegExp(`\\s(?:${names})="([^"]*)"`, "g");
  return [...markup.matchAll(pattern)].map(([, value]) => plain(value));
}

/**
 * Every local link of the pages in a folder that leads to no file or no heading, as "page: link". Links to other hosts
 * are not looked at, nor icons, which a script of the theme puts into the page.
 */
export function deadLinks(site) {
  const pages = readdirSync(site, { recursive: true }).filter((name) => name.endsWith(".html"));
  const texts = new Map(pages.map((name) => [resolve(site, name), readFileSync(join(site, name), "utf8")]));
  const names = new Map([...texts].map(([path, html]) => [path, new Set(values(html, "id|name"))]));
  const dead = [];
  for (const [path, html] of texts) {
    for (const link of new Set(values(html, "href|src"))) {
      if (link === "" || link === "#" || /^[a-z][a-z\d+.-]*:|^\/\//i.test(link) || link.startsWith("#icon-")) continue;
      const [file, part] = link.split("#", 2);
      const target = file === "" ? path : resolve(dirname(path), decodeURIComponent(file.split("?")[0]));
      const isThere = existsSync(target) && statSync(target).isFile();
      const anchors = part ? names.get(target) : undefined;
      if (!isThere || (anchors !== undefined && !anchors.has(decodeURIComponent(part)))) {
        dead.push(`${relative(site, path)}: ${link}`);
      }
    }
  }
  return dead;
}
