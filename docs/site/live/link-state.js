/** The state of fields, kept in the link behind `#`, so that a page can be sent or found again as it was left. */
import { VeladisError } from "../../../src/index";
import { element } from "./dom.js";

/** What a link says behind `#`; a place of the page, such as `#the-answer`, says nothing of fields. */
function toldBy(hash) {
  return new URLSearchParams(hash.includes("=") ? hash.slice(1) : "");
}

/** The names of a link that no field has, or that are given more than once: what they say would be lost. */
function lost(told, known) {
  const names = [...told.keys()];
  return [...new Set(names.filter((name, i) => !known.has(name) || names.indexOf(name) !== i))];
}

/**
 * Sets fields by the link, now and whenever another one is opened on the page, and writes their values into it. A value
 * as at the beginning is left out.
 *
 * @param fields - by the names that they have in the link
 * @param update - judges anew, when another link has set the fields
 */
export function linkState(fields, update) {
  const all = Object.entries(fields);
  const first = new Map(all.map(([name, { text }]) => [name, text()]));
  let strange = [];
  let isAnchor = true;
  const without = element("button", { type: "button", hidden: true }, "Go on without it");
  const copy = element("button", { type: "button" }, "Copy link");
  const copied = element("span", { role: "status" });
  const load = () => {
    const told = toldBy(location.hash);
    strange = lost(told, first);
    without.hidden = strange.length === 0;
    copied.textContent = "";
    isAnchor = [...told.keys()].length === 0 && location.hash !== "";
    // nothing of an earlier link stays
    for (const [name, { put }] of all) put(told.get(name) ?? first.get(name));
  };
  load();
  addEventListener("hashchange", () => {
    // a jump within the page leaves the fields as they are seen
    if (location.hash !== "" && !location.hash.includes("=")) return;
    load();
    update();
  });
  without.addEventListener("click", () => {
    strange = [];
    without.hidden = true;
    update();
  });
  copy.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(location.href);
      copied.textContent = "Copied.";
    } catch {
      copied.textContent = `Copy it from here: ${location.href}`;
    }
  });
  return {
    row: element("p", { className: "live-link" }, copy, " ", without, " ", copied),
    /** The texts of the fields as they stand. */
    texts: () => all.map(([, { text }]) => text()),
    /** Refuses while the link says what no field has: the verdict of the other fields could be taken for the whole. */
    check() {
      if (strange.length === 0) return;
      throw new VeladisError("unknown-option", {
        expected: `a link whose names are fields of this page, each once: ${[...first.keys()].join(", ")}`,
        received: strange
          .map((name) => `${name}=${toldBy(location.hash).getAll(name).join(` and ${name}=`)}`)
          .join(", "),
      });
    },
    keep() {
      copied.textContent = "";
      if (strange.length > 0) return;
      const changed = all.map(([name, { text }]) => [name, text()]).filter(([name, text]) => text !== first.get(name));
      const text = new URLSearchParams(changed).toString();
      // a place of the page stays as long as nothing was changed
      if (text === "" && isAnchor) return;
      isAnchor = false;
      history.replaceState(null, "", text === "" ? location.pathname + location.search : `#${text}`);
    },
  };
}
