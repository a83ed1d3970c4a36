import { cautions, type SheetRequest, setpointSheet, sheetHtml, sheetJson, sheetMarkdown } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { requests, settings } from "./requests";

const request: SheetRequest = {
  ...requests["every part"],
  machine: "ID fan 1 <drive side> | horizontal & axial",
  remarks: ["# not a heading", "1. not a list"],
};

const sheet = setpointSheet(request);

describe("the sheet", () => {
  it("has a part for all that was asked of it, in order", () => {
    expect(sheet.sections.map(({ title }) => title)).toEqual([
      "Machine, sensor and device",
      "Baseline, in mm/s rms",
      "Proposed setpoints",
      "Warnings",
      "Reasons, with the number of the source",
      "Sources of the rules",
      "NOT FIT TO SIGN until checked against a printed copy",
      "Settings in the device",
      "Check against the known vibration",
      "Linearity",
      "Trip and reset point",
      "Delay",
      "Settings, and what they are proven with",
      "Bench test",
      "Assumed",
      "Remarks",
    ]);
  });

  it("leaves out what was not given, but never cautions and blanks", () => {
    const bare = setpointSheet({ machine: "Fan 1" });
    expect(bare.sections).toEqual([]);
    for (const text of [sheetMarkdown(bare), sheetHtml(bare)]) {
      for (const caution of cautions) expect(text.replaceAll("&#39;", "'")).toContain(caution);
      expect(text).toMatch(/Set by \(name, signature, date\)/);
      expect(text).toMatch(/Next proof due/);
    }
  });

  it("every cited number has its source, and every source is cited", () => {
    const reasons = sheet.sections[4]?.table?.rows.map(([, text]) => text ?? "") ?? [];
    const sources = [5, 6].flatMap((i) => sheet.sections[i]?.table?.rows.map(([number]) => number) ?? []);
    const cited = new Set(reasons.map((text) => /\[\d+\]$/.exec(text)?.[0]));
    expect([...cited].sort()).toEqual([...sources].sort());
  });

  it("cites as sources only what is fit to sign; the rest stands apart, with room for its check", () => {
    const [fit = [], unfit = []] = [5, 6].map((i) => sheet.sections[i]?.table?.rows);
    const unknown = /from memory|as stated by the user|whose making is unknown/;
    expect(fit.length).toBeGreaterThan(0);
    for (const [, source] of fit) expect(source).not.toMatch(unknown);
    for (const [, source, check] of unfit) expect([check, source]).toEqual(["", expect.stringMatching(unknown)]);
  });

  it("says before the steps of a bench test that the device no longer protects the machine", () => {
    for (const text of [sheetMarkdown(sheet), sheetHtml(sheet)]) {
      const warned = text.indexOf("has no vibration trip from this device");
      expect(warned).toBeGreaterThan(text.indexOf("Bench test"));
      expect(warned).toBeLessThan(text.indexOf("reading at 25 %"));
    }
  });

  it("tables are whole: as many cells as columns", () => {
    for (const { table } of sheet.sections) {
      if (table === undefined) continue;
      for (const row of table.rows) expect(row.length).toBe(table.columns.length);
    }
  });

  it("is the same as JSON, with the data it was made of", () => {
    const read = JSON.parse(sheetJson(sheet));
    expect(read).toEqual(sheet);
    expect(read.data.asFoundAsLeft.asFound.errorPercent).toBeCloseTo(-8.75, 9);
    expect(read.data.settings).toEqual(settings);
  });
});

describe("as Markdown", () => {
  const text = sheetMarkdown(sheet);

  it("keeps what people wrote as text", () => {
    expect(text).toContain("ID fan 1 \\<drive side\\> \\| horizontal & axial");
    expect(text).toContain("- \\# not a heading");
    expect(text).toContain("- 1\\. not a list");
    expect(text.split("\n").filter((line) => line.startsWith("# "))).toEqual(["# Setpoints and verification"]);
  });

  it("has whole tables", () => {
    for (const block of text.split("\n\n").filter((part) => part.startsWith("|"))) {
      const widths = block
        .trim()
        .split("\n")
        .map((line) => line.replace(/\\\|/g, "").split("|").length);
      expect(new Set(widths).size).toBe(1);
    }
  });
});

describe("as HTML", () => {
  const html = sheetHtml(sheet);

  it("stands alone: no script, no address to load from", () => {
    expect(html).not.toMatch(/<script|<link|<img|@import|url\(|src=|href=/);
    expect(html.startsWith("<!doctype html>")).toBe(true);
    expect(html).toContain('lang="en-GB"');
    expect(html).toContain("@media print");
  });

  it("keeps what people wrote as text, and closes what it opens", () => {
    expect(html).toContain("ID fan 1 &lt;drive side&gt; | horizontal &amp; axial");
    for (const tag of ["table", "thead", "tbody", "tr", "td", "th", "ul", "li", "p", "div", "h2"]) {
      const opened = html.match(new RegExp(`<${tag}[ >]`, "g"))?.length ?? 0;
      expect(html.match(new RegExp(`</${tag}>`, "g"))?.length ?? 0, tag).toBe(opened);
    }
  });
});
