/**
 * The built site and the library itself in headless Chromium. Needs `site/` and `dist/`; run by `npm run browser`.
 */
import { existsSync, readFileSync } from "node:fs";
import { buildSync } from "esbuild";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { convert } from "../../src/index";
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
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-sync"],
  });
});

afterAll(async () => {
  await browser?.close();
  site?.end();
});

/** A fresh page on a file of the site; console errors and requests to other hosts are kept. */
async function open(path: string, colorScheme: "light" | "dark" = "light", width = 1280): Promise<Page> {
  await page?.close();
  page = await browser.newPage({ colorScheme, viewport: { width, height: 900 } });
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  page.on("request", (request) => {
    if (!request.url().startsWith(site.origin) && !/^(data|blob):/.test(request.url())) outside.push(request.url());
  });
  page.setDefaultTimeout(10_000);
  await page.goto(`${site.origin}/${path}`);
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

const pages = ["index.html", "documents/Readings_on_one_scale.html", "functions/veladis.convert.html"];

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
  });

  it.each(["rms", "decibel", "crest"])("search finds %j", async (word) => {
    await open("index.html");
    await page.keyboard.press("/");
    await page.keyboard.type(word);
    await page.waitForSelector("#tsd-search-results li a");
    expect(await page.locator("#tsd-search-results li").count()).toBeGreaterThan(0);
  });

  it("has no console error and asks nothing of any other host", () => {
    expect([problems, outside]).toEqual([[], []]);
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
