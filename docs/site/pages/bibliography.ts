import {
  detectorFacts,
  frequencyUnitFacts,
  levelReferenceSources,
  type Source,
  unitFacts,
} from "../../../src/entries/facts";
import { setpointRules } from "../../../src/entries/protection";
import {
  backgroundRule,
  builtInSchemes,
  fanCategoryRule,
  type Scheme,
  supportRule,
  unknownSupportRule,
} from "../../../src/entries/severity";
import { windows } from "../../../src/entries/signal";
import { KNOWN, known, MADE, page, table } from "./markdown";

function* sources(): Generator<[Source, string]> {
  for (const { source } of Object.values(unitFacts)) yield [source, "units"];
  for (const { source } of Object.values(detectorFacts)) yield [source, "detectors"];
  for (const { source } of Object.values(frequencyUnitFacts)) yield [source, "frequencies"];
  for (const source of Object.values(levelReferenceSources)) yield [source, "levels"];
  for (const { source } of Object.values(setpointRules)) yield [source, "setpoints"];
  for (const { source } of Object.values(windows)) yield [source, "windows"];
  for (const { source } of [supportRule, unknownSupportRule]) yield [source, "support"];
  yield [fanCategoryRule.source, "categories of fans"];
  yield [backgroundRule.source, "background"];
  for (const { id, classes } of builtInSchemes as readonly Scheme[]) {
    for (const { criteria } of classes) {
      for (const { source, limitSources, ceilings } of criteria) {
        yield [source, id];
        if (ceilings) yield [ceilings.source, id];
        for (const one of Object.values(limitSources ?? {})) if (one) yield [one, id];
      }
    }
  }
}

/** A page by its host and the last words of its path, so that a link says where it leads. */
function linkText(url: string): string {
  const { hostname, pathname } = new URL(url);
  const last = decodeURIComponent(pathname.split("/").filter(Boolean).at(-1) ?? "").replace(/[[\]|<>]/g, "");
  const end = last.length > 32 ? `${last.slice(0, 32)}\u2026` : last;
  return [hostname.replace(/^www\./, ""), end].filter(Boolean).join(": ");
}

/** Every publication the tables rest on, with what rests on it. */
export function bibliography(): Record<string, string> {
  const found = new Map<string, { source: Source; uses: Set<string>; ways: Set<string>; pages: Set<string> }>();
  for (const [source, use] of sources()) {
    const entry = found.get(source.title) ?? { source, uses: new Set(), ways: new Set(), pages: new Set() };
    entry.uses.add(use);
    entry.ways.add(known(source));
    if (source.page !== undefined) entry.pages.add(source.page);
    found.set(source.title, entry);
  }
  const rows = [...found.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([title, { uses, ways, pages }]) => [
      title,
      [...uses].sort().join(", "),
      [...ways].sort().reverse().join(" and "),
      [...pages].map((url) => (url.startsWith("http") ? `[${linkText(url)}](${url})` : url)).join(", "),
    ]);
  return {
    "bibliography.md": page("Bibliography", [
      `Every publication that a table of the library rests on, and what rests on it. ${MADE}`,
      KNOWN,
      "The published values that the tests reproduce stand in `test/references/`, each with its source beside it.",
      table(["publication", "what rests on it", "known by", "read on"], rows),
    ]),
  };
}
