import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
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

  it("stand in the README as they are, with the caution", () => {
    const part = generatedPart(readFileSync(page("README.md"), "utf8"));
    if (part === undefined) return; // the README is written by hand elsewhere; once it has the marks, it is held to them
    const summary = `${BEGIN}\n${limitsSummary()}\n${END}`;
    if (process.env.UPDATE_LIMITS) {
      const text = readFileSync(page("README.md"), "utf8");
      writeFileSync(page("README.md"), text.replace(part, summary));
    } else expect(part).toBe(summary);
  });
});
