/**
 * What every page has alike and no page can use without its script (the buttons of search and menu, the box of the
 * search, the choice of a theme, the marks of sections that fold): told once, in a script that puts it in place before the
 * theme's own script looks for it.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";

/** The parts, by name: where they stand in a page. Marks go first, since the settings have one too. */
const parts = {
  mark: /(?<=<summary class="tsd-accordion-summary"[^>]*>)<svg [^>]*><use href="#icon-chevronDown"><\/use><\/svg>/,
  search: /<dialog id="tsd-search".*?<\/dialog>/s,
  // once the box of the search, which stands within, is out
  buttons:
    /<div id="tsd-toolbar-links"><\/div><button id="tsd-search-trigger".*?<\/button><a href="#" class="tsd-widget menu".*?<\/a>/s,
  settings: /<div class="tsd-navigation settings">.*?<\/select><\/div><\/div><\/details><\/div>/s,
};

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
    html.replace(/<script defer src="([^"]*)main\.js">/, '<script defer src="$1frame.js"></script>$&');
  return { told, framed: (html) => withScript(without(html)) };
}

/** Writes the script that puts the parts in place. */
export function writeFrame(site, told) {
  for (const name of Object.keys(parts)) if (told[name] === undefined) throw new Error(`no page has a ${name}`);
  const script = `(() => {
  const parts = ${JSON.stringify(told)};
  document.querySelector(".tsd-toolbar-contents")?.insertAdjacentHTML("beforeend", parts.buttons);
  document.querySelector("#tsd-search-trigger")?.insertAdjacentHTML("afterend", parts.search);
  document.querySelector(".page-menu")?.insertAdjacentHTML("afterbegin", parts.settings);
  for (const one of document.querySelectorAll(".tsd-accordion-summary")) one.insertAdjacentHTML("afterbegin", parts.mark);
})();
`;
  writeFileSync(join(site, "assets/frame.js"), script);
}
