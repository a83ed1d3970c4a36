import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { attacked } from "./attacked";
import { drawing, hostileKinds } from "./hostile-files";

const folder = mkdtempSync(join(tmpdir(), "veladis-hostile-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Files of each kind; `bench/hostile-files.mjs` runs thousands. */
const EACH = 20;

describe("a hostile file ends in an answer or in one refusal, and no row is lost without a word", () => {
  it.each(Object.entries(hostileKinds))("%s", async (_kind, make) => {
    const draw = drawing(15);
    for (let i = 0; i < EACH; i++) {
      const file = make(draw);
      const { faults } = await attacked(file, folder);
      expect(faults, `file ${i}: ${file.content.toString("latin1", 0, 300)}`).toEqual([]);
    }
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });
});
