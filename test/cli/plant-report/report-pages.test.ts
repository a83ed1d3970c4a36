import { expect, it } from "vitest";
import { CitedSources } from "../../../src/cli/plant-report/cited-sources";
import { reportOfMachine } from "../../../src/cli/plant-report/report-of-machine";
import { INDEX, reportPages } from "../../../src/cli/plant-report/report-pages";
import { standingsOf } from "../../../src/cli/plant-report/standings-of";
import { cautions } from "../../../src/core/index";
import { auditPlant, dueChecks, judgeRoute, parsePlant, type RouteReading } from "../../../src/plant/index";

const on = "2026-11-20";
const EVIL = `"><script>alert(1)</script><img src=x onerror=alert(2)>'&\u202e`;
/** A tag may not hold what nobody sees. */
const EVIL_TAG = EVIL.replace("\u202e", "");

const heading = [
  "tag",
  "kind",
  "power",
  "speed",
  "support",
  "place",
  "nameplate",
  "alarm",
  "trip",
  "baseline",
  "known",
  "check date",
  "as found",
  "as left",
  "tolerance",
  "interval months",
  "description",
  "remarks of ours",
];
const pump = ["pump", "90 kW", "2980 r/min", "rigid", "housing", "category II in service"];
const check = ["8 mm/s rms at 2400 r/min", "2026-03-10", "7.3 mm/s rms", "7.9 mm/s rms", "5 %", "12"];
const rows = [
  ["PU-01", ...pump, "2.4 mm/s rms", "5 mm/s rms", "1.8 mm/s rms", ...check, "circulation pump", ""],
  ["PU-02", ...pump, "2.4 mm/s rms", "5 mm/s rms", "1.8 mm/s rms", "", "", "", "", "", "", "", ""],
  [EVIL_TAG, ...pump, "2.4 mm/s rms", "5 mm/s rms", "1.8 mm/s rms", ...check, EVIL, EVIL],
  ["PU-04", ...pump, "2.4 mm/s", "5 mm/s rms", "1.8 mm/s rms", "", "", "", "", "", "", "", ""],
];
const route: RouteReading[] = [
  { tag: "PU-01", line: 2, point: "DE-H", reading: "4.6 mm/s rms", date: "2026-11-02" },
  { tag: "PU-01", line: 3, point: "NDE & gear", reading: "2.1 mm/s rms", date: "2026-11-02" },
  { tag: EVIL_TAG, line: 4, reading: "11 mm/s rms" },
  { tag: "PU-04", line: 5, reading: "2 mm/s rms" },
];

async function pagesOf(given: readonly (readonly string[])[] = rows, read = route) {
  const plant = parsePlant({ heading, rows: given.map((row) => [...row]) });
  const judged = judgeRoute(plant, read);
  const audit = auditPlant(plant, { on });
  const findings = audit.findings.map(({ severity, code, ...one }) => ({ ...one, gravity: severity, name: code }));
  const standings = standingsOf({ plant, route: judged, findings, due: dueChecks(plant, { on }) });
  const refused = [...plant.refused, ...judged.refused].map((one) => ({ ...one, file: "plant.csv" }));
  const head = { name: EVIL, on, from: ["plant.csv", EVIL], refused, strangers: [EVIL] };
  const beside = { plant, schemes: undefined, notChecked: audit.notChecked, refused: judged.refused, changes: [] };
  const pages = new Map<string, string>();
  const made = reportPages(head, standings, async (one) =>
    reportOfMachine(one, {
      ...beside,
      histories: [
        {
          name: EVIL,
          as: "mm/s rms",
          readings: [
            { time: 0, reading: 2 },
            { time: 9, reading: 3 },
          ],
          notes: [EVIL],
        },
      ],
    }),
  );
  for await (const { name, text } of made) pages.set(name, text);
  return pages;
}

const pages = await pagesOf();
const pageOf = (name: string): string => pages.get(name) as string;
const index = pageOf(INDEX);

it("are one for each machine that the list has, and an index behind them", () => {
  expect([...pages.keys()].at(-1)).toBe(INDEX);
  expect(pages.size).toBe(4);
  const links = [...index.matchAll(/<a class="tag" href="([^"]+)"/g)].map(([, href]) => href as string);
  expect(new Set(links)).toEqual(new Set([...pages.keys()].filter((name) => name !== INDEX)));
});

it("stand worst first: a machine in zone D, then one in zone B with a warning, then one with a warning that was not read", () => {
  const order = [...index.matchAll(/data-zone="([^"]+)" data-worst="([^"]+)"/g)].map(([, ...said]) => said);
  expect(order).toEqual([
    ["D", "warning"],
    ["B", "warning"],
    ["not read", "warning"],
  ]);
});

it("never let a text of a file out of its place", () => {
  for (const text of pages.values()) {
    expect(text).not.toContain("<script>alert");
    expect(text).not.toContain("<img");
    expect(text).not.toContain("\u202e");
    expect(text).toContain("&lt;script&gt;alert(1)");
  }
});

it("ask for nothing elsewhere, and may run nothing but the script of the index", () => {
  for (const [name, text] of pages) {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(text)?.[1];
    expect(policy).toMatch(/^default-src 'none'; style-src 'sha256-[^']+'; /);
    expect(text).not.toMatch(/<(?:link|iframe|object|embed|form|img|image|use)\b/i);
    expect(text).not.toMatch(/@import|url\(/);
    // of the names of attributes alone: elsewhere such words are texts, whose < and " are escaped
    expect(text.replace(/"[^"]*"/g, '""')).not.toMatch(/<[^>]*\s(?:src|xlink:href|style|on[a-z]+)=/);
    const scripts = [...text.matchAll(/<script>/g)].length;
    expect(scripts).toBe(name === INDEX ? 1 : 0);
    expect(policy?.includes("script-src")).toBe(name === INDEX);
  }
  expect(index).not.toMatch(/\beval\b|new Function|innerHTML/);
});

it("carry every caution whole, the sources with how each is known, and one style sheet", () => {
  for (const text of pages.values()) {
    for (const one of cautions) expect(text).toContain(one.replaceAll("'", "&#39;"));
    expect([...text.matchAll(/<style/g)]).toHaveLength(1);
  }
  const page = pageOf("pu-01.html");
  const cited = [...page.matchAll(/href="#source-(\d+)"/g)].map(([, number]) => number as string);
  const told = [...page.matchAll(/<li id="source-(\d+)">/g)].map(([, number]) => number as string);
  expect([...new Set(cited)].sort()).toEqual([...told].sort());
  expect(told.length).toBeGreaterThan(2);
});

it("tell the reading, its zone, its limits with grade, the check and what is set and proposed", () => {
  const page = pageOf("pu-01.html");
  expect(page).toContain("4.60 mm/s rms: zone B");
  expect(page).toMatch(/<td data-name="zone" class="short"><span class="zone z1">zone B<\/span>/);
  // ISO 10816-7:2009, category II, above 1 kW to 200 kW: read as the library's own table has it
  expect(page).toMatch(/C\/D<\/th><td data-name="level" class="short">8\.50 mm\/s rms/);
  // (7.3 - 8) / 8 = -8.75 %
  expect(page).toMatch(/-8\.8 %|-8\.75 %/);
  expect(page).toContain("found out of tolerance");
  expect(page).toContain('data-name="as set" class="short">5.000 mm/s rms');
});

it("say of a machine that was not read that it was not judged, and of a refused row why", () => {
  expect(pageOf("pu-02.html")).toContain("None on the route: this machine was not judged.");
  expect(pages.has("pu-04.html")).toBe(false);
  expect(index).toContain("PU-04");
  expect(index).toMatch(/<td data-name="column" class="short">alarm<\/td>/);
});

it("of an empty list are an index that says so", async () => {
  const none = await pagesOf([], []);
  expect([...none.keys()]).toEqual([INDEX]);
  expect(none.get(INDEX)).toContain("0 machines");
});

it("are the same each time", async () => {
  expect(await pagesOf()).toEqual(pages);
});

it("cite a source once, however often it is named", () => {
  const sources = new CitedSources();
  const memory = { title: "a book", provenance: "memory" } as const;
  expect(
    [sources.cite(memory), sources.cite("a rule"), sources.cite({ ...memory })].map(
      ({ text }) => /\[\d\]/.exec(text)?.[0],
    ),
  ).toEqual(["[1]", "[2]", "[1]"]);
  expect(sources.section()?.text).toContain("from memory");
});
