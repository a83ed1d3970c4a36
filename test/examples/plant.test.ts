import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { pageFences, root } from "./fences";
import { runInShell } from "./run-shell";

const folder = mkdtempSync(join(tmpdir(), "veladis-plant-"));
symlinkSync(join(root, "docs"), join(folder, "docs"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const lines = (name: string): string[] => readFileSync(join(folder, name), "utf8").trimEnd().split("\n");

describe("the guide to a month of a plant: commands that write files, in their order", () => {
  // those with a prompt print what the page says, and run with the others
  const steps = pageFences("docs/guides/plant.md").filter(
    ({ language, code }) => language === "sh" && !code.startsWith("$"),
  );

  it.each(steps.map((fence) => [`sh on line ${fence.line}`, fence] as const))("%s", (_, { code }) => {
    const { out, status } = runInShell(code, folder);
    expect([status, out.includes("veladis:") && !out.includes("Condensate pump 4")], out).toEqual([0, false]);
  });

  it("writes a list to start from, the sheets of the round, the list with the results, and a page a machine", () => {
    expect(lines("my-plant.csv")).toHaveLength(2);
    expect(readdirSync(join(folder, "round")).sort()).toEqual([
      "Boiler-feed_pump_B-2026-10-15.html",
      "Circulation_pump_3-2026-10-15.html",
      "ID_fan_2-2026-10-15.html",
      "results.csv",
    ]);
    // three devices were checked, and nothing else was touched
    const [before, after] = [lines("plant.csv"), lines("plant-new.csv")];
    const changed = after.flatMap((line, i) => (line === before[i] ? [] : [line.split(",")[0]]));
    expect(changed).toEqual(["ID fan 2", "Boiler-feed pump B", "Circulation pump 3"]);
    expect(readdirSync(join(folder, "report"))).toHaveLength(30 + 1);
  });
});

describe("what the commands print of thirty machines", () => {
  const list = "docs/examples/plant/plant.csv";

  it.each([
    `audit ${list} --on 2026-10-01 --changes docs/examples/plant/changes.csv`,
    `judge ${list} docs/examples/plant/route-2026-10.csv --before docs/examples/plant/route-2026-09.csv`,
    `setpoints ${list}`,
    `checks ${list} --on 2026-10-15 --shaker "8 Hz to 3 kHz" --stroke "5 mm pp" --acceleration "6 g pk"`,
    `checks ${list} --on 2026-10-22 --results docs/examples/plant/results-2026-10.csv`,
  ])("is at most 100 columns wide: plant %s", (command) => {
    const { out } = runInShell(`veladis plant ${command} 2>/dev/null`, folder);
    expect(out.split("\n").length).toBeGreaterThan(10);
    expect(out.split("\n").filter((line) => line.length > 100)).toEqual([]);
  });
});
