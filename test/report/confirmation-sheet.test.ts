import { confirmationSheet, sheetHtml, sheetMarkdown } from "veladis/protection";
import { builtInSchemes, confirmableLimits, confirmScheme, defineScheme, type SchemeInput } from "veladis/severity";
import { describe, expect, it } from "vitest";

const source = { title: "rule of the plant", where: "table 2", provenance: "memory" } as const;
const own = defineScheme({
  ...{ id: "fan-rule", kind: "zones", standard: "Fan rule", edition: "2", title: "Fans of the boiler house" },
  classes: [{ criteria: [{ as: "mm/s rms", limits: { "A/B": 2, "B/C": 4, "C/D": 8 }, source }] }],
} as SchemeInput);
const tableOf = (sheet: ReturnType<typeof confirmationSheet>) => sheet.sections.at(-2)?.table;

describe("the check sheet of a table of limits, for paper", () => {
  it.each(["iso-10816-7-2009", "iso-20816-3-2022"] as const)("%s stands on a page, to be read", async (id) => {
    await expect(sheetMarkdown(confirmationSheet(id))).toMatchFileSnapshot(`pages/check-${id}.md.txt`);
  });

  it("so does that of a table of one's own, which is read from its file", async () => {
    await expect(sheetMarkdown(confirmationSheet(own))).toMatchFileSnapshot("pages/check-own.md.txt");
  });

  it("has a line for each limit, with room to write where nothing is confirmed yet", () => {
    for (const { id } of builtInSchemes) {
      const { columns, rows } = tableOf(confirmationSheet(id)) ?? { columns: [], rows: [] };
      expect(rows.length, id).toBeGreaterThan(0);
      for (const row of rows) expect(row.length, id).toBe(columns.length);
    }
    expect(tableOf(confirmationSheet(own))?.rows.map((row) => row.slice(1, 5))).toEqual([
      ["A/B", "2 mm/s rms", "MEMORY", "\u2610"],
      ["B/C", "4 mm/s rms", "MEMORY", "\u2610"],
      ["C/D", "8 mm/s rms", "MEMORY", "\u2610"],
    ]);
  });

  it("disputed limits are told before the table, and only where there are any", () => {
    const titles = (id: (typeof builtInSchemes)[number]["id"]): string[] =>
      confirmationSheet(id).sections.map(({ title }) => title);
    const disputed = builtInSchemes.filter(({ id }) => titles(id).some((one) => one.startsWith("Read with care")));
    expect(disputed.length).toBeGreaterThan(0);
    expect(disputed.length).toBeLessThan(builtInSchemes.length);
    expect(confirmationSheet(own).sections.map(({ title }) => title)).toEqual([
      ...["The table", "How to fill it in", "Limits of Fan rule:2", "From paper to file"],
    ]);
  });

  it("a limit that was confirmed says by whom, and has no room to write", async () => {
    const [{ shipped: printed, ...first } = {} as never] = confirmableLimits(own);
    const { scheme, edition, row, limit, as } = first;
    const one = { scheme, edition, row, limit, as, printed, page: "p. 4", by: "J. Example", on: "2024-03-04" };
    const sheet = confirmationSheet(confirmScheme(own, [one]));
    await expect(sheetMarkdown(sheet)).toMatchFileSnapshot("pages/check-own-begun.md.txt");
    const [confirmed, open] = tableOf(sheet)?.rows ?? [];
    expect(confirmed?.[3]).toContain("J. Example");
    expect(confirmed?.slice(4)).toEqual(["", "", "", "", ""]);
    expect(open?.slice(4)).not.toContain("");
  });

  it("as HTML it has the lines to sign on", () => {
    const page = sheetHtml(confirmationSheet(own));
    for (const blank of confirmationSheet(own).blanks) expect(page).toContain(`<td>${blank}</td>`);
  });
});
