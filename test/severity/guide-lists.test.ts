import { readFileSync } from "node:fs";
import {
  builtInSchemes,
  classify,
  confirmScheme,
  limitsFor,
  type Provenance,
  provenances,
  type Scheme,
} from "veladis/severity";
import { describe, expect, it } from "vitest";
import { explain } from "../../src/entries/explain";

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const guide = (name: string) => read(`docs/guides/${name}.md`);
const section = (text: string, title: string) => text.split(`## ${title}\n`)[1]?.split("\n## ")[0] ?? "";

describe("lists in the guides, held to the data", () => {
  it.each(["severity-sources", "severity-own", "zones-and-provenance"])("%s names every grade", (name) => {
    const text = guide(name);
    for (const grade of Object.keys(provenances)) expect(text, grade).toContain(`\`${grade}\``);
  });

  it("the table of grades has the same grades and the same ones verified", () => {
    const rows = [...guide("severity-sources").matchAll(/^\| `(\w+)` \|.*\| (true|false) \|$/gm)];
    expect(Object.fromEntries(rows.map(([, grade, verified]) => [grade, verified === "true"]))).toEqual(
      Object.fromEntries(Object.entries(provenances).map(([grade, { verified }]) => [grade, verified])),
    );
  });

  it("a scheme of your own: every part of a scheme, of a class and of a criterion", () => {
    const parts = section(guide("severity-own"), "Parts of a scheme");
    const source = read("src/severity/scheme.ts");
    for (const name of ["Criterion", "MachineClass", "Scheme"]) {
      const body = source.split(`export interface ${name}<`)[1]?.split("\n}")[0] ?? "";
      const keys = [...body.matchAll(/^ {2}readonly (\w+)\??:/gm)].map(([, key]) => key as string);
      expect(keys.length, name).toBeGreaterThan(5);
      for (const key of keys) expect(parts, `${name}.${key}`).toMatch(new RegExp(`[\`.\\]]${key}[\`[]`));
    }
  });

  it("what is not here is not here", () => {
    const missing =
      section(guide("severity-sources"), "What is not here").split("Seen, and not")[0]?.replace(/\s+/g, " ") ?? "";
    const named = missing.match(/(?:API|IEC|ISO) [\d-]+(?::\d+)?/g) ?? [];
    expect(named.length).toBeGreaterThan(4);
    const has = (builtInSchemes as readonly Scheme[]).map(({ standard, edition }) => `${standard}:${edition}`);
    const onTheHousing = ["ISO 20816-8", "ISO 20816-4"]; // in part here: the sentence says which part is not
    for (const one of named.filter((name) => !onTheHousing.includes(name)))
      expect(has.filter((name) => name.startsWith(one) && !/\d/.test(name[one.length] ?? ""))).toEqual([]);
  });

  it("live nomograph: how the limits of its zones are known", () => {
    const { provenance } = classify("4 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });
    expect(guide("live-nomograph")).toContain(provenances[provenance as Provenance].text);
  });
});

describe("the arithmetic of notes", () => {
  // arithmetic of a sine; 1.77 mm/s RMS: inertance.tistory.com/165
  it("API 541: 1.77 mm/s RMS is 2.5 mm/s peak, and 0.1 in/s peak would be 1.80", () => {
    const limit = limitsFor({ scheme: "api-541", machine: "motor" })[0]?.limits.acceptance;
    expect(limit?.value).toBe(1.77);
    expect((2.5 / Math.SQRT2).toFixed(2)).toBe("1.77");
    expect((2.54 / Math.SQRT2).toFixed(2)).toBe("1.80");
    expect(limit?.source.note).toMatch(/2\.5 mm\/s peak.*0\.1 in\/s peak would be 1\.80/);
  });
});

describe("an answer by a confirmed copy that differs", () => {
  it("says so in its explanation", () => {
    const copy = confirmScheme("iso-10816-7-2009", [
      {
        scheme: "iso-10816-7-2009",
        edition: "2009",
        row: "category I, power up to 200 kW",
        as: "mm/s rms",
        limit: "C/D",
        printed: 6.6,
        page: "12",
        by: "J. Example",
        second: "K. Example",
        on: "2024-03-04",
      },
    ]);
    const answer = classify("5 mm/s rms", { scheme: copy, machine: "category I 90 kW 2980 r/min" });
    expect(explain(answer).text).toMatch(/DIFFERS FROM THE TABLE AS SHIPPED: .*6\.6.*6\.5/);
  });
});
