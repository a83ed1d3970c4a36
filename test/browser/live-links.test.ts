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
