import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { countLimits } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { severityLimits } from "../references/severity-limits";
import { BEGIN, END, generatedPart, limitsSection, limitsSummary } from "./limit-counts";

const page = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const GUIDE = page("docs/guides/severity-sources.md");

describe("limits read in print and from memory", () => {
  const counts = countLimits();

  it("are counted and printed", () => {
    process.stdout.write(`${limitsSummary()}\n`);
    const sum = (part: "published" | "memory") => counts.schemes.reduce((total, one) => total + one[part], 0);
    expect([counts.published, counts.memory]).toEqual([sum("published"), sum("memory")]);
  });

  // each limit of the copy keyed by hand, but rows that repeat a criterion for another speed or power of its class
  it.each([
    ["iso-10816-3-2009", 10, 14],
    ["iec-60034-14-2003", 33, 0],
    ["iso-2372-1974", 0, 12],
    ["iso-10816-5-2000", 21, 6],
    ["iso-2373-1974", 15, 0],
  ] as const)("%s: as in the copy keyed by hand", (id, published, memory) => {
    const own = counts.schemes.find(({ scheme }) => scheme.id === id);
    expect([own?.published, own?.memory]).toEqual([published, memory]);
    const flags = (severityLimits[id] ?? []).map(([, , , known]) => known).join("");
    expect([flags.replaceAll("m", "").length, flags.replaceAll("p", "").length]).toEqual([published, memory]);
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
