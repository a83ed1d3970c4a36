/**
 * What every page has alike and no page can use without its script (the buttons of search and menu, the box of the
 * search, the choice of a theme, the menu of the site, the marks of sections that fold, scripts that may come late): told
 * once, in a script that puts it in place before the theme's own script looks for it. Style sheets and scripts that every
 * page loads one after the other are one file.
 */
import { appendFileSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** The parts, by name: where they stand in a page. Marks go first, since the settings have one too. */
const parts = {
  mark: /(?<=<summary class="tsd-accordion-summary"[^>]*>)<svg [^>]*><use href="#icon-chevronDown"><\/use><\/svg>/,
  search: /<dialog id="tsd-search".*?<\/dialog>/s,
  // once the box of the search, which stands within, is out
  buttons:
    /<div id="tsd-toolbar-links"><\/div><button id="tsd-search-trigger".*?<\/button><a href="#" class="tsd-widget menu".*?<\/a>/s,
  settings: /<div class="tsd-navigation settings">.*?<\/select><\/div><\/div><\/details><\/div>/s,
  menu: /(?<=<div class="site-menu"><nav class="tsd-navigation"><a href="[^"]*" ?[^>]*>[^<]*<\/a>)<ul class="tsd-small-nested-navigation".*?<\/ul>/s,
  // the theme that was chosen, before anything is drawn
  theme: /(?<=<body><script>).*?(?=<\/script>)/s,
};

/** Scripts that may come late, each with the name that the theme's own script knows it by. */
const late = /<script async src="[^"]*assets\/(icons|search|navigation)\.js" id="[\w-]+"><\/script>/g;

/** What every page loads and another file holds as well. */
const held =
  /<link rel="stylesheet" href="[^"]*assets\/(?:highlight|custom)\.css"\/>|<script defer src="[^"]*assets\/custom\.js"><\/script>|<link rel="icon"[^>]*>/g;

/** The parts as the first page that has them tells them, and pages without them. */
export function frameOf() {
  const told = {};
  const without = (html) =>
    Object.entries(parts).reduce((page, [name, pattern]) => {
      const all = new RegExp(pattern.source, `${pattern.flags}g`);
      return page.replace(all, (part) => {
        told[name] ??= part;
        if (told[name] !== part) throw new Error(`pages have two kinds of ${name}`);
        return "";
      });
    }, html);
  const withScript = (html) =>
    html
      .replace(held, "")
      .replace(late, "")
      .replace(/<script defer src="([^"]*)main\.js">/, '<script defer src="$1frame.js"></script>$&')
      .replace(/<body><script><\/script>/, () => {
        const [, base] = /data-base="([^"]*)"/.exec(html);
        return `<body><script src="${base}assets/theme.js"></script>`;
      });
  return { told, framed: (html) => withScript(without(html)) };
}

/** Writes the script that puts the parts in place. */
export function writeFrame(site, told) {
  for (const name of Object.keys(parts)) if (told[name] === undefined) throw new Error(`no page has a ${name}`);
  const script = (all) => `(() => {
  const parts = ${JSON.stringify(all)};
  document.querySelector(".tsd-toolbar-contents")?.insertAdjacentHTML("beforeend", parts.buttons);
  document.querySelector("#tsd-search-trigger")?.insertAdjacentHTML("afterend", parts.search);
  document.querySelector(".page-menu")?.insertAdjacentHTML("afterbegin", parts.settings);
  document.querySelector(".site-menu .tsd-navigation")?.insertAdjacentHTML("beforeend", parts.menu);
  for (const one of document.querySelectorAll(".tsd-accordion-summary")) one.insertAdjacentHTML("afterbegin", parts.mark);
  const icon = document.createElement("link");
  icon.rel = "icon";
  icon.type = "image/svg+xml";
  icon.href = document.documentElement.dataset.base + "assets/favicon.svg";
  document.head.append(icon);
  for (const [name, id] of [["icons", "tsd-icons-script"], ["search", "tsd-search-script"], ["navigation", "tsd-nav-script"]]) {
    const script = document.createElement("script");
    script.id = id;
    script.src = document.documentElement.dataset.base + "assets/" + name + ".js";
    document.head.append(script);
  }
})();
`;
  const { theme, ...rest } = told;
  writeFileSync(join(site, "assets/frame.js"), script(rest));
  writeFileSync(join(site, "assets/theme.js"), `${theme}\n`);
}

/** Puts the style sheets and scripts that every page loads one after the other into one file each. */
export function joinAssets(site) {
  for (const [into, names] of [
    ["style.css", ["highlight.css", "custom.css"]],
    ["main.js", ["custom.js"]],
  ]) {
    for (const name of names) {
      const path = join(site, "assets", name);
      appendFileSync(join(site, "assets", into), `\n${readFileSync(path, "utf8")}`);
      rmSync(path);
    }
  }
}
