import { describe, expect, it } from "vitest";
import { filesBelow } from "./examples/fences";
import { declarationsOf } from "./surface/declarations";

const entries = import.meta.glob("../src/entries/*.ts");

/** Every public name with what it is, so that none comes or goes unseen. */
const surfaceOf = (module: object): string[] =>
  Object.entries(module)
    .map(([name, value]) => `${name}: ${typeof value}`)
    .sort();

describe("public names", () => {
  it("veladis", async () => {
    expect(surfaceOf(await import("../src/index"))).toMatchSnapshot();
  });

  it.each(Object.entries(entries))("%s", async (_, load) => {
    expect(surfaceOf((await load()) as object)).toMatchSnapshot();
  });

  it("tables are frozen to the last row", async () => {
    const module: Record<string, unknown> = await import("../src/index");
    const tables = Object.entries(module).filter(([, value]) => typeof value === "object");
    expect(tables.length).toBeGreaterThan(5);
    const expectFrozen = (value: unknown, path: string): void => {
      if (typeof value !== "object" || value === null) return;
      expect(Object.isFrozen(value), path).toBe(true);
      for (const [key, inner] of Object.entries(value)) expectFrozen(inner, `${path}.${key}`);
    };
    for (const [name, table] of tables) expectFrozen(table, name);
  });
});

describe("public types and signatures", () => {
  const paths = ["src/index.ts", ...filesBelow("src/entries", ".ts").sort()];
  // within a test: reading the whole project takes seconds
  let made: Map<string, string> | undefined;

  it.each(paths)("%s", { timeout: 120_000 }, async (path) => {
    made ??= declarationsOf(paths);
    const name = path.replace(/^.*\/(.*)\.ts$/, "$1");
    await expect(made.get(path)).toMatchFileSnapshot(`surface/${name}.txt`);
  });
});

describe("every catalogue file is exported by its folder", () => {
  it("each folder below the CLI has an index", () => {
    const folders = new Set(filesBelow("src", ".ts").map((path) => path.split("/")[1]));
    for (const folder of folders) {
      if (folder?.endsWith(".ts") || folder === "entries" || folder === "cli") continue;
      expect(filesBelow(`src/${folder}`, "index.ts").length, folder).toBeGreaterThan(0);
    }
  });
});
