import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Provenance } from "veladis";
import { countLimits } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { BEGIN, END, generatedPart, limitsSection, limitsSummary } from "./limit-counts";

const page = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const GUIDE = page("docs/guides/severity-sources.md");

describe("how the limits are known", () => {
  const counts = countLimits();

  it("are counted and printed", () => {
    process.stdout.write(`${limitsSummary()}\n`);
    expect(counts.limits).toBe(counts.schemes.reduce((total, one) => total + one.limits, 0));
  });

  // run with UPDATE_LIMITS=1 to write the page anew
  it("stand in the guide as they are", () => {
    const text = readFileSync(GUIDE, "utf8");
    const part = generatedPart(text);
    expect(part, `marks ${BEGIN} and ${END} in the guide`).toBeDefined();
    if (process.env.UPDATE_LIMITS) writeFileSync(GUIDE, text.replace(part as string, limitsSection()));
    else expect(part).toBe(limitsSection());
  });

  it("are of one of the grades each, and add up", () => {
    const grades: readonly Provenance[] = ["memory", "practice", "reported", "quoted", "printed", "confirmed"];
    const added = (one: Partial<Record<Provenance, number>>) =>
      grades.reduce((total, grade) => total + (one[grade] ?? 0), 0);
    expect(added(counts)).toBe(counts.limits);
    for (const { limits, ...own } of counts.schemes) expect(added(own)).toBe(limits);
  });

  it("stand in the README as they are, with the caution", () => {
    const part = generatedPart(readFileSync(page("README.md"), "utf8"));
    expect(part, `marks ${BEGIN} and ${END} in the README`).toBeDefined();
    const summary = `${BEGIN}\n${limitsSummary()}\n${END}`;
    if (process.env.UPDATE_LIMITS) {
      const text = readFileSync(page("README.md"), "utf8");
      writeFileSync(page("README.md"), text.replace(part as string, summary));
    } else expect(part).toBe(summary);
  });
});
