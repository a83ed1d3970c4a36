import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-size-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const place = (name = "out.csv"): string => join(mkdtempSync(join(folder, "one-")), name);
const fixed = ["--column", "v", "--from", "mm/s rms", "--to", "in/s pk"];

describe("size", () => {
  it("128 MB without line feeds end in under 5 s and 300 MB", async () => {
    const path = place();
    const bytes = Buffer.alloc(1 << 20, "1,2");
    for (let i = 0; i < 128; i++) appendFileSync(path, bytes);
    const before = process.memoryUsage().rss;
    const start = performance.now();
    const { err, code } = await veladis(["table", path, ...fixed]);
    expect([code, err]).toEqual([2, expect.stringContaining("rows of at most 1048576 bytes, at line 1 of")]);
    expect(performance.now() - start).toBeLessThan(5000);
    expect(process.memoryUsage().rss - before).toBeLessThan(300e6);
    rmSync(path);
  });
});

describe("progress", () => {
  it("shows share and rows where somebody watches, and clears the line", async () => {
    const path = place("in.csv");
    writeFileSync(path, `v\n${"1.5\n".repeat(400_000)}`);
    const { shown } = await veladis(["table", path, ...fixed, "--out", place()]);
    expect(shown[shown.length - 1]).toBe("");
    expect(shown[0]).toMatch(/in\.csv {2}#*\.* \d+ % {2}[\d ]+ rows, [\d ]+ a second$/);
  });
});
