/** The pages of `plant report` from a folder, without a server: accessible, narrow, by night, on paper, without script. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { veladis } from "../cli/in-process";
import { root } from "../examples/fences";

const axe = readFileSync(`${root}/node_modules/axe-core/axe.min.js`, "utf8");
const EVIL = "<img src=x onerror=alert(1)>";
const LONG = "x".repeat(120);
const heading =
  "tag,description,kind,power,speed,nameplate,alarm,trip,baseline,known,check date,as found,as left,tolerance,interval months,own remarks";
const pump = "pump,90 kW,2980 r/min,category II in service,2.4 mm/s rms,5 mm/s rms,1.8 mm/s rms";
const check = "8 mm/s rms at 2400 r/min,2026-03-10,7.3 mm/s rms,7.9 mm/s rms,5 %,12";
const list = [
  heading,
  `PU-01,circulation pump,${pump},${check},`,
  `PU-02,${LONG},${pump},,,,,,,${LONG}`,
  `${EVIL},${EVIL},${pump},,,,,,,`,
  ...Array.from({ length: 40 }, (_, i) => `KW-${i + 10},pump of the loop,${pump},,,,,,,`),
].join("\n");
const route = (day: string, level: number) =>
  [
    "tag,point,reading,date",
    `PU-01,DE-H,${level} mm/s rms,${day}`,
    `PU-02,DE-V,2.1 mm/s rms,${day}`,
    `${EVIL},${LONG.slice(60)},11 mm/s rms,${day}`,
  ].join("\n");

let browser: Browser;
let folder = "";
let pages: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "veladis-pages-"));
  for (const [name, text] of Object.entries({
    "plant.csv": list,
    "r1.csv": route("2026-10-05", 2.6),
    "r2.csv": route("2026-11-02", 6.2),
  })) {
    writeFileSync(join(folder, name), `${text}\n`);
  }
  const [plant, first, second] = ["plant.csv", "r1.csv", "r2.csv"].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  const { code, err } = await veladis([
    "plant",
    "report",
    plant,
    first,
    second,
    "--out",
    join(folder, "out"),
    "--on",
    "2026-11-20",
  ]);
  if (code !== 0) throw new Error(err);
  pages = readdirSync(join(folder, "out")).filter((name) => !name.startsWith("kw-"));
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-sync"],
  });
});

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Runs a task on a page of the folder; errors of the page and requests to elsewhere fail it. */
async function on<Value>(
  name: string,
  options: BrowserContextOptions,
  task: (page: Page) => Promise<Value>,
): Promise<Value> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const problems: string[] = [];
  page.on("console", (message) => problems.push(message.text()));
  page.on("pageerror", (error) => problems.push(String(error)));
  page.on("dialog", (dialog) => problems.push(dialog.message()));
  page.on("request", (request) => {
    if (!request.url().startsWith("file:")) problems.push(request.url());
  });
  await page.goto(pathToFileURL(join(folder, "out", name)).href);
  const value = await task(page);
  expect(problems).toEqual([]);
  await context.close();
  return value;
}

const sizes = [1440, 1024, 390].flatMap((width) =>
  (["light", "dark"] as const).map((colorScheme) => [width, colorScheme] as const),
);

it.each(sizes)(
  "at %i pixels, %s: nothing that axe finds, and no page wider than its window",
  async (width, colorScheme) => {
    for (const name of pages) {
      await on(name, { viewport: { width, height: 900 }, colorScheme }, async (page) => {
        expect(await page.evaluate("document.documentElement.scrollWidth"), name).toBeLessThanOrEqual(width);
        await page.evaluate(axe);
        const found = await page.evaluate<string[]>(
          "axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))",
        );
        expect(found, name).toEqual([]);
      });
    }
  },
);

it("print on A4 with all cautions and sources, in the colours of paper, nothing wider than the sheet", async () => {
  for (const name of pages) {
    await on(name, { viewport: { width: 673, height: 960 }, colorScheme: "dark" }, async (page) => {
      await page.emulateMedia({ media: "print" });
      expect(await page.evaluate("document.documentElement.scrollWidth"), name).toBeLessThanOrEqual(673);
      expect(await page.evaluate("getComputedStyle(document.body).backgroundColor")).toBe("rgb(255, 255, 255)");
      for (const part of [".cautions", ...(name === "index.html" ? [] : [".sources", "footer"])]) {
        expect(await page.locator(part).isVisible(), `${name} ${part}`).toBe(true);
      }
      expect(
        await page
          .locator("nav, .tools")
          .evaluateAll(
            (all) => all.filter((one) => (one as unknown as { offsetParent: unknown }).offsetParent !== null).length,
          ),
      ).toBe(0);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      // 210 mm by 297 mm in points
      expect(pdf.toString("latin1")).toMatch(/\/MediaBox \[0 0 59[45](?:\.\d+)? 84[12](?:\.\d+)?\]/);
    });
  }
});

it("are whole without script: every machine, worst first, and its page", async () => {
  await on("index.html", { javaScriptEnabled: false }, async (page) => {
    expect(await page.locator(".machines tbody tr").count()).toBe(43);
    expect(await page.locator(".machines tbody tr .zone").first().textContent()).toBe("zone D");
    await page.getByRole("link", { name: "PU-01" }).click();
    expect(await page.locator("h1").textContent()).toBe("PU-01");
    await page.getByRole("link", { name: "All machines" }).click();
    expect(await page.locator(".machines").isVisible()).toBe(true);
  });
});

it("filter by words and by choice, say what is shown, and show all again", async () => {
  await on("index.html", {}, async (page) => {
    const shown = () => page.locator(".machines tbody tr:visible").count();
    const count = () => page.locator(".count").textContent();
    await page.getByLabel("Words in tag, description or kind").fill("loop KW-1");
    expect([await shown(), await count()]).toEqual([10, "10 of 43 machines shown: words loop KW-1"]);
    await page.getByRole("button", { name: "Show all" }).click();
    expect([await shown(), await count()]).toEqual([43, "43 machines"]);
    await page.getByLabel("Zone").selectOption("C");
    expect([await shown(), await count()]).toEqual([1, "1 of 43 machines shown: zone C"]);
  });
});

it("sort by any column, up and down, what is not known last", async () => {
  await on("index.html", {}, async (page) => {
    const tags = () => page.locator(".machines tbody .tag").allTextContents();
    const worst = await tags();
    const zone = page.getByRole("button", { name: "zone" });
    await zone.click();
    const rising = await page.locator(".machines tbody tr td:nth-child(2)").allTextContents();
    expect(rising.slice(0, 4)).toEqual(["zone A", "zone C", "zone D", "not read"]);
    await zone.click();
    expect((await tags())[0]).toBe(worst[0]);
    expect(await page.locator("th", { has: zone }).getAttribute("aria-sort")).toBe("descending");
    await page.getByRole("button", { name: "machine" }).click();
    const sorted = await tags();
    expect(sorted).toEqual([...sorted].sort(new Intl.Collator("en", { numeric: true }).compare));
    expect(new Set(sorted)).toEqual(new Set(worst));
  });
});
