import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../examples/fences";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-stopped-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const place = (name = "out.csv"): string => join(mkdtempSync(join(folder, "one-")), name);
const left = (out: string): string[] => readdirSync(join(out, ".."));
const fixed = ["--column", "v", "--from", "mm/s rms", "--to", "in/s pk"];

describe("a run of `table` in a process that is stopped", () => {
  const bundle = join(folder, "cli.js");
  const entryPoints = {
    cli: `${root}/src/cli/main.ts`,
    "parquet-worker": `${root}/src/cli/parquet/parquet-worker.ts`,
  };
  beforeAll(async () => {
    writeFileSync(join(folder, "package.json"), '{ "type": "module" }');
    await build({
      ...{ entryPoints, outdir: folder, bundle: true, format: "esm" },
      ...{
        platform: "node",
        external: ["hyparquet", "hyparquet-writer", "mathjs", "@resvg/resvg-js", "read-excel-file"],
        logLevel: "error",
      },
      banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
    });
  });

  /** Begins a run, feeds it rows without end, and sends the signal when something is written. */
  async function stopped(out: string, signal: NodeJS.Signals): Promise<void> {
    const child = spawn(process.execPath, [bundle, "table", ...fixed, "--out", out], {
      stdio: ["pipe", "ignore", "ignore"],
    });
    const gone = new Promise<void>((resolve) => child.once("exit", () => resolve()));
    child.stdin.on("error", () => undefined);
    child.stdin.write("v\n");
    const rows = "1\n2\n".repeat(50_000);
    const begun = (): boolean => left(out).some((name) => name.endsWith(".part"));
    for (let i = 0; i < 2000 && (i < 20 || !begun()); i++) {
      child.stdin.write(rows);
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    expect(begun()).toBe(true);
    child.kill(signal);
    await gone;
  }

  it("kill -9 leaves no half output, and the next run cleans up and gives the same bytes as any other", async () => {
    const [killed, whole] = [place(), place()];
    await stopped(killed, "SIGKILL");
    expect(existsSync(killed)).toBe(false);
    expect(left(killed).length).toBeGreaterThan(0);
    const input = place("in.csv");
    writeFileSync(input, "v\n1\n2\n");
    for (const out of [killed, whole]) await veladis(["table", input, ...fixed, "--out", out]);
    expect(left(killed)).toEqual(["out.csv"]);
    expect(readFileSync(killed)).toEqual(readFileSync(whole));
  });

  it("and one without hyparquet beside it says how to get it", () => {
    const { stderr, status } = spawnSync(process.execPath, [bundle, "table", "in.parquet", ...fixed], {
      encoding: "utf8",
    });
    expect(stderr).toContain("npm install hyparquet");
    expect(status).toBe(2);
  });

  it.each(["SIGINT", "SIGTERM", "SIGHUP"] as const)("%s leaves nothing at all", async (signal) => {
    const out = place();
    await stopped(out, signal);
    expect(left(out)).toEqual([]);
  });
});
