/** A limit that differs from the last release is listed in the changelog; see docs/guides/versions.md. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { builtInSchemes } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { root } from "../examples/fences";
import { corrections, limitLines, ofNewTables, unlisted } from "./corrected-limits";

const file = `${root}/test/severity/limits.txt`;
const now = limitLines(builtInSchemes);
const changelog = readFileSync(`${root}/CHANGELOG.md`, "utf8");
const linesOf = (text: string): string[] => text.split("\n").filter((line) => line !== "");

describe("the limits of all tables", () => {
  const released = existsSync(file) ? linesOf(readFileSync(file, "utf8")) : [];
  const added = ofNewTables(released, now);

  it("stand in the changelog where they differ from the last release", () => {
    expect(unlisted(corrections(released, now), changelog)).toEqual([]);
  });

  // run with UPDATE_LIMITS=1 to add those of new tables, with UPDATE_LIMITS=release once a release is out
  it("are all noted", () => {
    const mode = process.env.UPDATE_LIMITS;
    if (mode !== undefined) writeFileSync(file, `${(mode === "release" ? now : [...released, ...added]).join("\n")}\n`);
    else expect(added).toEqual([]);
  });

  it("have a line each", () => {
    expect(new Set(now).size).toBe(now.length);
    for (const { id } of builtInSchemes) expect(now.some((line) => line.startsWith(`\`${id}\``))).toBe(true);
  });
});

describe("a limit that was corrected", () => {
  const before = ["`one`, class I, mm/s rms, A/B: 2.8", "`one`, class I, mm/s rms, B/C: 4.5"];
  const after = ["`one`, class I, mm/s rms, A/B: 2.3", "`one`, class II, mm/s rms, A/B: 3.5", "`two`, um pp, A/B: 80"];
  const lines = [
    "- `one`, class I, mm/s rms, A/B: 2.8 -> 2.3",
    "- `one`, class I, mm/s rms, B/C: 4.5 -> none",
    "- `one`, class II, mm/s rms, A/B: none -> 3.5",
  ];
  const log = (rows: readonly string[]): string =>
    `# Changelog\n\n## 0.2.0 - unreleased\n\n### Corrected limits\n\n${rows.join("\n")}\n\n### Added\n\n- more\n`;

  it("is found, lost and gained ones too, and those of a new table are not", () => {
    expect(corrections(before, after)).toEqual(lines);
    expect(ofNewTables(before, after)).toEqual(["`two`, um pp, A/B: 80"]);
  });

  it("is listed with its source in the newest section, or fails", () => {
    const sourced = lines.map((line) => `${line} (table 2, page 7)`);
    expect(unlisted(lines, log(sourced))).toEqual([]);
    expect(unlisted(lines, log(lines))).toEqual(lines);
    expect(unlisted(lines, log(sourced.slice(1)))).toEqual(lines.slice(0, 1));
    expect(unlisted(lines, log([]).replace("Added", "Changed"))).toEqual(lines);
    expect(unlisted(lines, `# Changelog\n\n## 0.3.0\n\n${log(sourced).slice(13)}`)).toEqual(lines);
  });
});
