import type { Provenance, Source } from "veladis";
import * as facts from "veladis/facts";
import * as protection from "veladis/protection";
import * as severity from "veladis/severity";
import {
  builtInSchemes,
  classify,
  confirmableLimits,
  countLimits,
  defineScheme,
  limitsFor,
  type Scheme,
} from "veladis/severity";
import { describe, expect, it } from "vitest";
import { inPrint, recalled, siteRule, zonesIn } from "./own-scheme";

describe("a judgement", () => {
  it("is verified only where every limit of its table was read in print", () => {
    const known = [inPrint, recalled];
    for (const ab of known) {
      for (const bc of known) {
        for (const cd of known) {
          const wanted = [ab, bc, cd].every((one) => one === inPrint);
          const zones = zonesIn("mm/s rms", { "A/B": 1, "B/C": 2, "C/D": 4 }, ab);
          const table = siteRule("known", {
            classes: [{ criteria: [{ ...zones, limitSources: { "B/C": bc, "C/D": cd } }] }],
          });
          expect(classify("1.5 mm/s rms", { scheme: table }).verified).toBe(wanted);
          expect(limitsFor({ scheme: table })[0]?.verified).toBe(wanted);
        }
      }
    }
  });
});

/** Every source in what a module exports, wherever it stands, with the path to it. */
function sourcesIn(value: unknown, path: string, seen = new Set<unknown>()): (readonly [string, Source])[] {
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  const own = "provenance" in value && "title" in value ? [[path, value as Source] as const] : [];
  return [...own, ...Object.entries(value).flatMap(([name, one]) => sourcesIn(one, `${path}.${name}`, seen))];
}

const verifiedGrades: readonly Provenance[] = ["printed", "confirmed"];

describe("what is verified has a page or a signature", () => {
  const all = [severity, protection, facts].flatMap((one, i) => sourcesIn(one, `entry ${i}`));

  it("every limit, highest setting and rule that is exported", () => {
    expect(all.length).toBeGreaterThan(100);
    const verified = all.filter(([, { provenance }]) => verifiedGrades.includes(provenance));
    expect(verified.length).toBeGreaterThan(5);
    for (const [path, source] of verified) {
      expect(source.page, path).toMatch(/\S/);
      // a shipped value is signed by nobody
      expect(source.provenance, path).toBe("printed");
    }
  });

  it("every limit of every table, as the check sheet lists it and as it is counted", () => {
    const limits = (builtInSchemes as readonly Scheme[]).flatMap((scheme) => confirmableLimits(scheme));
    for (const { scheme, row, limit, provenance, source } of limits) {
      if (provenance === "printed") expect(source.page, `${scheme} ${row} ${limit}`).toMatch(/\S/);
      expect(provenance, `${scheme} ${row} ${limit}`).not.toBe("confirmed");
    }
    expect(countLimits().confirmed).toBe(0);
  });

  it("a table of one's own that is read in print without a page, or confirmed without a name, a day or a page, is refused", () => {
    const withSource = (source: object) =>
      defineScheme({
        ...siteRule("known"),
        classes: [{ criteria: [zonesIn("mm/s rms", { "A/B": 1, "B/C": 2, "C/D": 4 }, source as Source)] }],
      } as Scheme);
    const signed = { title: "Site rule", provenance: "confirmed", page: "p. 3", by: "J. Example", on: "2024-03-04" };
    expect(() => withSource({ title: "Site rule", provenance: "printed" })).toThrow(/page/);
    expect(() => withSource({ ...signed, page: undefined })).toThrow();
    expect(() => withSource({ ...signed, by: undefined })).toThrow();
    expect(() => withSource({ ...signed, on: undefined })).toThrow();
  });
});
