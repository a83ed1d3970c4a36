import { rmSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { veladis } from "./in-process";
import { folder, printedOf } from "./refusal-cases";

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("refusals of the command", () => {
  // within a test: what runs before all tests belongs to none of them, and mutation testing would not run it
  it("are worded as on their page, end with exit code 2 and begin with the name of the command and a code", async () => {
    const entries = await printedOf(veladis);
    for (const entry of entries)
      expect(entry).toMatch(/\n(veladis: (.*: )?[a-z-]+\n {2}expected: |\{"error":)[\s\S]*\nexit 2\n$/);
    // what the engine of JavaScript says of broken JSON is its own
    const page = entries
      .join("\n")
      .replaceAll(folder, "FOLDER")
      .replace(/(scheme\.json": ).*/, "$1...");
    await expect(page).toMatchFileSnapshot("../refusals/pages/cli.txt");
  });
});
