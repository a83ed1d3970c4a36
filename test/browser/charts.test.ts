/** Charts within pages of others: a strict policy, and a style sheet that uses the same words. Needs `dist/`. */
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { charts } from "../../docs/site/charts";
import { chartColours, severityBar } from "../../src/entries/chart";
import { classify } from "../../src/entries/severity";

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-sync"],
  });
});

afterAll(() => browser?.close());

const judgement = classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });
const bar = severityBar({ judgement });
const dark = severityBar({ judgement, theme: "dark" });
const timeline = (charts["trip-timeline"] as (width: number) => string)(640);

async function pageOf(body: string, head = ""): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
  await page.setContent(`<!doctype html><html><head>${head}</head><body>${body}</body></html>`);
  return page;
}

/** What the first element that a selector finds has in the end. */
async function styleOf(page: Page, selector: string, property: string): Promise<string> {
  const element = await page.locator(selector).first().elementHandle();
  return page.evaluate(
    ([one, name]) =>
      (globalThis as unknown as { getComputedStyle(of: unknown): { getPropertyValue(name: string): string } })
        .getComputedStyle(one)
        .getPropertyValue(name as string),
    [element, property] as const,
  );
}

const rgb = (hex: string): string =>
  `rgb(${[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)).join(", ")})`;

it("have their colours where a policy blocks styles within a page", async () => {
  const policy = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'">`;
  const page = await pageOf(bar + timeline, policy);
  // the style sheet is blocked: no variable is set
  expect(await styleOf(page, "svg.veladis-chart", "--ink")).toBe("");
  expect(await styleOf(page, ".veladis-paper", "fill")).toBe(rgb(chartColours.light.paper));
  expect(await styleOf(page, ".veladis-zone", "fill")).toBe(rgb(chartColours.light.zone));
  expect(await styleOf(page, ".veladis-data", "stroke")).toBe(rgb(chartColours.light.data));
  expect(await styleOf(page, ".veladis-data", "fill")).toBe("none");
  await page.close();
});

it("stand twice in a page that uses the same words for its own, and leave it alone", async () => {
  const words = [
    "zone",
    "data",
    "alarm",
    "trip",
    "unit",
    "note",
    "paper",
    "letter",
    "point",
    "axis",
    "grid",
    "on",
    "dark",
  ];
  const hostile = `<style>${words.map((word) => `.${word}{display:none;color:rgb(1, 2, 3);fill:red;stroke:red}`).join("")}
    text{fill:red;font-size:40px} path,line,rect,circle{stroke:red;fill:red}</style>`;
  const own = words.map((word) => `<p class="${word}" style="display:block">${word}</p>`).join("");
  const alone = await pageOf(own, hostile);
  const page = await pageOf(bar + own + dark + timeline, hostile);
  for (const word of words) {
    for (const property of ["color", "fill", "stroke", "stroke-dasharray", "font-size", "font-weight"]) {
      expect(await styleOf(page, `p.${word}`, property)).toBe(await styleOf(alone, `p.${word}`, property));
    }
  }
  const chart = (at: number, kind: string): string => `svg.veladis-chart >> nth=${at} >> .veladis-${kind}`;
  expect(await styleOf(page, chart(0, "paper"), "fill")).toBe(rgb(chartColours.light.paper));
  expect(await styleOf(page, chart(0, "data"), "stroke")).toBe(rgb(chartColours.light.data));
  expect(await styleOf(page, chart(0, "zone"), "display")).toBe("inline");
  expect(await styleOf(page, chart(1, "paper"), "fill")).toBe(rgb(chartColours.dark.paper));
  expect(await styleOf(page, chart(1, "zone"), "fill")).toBe(rgb(chartColours.dark.zone));
  expect(await styleOf(page, "svg.veladis-chart text:not([class])", "fill")).toBe(rgb(chartColours.light.ink));
  await page.emulateMedia({ colorScheme: "dark" });
  expect(await styleOf(page, chart(0, "paper"), "fill")).toBe(rgb(chartColours.dark.paper));
  await alone.close();
  await page.close();
});

it("take the colours that a page sets as variables", async () => {
  const page = await pageOf(bar, "<style>:root{--veladis-data:rgb(0, 128, 0)}</style>");
  expect(await styleOf(page, ".veladis-data", "stroke")).toBe("rgb(0, 128, 0)");
  await page.close();
});
