/** The packed tarball in headless Chromium: bundled, without a bundler, and in a worker. Needs `dist/`. */
import { build } from "esbuild";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Consumer, newConsumer } from "../package/consumer";
import { answers, jobImports } from "../package/job";
import { served } from "./static-server";

let consumer: Consumer;
let browser: Browser;
let server: Awaited<ReturnType<typeof served>>;
const problems: string[] = [];
const outside: string[] = [];

beforeAll(async () => {
  consumer = newConsumer();
  server = await served(consumer.folder);
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-sync"],
  });
}, 180_000);

afterAll(async () => {
  await browser?.close();
  server?.end();
  consumer?.remove();
});

/** A page that runs a script; console errors and requests to other hosts are kept. */
async function opened(name: string, { script = "", importMap = {} } = {}): Promise<Page> {
  const map = JSON.stringify({ imports: importMap });
  consumer.write(
    `${name}.html`,
    `<!doctype html><title>${name}</title><link rel="icon" href="data:," />
     <script type="importmap">${map}</script><script type="module">${script}</script>`,
  );
  const page = await browser.newPage();
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(message.text());
  });
  page.on("pageerror", (error) => problems.push(String(error)));
  page.on("request", (request) => {
    if (!request.url().startsWith(server.origin) && !request.url().startsWith("data:")) outside.push(request.url());
  });
  page.setDefaultTimeout(20_000);
  await page.goto(`${server.origin}/${name}.html`);
  return page;
}

/** What the page has put into `result`. */
async function resultOf(page: Page): Promise<unknown> {
  await page.waitForFunction("globalThis.result !== undefined");
  const result = await page.evaluate("globalThis.result");
  await page.close();
  return result;
}

/** Bundles code as a user's own, with the parts that load later as files of their own. */
async function bundle(name: string, code: string): Promise<void> {
  await build({
    stdin: { contents: code, resolveDir: consumer.folder },
    absWorkingDir: consumer.folder,
    outdir: `${consumer.folder}/${name}`,
    bundle: true,
    minify: true,
    splitting: true,
    format: "esm",
    platform: "browser",
    logLevel: "error",
  });
}

const installed = (entry: string): string =>
  `/node_modules/veladis/dist/${entry === "veladis" ? "index" : entry.replace("veladis/", "")}.js`;

describe("the packed tarball in a browser", () => {
  it("does the main job from a bundle", async () => {
    await bundle("bundle", `${jobImports()}\nglobalThis.result = result;`);
    expect(await resultOf(await opened("bundled", { script: 'import "/bundle/stdin.js";' }))).toEqual(answers);
  });

  it("does the main job without a bundler, by an import map", async () => {
    const names = ["veladis", "veladis/severity", "veladis/protection"];
    const importMap = Object.fromEntries(names.map((name) => [name, installed(name)]));
    const page = await opened("mapped", { importMap, script: `${jobImports()}\nglobalThis.result = result;` });
    expect(await resultOf(page)).toEqual(answers);
  });

  it.each([
    ["a bundle", "/worker/stdin.js"],
    ["the installed files", "/worker.js"],
  ])("does the main job in a module worker from %s", async (from, path) => {
    if (from === "a bundle") await bundle("worker", `${jobImports()}\npostMessage(result);`);
    else consumer.write("worker.js", `${jobImports(installed)}\npostMessage(result);`);
    const script = `const worker = new Worker("${path}", { type: "module" });
      worker.onmessage = ({ data }) => { globalThis.result = data; };
      worker.onerror = ({ message }) => { globalThis.result = message; };`;
    expect(await resultOf(await opened("worker", { script }))).toEqual(answers);
  });

  it("draws, computes from samples, writes SQL and calculates, with the dependencies in the bundle", async () => {
    await bundle(
      "rest",
      `import { severityBar, trendChart } from "veladis/chart";
       import { evaluateLine } from "veladis/mathjs";
       import { overall } from "veladis/signal";
       import { toSql } from "veladis/sql";
       const wave = Float64Array.from({ length: 1000 }, (_, i) => Math.sin((2 * Math.PI * 50 * i) / 1000));
       const level = overall(wave, { rate: 1000, unit: "mm/s", band: [10, 400], as: "mm/s rms" });
       const sum = await evaluateLine("(2 mm/s rms + 1 mm/s rms) * 2");
       globalThis.result = {
         level: level.value.toFixed(3),
         sum: sum.text,
         sql: toSql("in/s pk", "in/s pp", { column: "reading" }),
         charts: [typeof severityBar, typeof trendChart],
       };`,
    );
    // a sine of peak 1 mm/s has an RMS of 1/sqrt(2)
    expect(await resultOf(await opened("rest", { script: 'import "/rest/stdin.js";' }))).toEqual({
      level: "0.707",
      sum: expect.stringContaining("6.00 mm/s rms"),
      sql: expect.stringContaining("reading"),
      charts: ["function", "function"],
    });
  });

  it("had no error and asked nothing of any other host", () => {
    expect([problems, outside]).toEqual([[], []]);
  });
});
