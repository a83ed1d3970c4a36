/** The live pages by what their links say. Needs `site/`; run by `npm run browser`. */
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, it } from "vitest";
import { root } from "../examples/fences";
import { served } from "./static-server";

let browser: Browser;
let page: Page;
let site: Awaited<ReturnType<typeof served>>;
const problems: string[] = [];

beforeAll(async () => {
  site = await served(`${root}/site`);
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-sync"],
  });
});

afterAll(async () => {
  await browser?.close();
  site?.end();
  expect(problems).toEqual([]);
});

afterEach(() => page?.close());

const documents = {
  converter: "Live_converter",
  nomograph: "Live_nomograph",
  severity: "Live_severity_by_nameplate",
  trip: "Live_trip_timeline",
};
type Live = keyof typeof documents;

async function open(live: Live, hash = ""): Promise<void> {
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  page.on("pageerror", (error) => problems.push(String(error)));
  page.setDefaultTimeout(10_000);
  await page.goto(`${site.origin}/documents/${documents[live]}.html${hash}`);
  await page.waitForFunction("document.body.style.display !== 'none'");
}

const answer = async (): Promise<string> => (await page.locator("[data-answer]").textContent()) ?? "";
const charts = (): Promise<number> => page.locator(".live-chart > svg").count();

/** Another link opened in the same tab. */
async function follow(hash: string): Promise<void> {
  await page.evaluate(`location.hash = ${JSON.stringify(hash)}`);
  await page.evaluate("new Promise((done) => setTimeout(done, 50))");
}

it.each<[Live, string, string, string]>([
  ["converter", "#reading=1+mm%2Fs+rms&to=in%2Fs+pk", "#reading=3+mm%2Fs+rms", "0.1670 in/s pk"],
  ["nomograph", "#velocity=20&zones=none", "#velocity=1", "20.0 mm/s rms"],
  ["severity", "#reading=9+mm%2Fs+rms&type=generator", "#reading=1+mm%2Fs+rms", "Machine: generator"],
  ["trip", "#threshold=2+mm%2Fs+rms&delay=1", "#threshold=20+mm%2Fs+rms", "Trips at"],
])("%s: a second link in the same tab leaves nothing of the first", async (live, first, second, told) => {
  await open(live, second);
  const alone = await answer();
  const fields = "[...document.querySelectorAll('.live-field input, .live-field select')].map((one) => one.value)";
  const values = await page.evaluate<string[]>(fields);
  await page.close();
  await open(live, first);
  const before = await answer();
  expect(before.includes(told) || live === "converter").toBe(true);
  expect(before).not.toBe(alone);
  await follow(second);
  expect(await answer()).toBe(alone);
  expect(await page.evaluate(fields)).toEqual(values);
  await page.goBack();
  await page.waitForFunction(`document.querySelector("[data-answer]").textContent === ${JSON.stringify(before)}`);
  await page.goForward();
  await page.waitForFunction(`document.querySelector("[data-answer]").textContent === ${JSON.stringify(alone)}`);
});

it.each<[Live, string, string, string, string]>([
  ["severity", "#scheme=iso-10816-3-2010", "Scheme", "iso-10816-3-2010", ""],
  ["severity", "#type=turbo+mill", "Machine", "turbo mill", "motor"],
  ["severity", "#support=soft", "Support", "soft", "rigid"],
  ["trip", "#coil=blue", "Coil", "blue", "normally energised"],
  ["nomograph", "#zones=group+7", "Zones of ISO 10816-3:2009", "group 7", "group 2 rigid"],
  ["nomograph", "#detector=foo", "Detector", "foo", "rms"],
])("%s%s: a choice that there is none of is named, and nothing is judged until one is made", async (...row) => {
  const [live, hash, label, told, choice] = row;
  await open(live, hash);
  expect(await answer()).toContain(`Expected: a choice of the field "${label}"`);
  expect(await answer()).toContain(`"${told}"`);
  expect(await charts()).toBe(0);
  const field = page.getByLabel(label, { exact: true });
  expect(
    await field.evaluate((one) => (one as unknown as { selectedOptions: { text: string }[] }).selectedOptions[0]?.text),
  ).toBe(`${told}: unknown`);
  await field.selectOption(choice);
  expect(await answer()).not.toContain("Expected:");
  expect(await charts()).toBe(1);
  expect(await field.locator("option", { hasText: told }).count()).toBe(0);
});

it.each<[Live, string, string]>([
  ["severity", "#unit=foo", "unit=foo"],
  ["converter", "#reading=1+mm%2Fs+rms&from=2", "from=2"],
  ["nomograph", "#velocity=2&velocity=9", "velocity=2 and velocity=9"],
  ["trip", "#hold=3", "hold=3"],
])("%s%s: what no field has is named, and nothing is judged until it is left out", async (live, hash, told) => {
  await open(live, hash);
  expect(await answer()).toContain("Expected: a link whose names are fields of this page");
  expect(await answer()).toContain(told);
  expect(await charts()).toBe(0);
  await page.getByRole("button", { name: "Go on without it" }).click();
  expect(await answer()).not.toContain("Expected:");
  expect(await page.evaluate<string>("location.hash")).not.toContain(told);
});

it.each(["", "abc", "5000"])("nomograph: a velocity of %j in a link is refused", async (velocity) => {
  await open("nomograph", `#velocity=${velocity}`);
  expect(await answer()).toContain("Velocity: a number from 0.1 to 100");
  expect(await charts()).toBe(0);
});

it("converter and nomograph keep their fields in the link, which can be copied", async () => {
  await open("converter");
  await page.getByLabel("Reading, with unit and detector").fill("3 mm/s rms");
  expect(await page.evaluate("location.hash")).toBe("#reading=3+mm%2Fs+rms");
  await page.close();
  await open("nomograph", "#velocity=4.567&frequency=33");
  expect(await answer()).toContain("33.0 Hz");
  await page.getByLabel("Detector").selectOption("pk");
  expect(await page.evaluate("location.hash")).toBe("#velocity=4.567&frequency=33&detector=pk");
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Copy link" }).click();
  await page.getByText("Copied.").waitFor();
  expect(await page.evaluate("navigator.clipboard.readText()")).toBe(page.url());
});

it("a jump within the page leaves fields and verdict as they are", async () => {
  await open("severity", "#reading=9+mm%2Fs+rms");
  const before = await answer();
  await follow("#a-place");
  expect(await answer()).toBe(before);
  expect(await page.getByLabel("Reading", { exact: true }).inputValue()).toBe("9 mm/s rms");
});

it.each<[string, string]>([
  ["#levels=3+9+10", "Reset by hand at: a time within the levels, 0 to 3 s"],
  ["#delay=soon", "On-delay: a time such as 8"],
  ["#threshold=9+%C2%B1+0.3+mm%2Fs+rms", "try a setting at both ends of it"],
])("trip%s: each field is refused in words of its own", async (hash, told) => {
  await open("trip", hash);
  expect(await answer()).toContain(told);
  expect(await charts()).toBe(0);
});

it("trip: delays are read with their unit", async () => {
  await open("trip", "#delay=0.1+min");
  const minutes = await answer();
  await follow("#delay=6+s");
  expect(await answer()).toBe(minutes);
  expect(minutes).toContain("Trips at");
});

it.each(["severity", "trip"] as const)("%s: a dark page is printed light, and long texts whole", async (live) => {
  await open(live);
  await page.evaluate("document.documentElement.dataset.theme = 'dark'");
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  const style = (selector: string, name: string) =>
    page.evaluate(`getComputedStyle(document.querySelector(${JSON.stringify(selector)}))[${JSON.stringify(name)}]`);
  expect(await style(".live-chart .veladis-paper", "fill")).toBe("rgb(255, 255, 255)");
  expect(await style(".live-chart .veladis-heading", "fill")).toBe("rgb(20, 33, 46)");
  expect(await style(".live-field select", "color")).toBe("rgb(34, 34, 34)");
  expect(await page.locator(".live-field input[type=text]").first().isVisible()).toBe(false);
  expect(await page.locator(".live-print").first().isVisible()).toBe(true);
  const cut = "[...document.querySelectorAll('.live-print')].filter((one) => one.scrollWidth > one.clientWidth).length";
  expect(await page.evaluate(cut)).toBe(0);
});

it.each<[Live, string, string, string]>([
  ["severity", "#type=foo", "Allowed: not known, pump", "Allowed: ,"],
  ["nomograph", "#diagonals=both", "Allowed: um and m/s2, mil and g.", "metric"],
  ["trip", "#levels=-3+4&reset=", "Levels: numbers of zero or more", "nan:"],
  ["trip", "#levels=0x10&reset=", "Levels: numbers of zero or more", "Trips"],
  ["converter", `#reading=1+mm/s+${"rms+and+more+".repeat(9)}end`, 'and more end"', "…"],
])("%s%s: a refusal is in the words of the page, and whole", async (live, hash, told, never) => {
  await open(live, hash);
  expect(await answer()).toContain(told);
  expect(await answer()).not.toContain(never);
  expect(await charts()).toBe(0);
});

it("severity: the headline reaches the worst zone that a row leaves open", async () => {
  await open("severity", "#type=pump&power=&speed=&height=&support=&reading=3+mm%2Fs+rms");
  const headline = (await page.locator(".live-result").textContent()) ?? "";
  const rows = await page.locator(".live-answer table").first().locator("tbody td").allTextContents();
  expect(rows.length).toBeGreaterThan(1);
  for (const row of rows) {
    const worst = row.endsWith("or worse") ? "D" : (row.match(/[A-D]/g)?.at(-1) as string);
    expect((headline.match(/\b[A-D]\b/g)?.at(-1) ?? "") >= worst, `${headline} beside ${row}`).toBe(true);
  }
  expect(headline).not.toContain("or worse");
});

it.each([
  ["4.4999", "4.4999 mm/s rms", "zone C"],
  ["4.5", "4.50 mm/s rms", "zone C"],
  ["4.5001", "4.5001 mm/s rms", "zone D"],
])("nomograph: %s mm/s beside the limit of 4.5 reads on its side", async (velocity, told, zone) => {
  await open("nomograph", `#velocity=${velocity}`);
  expect(await answer()).toContain(told);
  expect(await answer()).toContain(zone);
});

it("nomograph: at a speed that the standard is not for the sine is told all the same", async () => {
  await open("nomograph", "#frequency=1");
  expect(await answer()).toContain("60.0 r/min: 3.98 mm/s rms");
  expect(await answer()).toContain("no zone at 60.0 r/min");
  expect(await charts()).toBe(1);
});

it("severity: a speed in hertz is the speed, not the mains", async () => {
  await open("severity", "#speed=24.75+Hz");
  expect(await answer()).toContain("running speed 24.75 Hz");
  expect(await answer()).not.toContain("line frequency");
  expect(await page.locator(".live-result").textContent()).toContain("Zone B: acceptable");
});
