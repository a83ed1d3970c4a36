/**
 * The built site and the library itself in headless Chromium. Needs `site/` and `dist/`; run by `npm run browser`.
 */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { buildSync } from "esbuild";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import tradeWords from "../../docs/site/trade-words.json" with { type: "json" };
import { TripLogic } from "../../src/entries/protection";
import { builtInSchemes, classify, judge, parseMachine } from "../../src/entries/severity";
import { convert, convertAmplitude, format } from "../../src/index";
import { root } from "../examples/fences";
import { served } from "./static-server";

let browser: Browser;
let page: Page;
let site: Awaited<ReturnType<typeof served>>;
const problems: string[] = [];
const outside: string[] = [];
const axe = readFileSync(`${root}/node_modules/axe-core/axe.min.js`, "utf8");

beforeAll(async () => {
  if (!existsSync(`${root}/site/index.html`)) throw new Error("no site: run npm run docs");
  site = await served(`${root}/site`);
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-sync"],
  });
});

afterAll(async () => {
  await browser?.close();
  site?.end();
});

type Way = "http" | "file";

/** A fresh page on a file of the site; console errors and requests to other hosts are kept. */
async function open(
  path: string,
  colorScheme: "light" | "dark" = "light",
  width = 1280,
  way: Way = "http",
): Promise<Page> {
  const origin = way === "http" ? site.origin : pathToFileURL(`${root}/site`).href;
  await page?.close();
  page = await browser.newPage({ colorScheme, viewport: { width, height: 900 } });
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  page.on("request", (request) => {
    if (!request.url().startsWith(origin) && !/^(data|blob):/.test(request.url())) outside.push(request.url());
  });
  page.setDefaultTimeout(10_000);
  await page.goto(`${origin}/${path}`);
  // the theme hides the page until it has put its navigation together
  await page.waitForFunction("document.body.style.display !== 'none'");
  return page;
}

interface Violation {
  id: string;
  impact: string;
  nodes: { html: string }[];
}

/** Serious and critical accessibility violations of the open page. */
async function violations(): Promise<string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate<Violation[]>("axe.run().then(({ violations }) => violations)");
  return found
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

const live = {
  converter: "documents/Live_converter.html",
  nomograph: "documents/Live_nomograph.html",
  severity: "documents/Live_severity_by_nameplate.html",
  trip: "documents/Live_trip_timeline.html",
};

const pages = [
  "index.html",
  "documents/Readings_on_one_scale.html",
  "documents/The_arithmetic_of_alarms.html",
  "documents/Tables_of_severity_limits.iso-10816-3-2009.html",
  "documents/Units.html",
  "documents/Bibliography.html",
  "functions/veladis.convert.html",
  "interfaces/veladis_protection.KnownCheck.html",
  ...Object.values(live),
];

/** Opens the search of the start page, as a person does. */
async function openSearch(): Promise<void> {
  await open("index.html");
  await page.waitForFunction("window.app !== undefined");
  await page.keyboard.press("/");
  await page.waitForSelector("#tsd-search[open]");
  // the index is unpacked when the search is opened first
  await page.waitForFunction("!/preparing/i.test(document.getElementById('tsd-search-status').textContent)");
}

/** Where a search leads for words typed key by key, the best first. */
async function search(words: string): Promise<string[]> {
  if (page === undefined || !page.url().endsWith("/index.html") || !(await page.locator("#tsd-search[open]").count()))
    await openSearch();
  await page.locator("#tsd-search-input").fill("");
  await page.waitForFunction("document.getElementById('tsd-search-results').childElementCount === 0");
  await page.locator("#tsd-search-input").pressSequentially(words);
  await page.waitForSelector("#tsd-search-results li a");
  // it answers 0.2 s after the last key
  await page.waitForTimeout(250);
  return page
    .locator("#tsd-search-results li a")
    .evaluateAll((all) => all.map((one) => (one as unknown as { href: string }).href.replace(/.*\/(?=\w+\/)/, "")));
}

describe("the site", () => {
  it.each(pages.flatMap((path) => (["light", "dark"] as const).map((scheme) => [path, scheme] as const)))(
    "%s, %s: no serious or critical accessibility violation",
    async (path, scheme) => {
      await open(path, scheme);
      expect(await violations()).toEqual([]);
    },
  );

  it.each(pages)("%s fits a telephone", async (path) => {
    await open(path, "light", 390);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(390);
    expect(await violations()).toEqual([]);
  });

  it.each(tradeWords as [string, string][])(
    "search for %s leads to its section of a guide first",
    async (words, place) => {
      const [first] = await search(words);
      expect(decodeURIComponent(first ?? "")).toBe(`documents/${place}`);
    },
  );

  it.each([
    ["10816", /10816/],
    ["iso-20816-3", /20816-3/],
    ["nomograph", /nomograph/i],
    ["rms", /RMS/],
    ["density", /densit/i],
    ["bearing", /documents/],
  ])("search for %s, which no table holds, puts a page of the guides first", async (words, expected) => {
    const [first] = await search(words);
    expect(first).toMatch(/^documents/);
    expect(first).toMatch(expected);
  });

  it.each([
    ["convertAmplitude", "functions/veladis.convertAmplitude.html"],
    ["TripLogic", "classes/veladis_protection.TripLogic.html"],
    ["exactZone", "functions/veladis_own.exactZone.html"],
    ["equivalents", "functions/veladis.equivalents.html"],
  ])("search for the name %s finds it", async (name, place) => {
    expect((await search(name)).slice(0, 3)).toContain(place);
  });

  it("has a page for every table of limits", () => {
    const names = readdirSync(`${root}/site/documents`).join(" ");
    for (const { id } of builtInSchemes) expect(names).toContain(`.${id}.html`);
  });

  it("draws its charts in the page, wide or narrow, in the theme chosen there", async () => {
    await open("documents/The_arithmetic_of_alarms.html", "light");
    const shown = "[...document.querySelectorAll('.veladis-chart')].filter((one) => one.getClientRects().length > 0)";
    expect(await page.evaluate(`${shown}.map((one) => one.getAttribute("width"))`)).toEqual(["640", "640"]);
    const paper = `getComputedStyle(${shown}[0].querySelector(".veladis-paper")).fill`;
    expect(await page.evaluate(paper)).toBe("rgb(255, 255, 255)");
    await page.evaluate("document.documentElement.dataset.theme = 'dark'");
    expect(await page.evaluate(paper)).toBe("rgb(16, 22, 28)");
    await page.emulateMedia({ media: "print" });
    expect(await page.evaluate(paper)).toBe("rgb(255, 255, 255)");
    await open("documents/The_arithmetic_of_alarms.html", "light", 390);
    expect(await page.evaluate(`${shown}.map((one) => one.getAttribute("width"))`)).toEqual(["350", "350"]);
  });

  it("stays below 8 MB", () => {
    const sizes = readdirSync(`${root}/site`, { recursive: true, encoding: "utf8" })
      .map((name) => statSync(`${root}/site/${name}`))
      .map((entry) => (entry.isFile() ? entry.size : 0));
    expect(sizes.reduce((a, b) => a + b)).toBeLessThan(8e6);
  });
});

/** Writes into the field with this label, as a person does. */
async function fill(label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  if ((await field.evaluate((one) => (one as { tagName: string }).tagName)) === "SELECT")
    await field.selectOption(text);
  else await field.fill(text);
}

const answer = async (name: string): Promise<string> =>
  (await page.locator(`[data-answer="${name}"]`).textContent()) ?? "";

const capitalised = (text: string): string => `${text[0]?.toUpperCase()}${text.slice(1)}`;

describe.each(["http", "file"] as const)("live pages over %s", (way) => {
  it.each(["index.html", live.converter])(
    "converter on %s: converts what is typed, refuses what has no meaning",
    async (path) => {
      await open(path, "light", 1280, way);
      await fill("Reading, with unit and detector", "0.2 in/s pk");
      await fill("Frequency or shaft speed", "1180 r/min");
      await fill("Wanted in (may be left empty)", "mil pp");
      const expected = format(convertAmplitude("0.2 in/s pk at 1180 r/min", "mil pp"), { digits: 4 });
      expect(await answer("converter")).toContain(expected);
      await fill("Reading, with unit and detector", "0.2 in/s");
      expect(await answer("converter")).toContain("a detector after the unit");
      await fill("Reading, with unit and detector", "95 dB re 1e-9 m/s");
      await fill("Wanted in (may be left empty)", "mm/s rms");
      expect(await answer("converter")).toContain("0.05623 mm/s rms");
    },
  );

  it("nomograph: sliders move the reading by keyboard, the pointer puts it", async () => {
    await open(live.nomograph, "light", 1280, way);
    const slider = page.getByLabel("Velocity");
    await slider.focus();
    const before = Number(await page.locator("circle.veladis-point").getAttribute("cy"));
    for (let i = 0; i < 20; i++) await page.keyboard.press("ArrowRight");
    expect(Number(await page.locator("circle.veladis-point").getAttribute("cy"))).toBeLessThan(before);
    const velocity = 10 ** Number(await slider.inputValue());
    const frequency = 10 ** Number(await page.getByLabel("Frequency").inputValue());
    const one = { value: velocity, unit: "mm/s", detector: "rms", quantity: "velocity", hertz: frequency } as const;
    expect(await answer("nomograph")).toContain(format(convertAmplitude(one, "mil rms")));
    const { zone } = classify(one, { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });
    expect(await answer("nomograph")).toContain(`zone ${zone}`);
    await fill("Zones of ISO 10816-3:2009", "none");
    expect(await answer("nomograph")).not.toContain("zone");
    const frame = await page.locator(".live-chart path.veladis-axis").boundingBox();
    if (frame === null) throw new Error("no chart");
    await page.mouse.click(frame.x + frame.width * 0.25, frame.y + frame.height * 0.25);
    expect(10 ** Number(await page.getByLabel("Frequency").inputValue())).toBeCloseTo(2000 ** 0.25, 0);
  });

  const shownTitle = (): Promise<string | null> => page.locator(".live-chart svg title").textContent();

  it("severity: the verdict by the nameplate, and one scheme chosen by hand", async () => {
    await open(live.severity, "light", 1280, way);
    const machine = "motor, 132 kW, 1485 r/min, shaft height 315 mm, rigid";
    const known = judge("3.9 mm/s rms", machine);
    expect(await answer("severity")).toContain(`Machine: ${machine}.`);
    expect(await answer("severity")).toContain(capitalised(known.headline));
    expect(await shownTitle()).toBe(`3.90 mm/s rms: ${known.headline}`);
    for (const told of [...known.assumedFacts, ...known.cautions]) expect(await answer("severity")).toContain(told);
    await fill("Scheme", "iso-10816-3-2009");
    const one = classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine, assume: "lowest limits" });
    expect(await answer("severity")).toContain(`${capitalised(one.headline)}: ${one.word}`);
    for (const told of [
      ...one.assumedFacts,
      "condition in service: not given, assumed",
      "place housing: not given, assumed",
    ])
      expect(await answer("severity")).toContain(told);
    // a scheme that is for another machine is refused, and no answer stands beside the refusal
    await fill("Scheme", "iso-10816-7-2009");
    expect(await answer("severity")).toContain("Expected:");
    expect(await page.locator(".live-chart svg").count()).toBe(0);
    await fill("Scheme", "");
    await fill("Machine", "");
    expect(await answer("severity")).toContain("a machine without type");
    expect(await page.locator(".live-chart svg").count()).toBe(0);
  });

  it("severity: names what is possible, set aside and assumed where a fact is missing", async () => {
    await open(live.severity, "light", 1280, way);
    for (const label of ["Rated power in kW", "Shaft height in mm (electrical machines)"]) await fill(label, "");
    await fill("Reading", "2.0 mm/s rms");
    await fill("Further words, such as category II or new", "painted blue");
    const verdict = judge("2.0 mm/s rms", "motor, 1485 r/min, rigid, painted blue");
    expect(verdict.headline).toBe("zone B to C");
    const said = await answer("severity");
    expect(said).toContain("Zone B to C: state the power");
    for (const told of [...verdict.assumedFacts, ...verdict.setAside]) expect(said).toContain(told);
    for (const { standard, headline } of verdict.judgements) {
      expect(said).toContain(standard);
      expect(said).toContain(headline);
    }
    await fill("Reading", "5 mil pp");
    expect(await answer("severity")).toContain(capitalised(judge("5 mil pp", "motor, 1485 r/min, rigid").headline));
  });

  // some hundred keys, each waited for: half a minute where nothing else runs
  it("severity: key by key, an answer is that of the fields as they stand, and none stands beside a refusal", {
    timeout: 180_000,
  }, async () => {
    await open(live.severity, "light", 1280, way);
    const seen = new Map<string, string>();
    const steps: readonly (readonly [string, string])[] = [
      ["Rated power in kW", "1.2 MW"],
      ["Speed in r/min", "900 to 1800"],
      ["Reading", "0.21 in/s pk at 1482 r/min"],
      ["Shaft height in mm (electrical machines)", "fifty"],
      ["Shaft height in mm (electrical machines)", "355"],
      ["Further words, such as category II or new", "flexible"],
      ["Further words, such as category II or new", "group 1"],
      ["Reading", "3.9 mm/s rms"],
      ["Rated power in kW", "132"],
      ["Speed in r/min", "1485"],
    ];
    let refusals = 0;
    for (const [label, text] of steps) {
      const field = page.getByLabel(label, { exact: true });
      await field.focus();
      await field.press("Control+A");
      for (const key of ["Delete", ...text]) {
        await field.press(key === " " ? "Space" : key);
        const state = await page.evaluate<string[]>(
          "[...document.querySelectorAll('.live-field input, .live-field select')].map((one) => one.value)",
        );
        const said = await answer("severity");
        const chart = await page.locator(".live-chart svg").count();
        const isRefusal = said.startsWith("Expected:");
        if (isRefusal) refusals++;
        expect(chart, `${state} ${said}`).toBe(isRefusal ? 0 : 1);
        expect(said.includes("Expected:"), said).toBe(isRefusal);
        const before = seen.get(state.join("\n"));
        if (before !== undefined) expect(said).toBe(before);
        seen.set(state.join("\n"), said);
      }
    }
    expect(refusals).toBeGreaterThan(10);
    expect(seen.size).toBeGreaterThan(60);
  });

  it("severity: keeps its fields in the link, and sends a reading with ± to the command", async () => {
    await open(live.severity, "light", 1280, way);
    expect(await page.evaluate("location.hash")).toBe("");
    await fill("Machine", "generator");
    await fill("Reading", "2.2 mm/s rms");
    const hash = await page.evaluate<string>("location.hash");
    expect(hash).toBe("#type=generator&reading=2.2+mm%2Fs+rms");
    await open(`${live.severity}${hash}`, "light", 1280, way);
    expect(await page.getByLabel("Reading", { exact: true }).inputValue()).toBe("2.2 mm/s rms");
    expect(await answer("severity")).toContain("Machine: generator,");
    await fill("Reading", "4.9 ± 0.3 mm/s rms");
    expect(await answer("severity")).toContain("veladis judge");
    expect(await page.locator(".live-chart svg").count()).toBe(0);
  });

  it("severity: lists the words by which the parser reads a machine", async () => {
    await open(live.severity, "light", 1280, way);
    const listed = await page.evaluate<[string, string, string][]>(
      "[...document.querySelectorAll('[data-fact]')].map((one) => [one.dataset.fact, one.dataset.label, one.textContent])",
    );
    expect(listed.length).toBeGreaterThan(80);
    for (const [fact, label, word] of listed) {
      expect((parseMachine(word) as Record<string, unknown>)[fact], word).toBe(label);
      expect(parseMachine(word).notUnderstood ?? []).toEqual([]);
    }
  });

  it("trip timeline: trips when the logic trips, and says what it refuses", async () => {
    await open(live.trip, "light", 1280, way);
    const levels = [3, 10, 10, 3, 10, 10, 10, 10, 10, 10, 10, 10, 3];
    await fill("Levels, one a second, in unit and detector of the threshold", levels.join(" "));
    await fill("On-delay in s", "4");
    await fill("Reset by hand at, in s (may be left empty)", "");
    const logic = new TripLogic({
      threshold: "9 mm/s rms",
      hysteresis: "8 %",
      onDelay: 4,
      timerResets: "below threshold",
      sensorFault: "alarm",
      latching: true,
      contact: "normally open",
      coil: "normally energised",
    });
    const trip = logic.run(levels, 1).find(({ event }) => event === "trip");
    expect(await answer("trip")).toContain(`Trips at ${trip?.time} s.`);
    expect(await page.locator(".live-chart svg desc").textContent()).toContain(`${trip?.time} s trip`);
    await fill("On-delay in s", "9");
    expect(await answer("trip")).toContain("Does not trip.");
    await fill("Levels, one a second, in unit and detector of the threshold", "3 8,5");
    expect(await answer("trip")).toContain("a point for decimals");
  });

  it.each(Object.entries(live))("%s is usable on a telephone, in the dark, by keyboard", async (_, path) => {
    await open(path, "dark", 390, way);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(390);
    const small =
      "[...document.querySelectorAll('.live-field input, .live-field select')].filter((one) => one.getBoundingClientRect().height < 24).length";
    expect(await page.evaluate(small)).toBe(0);
    const fields = await page.locator(".live-field input, .live-field select").count();
    await page.locator(".live-field input, .live-field select").first().focus();
    for (let i = 1; i < fields; i++) await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.closest('.live-field') !== null")).toBe(true);
    // axe reads style sheets by requests, which a page opened from a file may not make
    if (way === "http") expect(await violations()).toEqual([]);
  });
});

describe("the library in a browser", () => {
  it("gives the same answers", async () => {
    const code = buildSync({
      stdin: { contents: 'export * from "./dist/index.js"', resolveDir: root },
      bundle: true,
      format: "iife",
      globalName: "veladis",
      write: false,
    }).outputFiles[0]?.text as string;
    await open("index.html");
    await page.evaluate(code.replace(/^"use strict";\s*var veladis =/, "globalThis.veladis ="));
    const answer = await page.evaluate('veladis.convert(0.25, "in/s pk", "mil pp", { at: "1500 r/min" })');
    expect(answer).toBe(convert(0.25, "in/s pk", "mil pp", { at: "1500 r/min" }));
  });
});

describe("all pages that were opened", () => {
  it("had no console error and asked nothing of any other host", () => {
    expect([problems, outside]).toEqual([[], []]);
  });
});
