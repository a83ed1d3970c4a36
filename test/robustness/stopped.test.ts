import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(`${tmpdir()}/veladis-`);
const command = `${folder}/cli.mjs`;
const rows = "1\n2\n3\n".repeat(60_000);

beforeAll(async () => {
  await build({
    ...{ entryPoints: [`${root}/src/cli/main.ts`], outfile: command, bundle: true, format: "esm" },
    ...{ platform: "node", packages: "external", logLevel: "error" },
  });
  symlinkSync(`${root}/node_modules`, `${folder}/node_modules`);
  writeFileSync(`${folder}/in.csv`, `v\n${rows}`);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const shell = (line: string) =>
  spawnSync("sh", ["-c", line.replaceAll("veladis", `'${process.execPath}' '${command}'`)], {
    cwd: folder,
    encoding: "utf8",
  });
const table = 'veladis table in.csv --column v --from "mm/s rms" --to "in/s rms"';
const left = () => readdirSync(folder).filter((name) => name.includes("out"));

describe.skipIf(process.platform !== "linux")("a full disk is told in words, and leaves nothing", () => {
  it.each([
    'veladis "1 in/s pk"',
    "veladis --help",
    "veladis schemes",
    'veladis plan --threshold "9 mm/s rms at 25 Hz"',
    'echo "1 in/s pk" | veladis --to "mm/s rms"',
    "echo 1+1 | veladis",
    table,
    `${table} --json`,
  ])("%s", (line) => {
    const { status, stderr } = shell(`${line} > /dev/full`);
    expect([status, stderr.includes("    at ")]).toEqual([2, false]);
  });

  it("a file that grows beyond what may be", () => {
    const { status, stderr } = shell(`trap '' XFSZ; ulimit -f 100; ${table} --out out.csv`);
    expect(status).toBe(2);
    expect(stderr).toContain("EFBIG");
    expect(left()).toEqual([]);
  });
});

describe("a reader that goes away", () => {
  it.each([table, `${table} --json`, "veladis schemes", "veladis --help"])("%s", (line) => {
    const { status, stderr } = shell(`${line} 2>/dev/null | head -c 1 > /dev/null`);
    expect([status, stderr]).toEqual([0, ""]);
  });

  it("and takes the rest with it: no half of an output is left, and a shell can tell", () => {
    const { stdout } = spawnSync(
      "bash",
      [
        "-c",
        `set -o pipefail; '${process.execPath}' '${command}' ${table.slice(8)} --refused out.bad.csv | head -c 1; echo " $?"`,
      ],
      { cwd: folder, encoding: "utf8" },
    );
    expect(stdout).toBe("v 141\n");
    expect(left()).toEqual([]);
  });

  it("of what is told beside the output: the output is whole", () => {
    shell(`{ ${table} --out out.csv 2>&1 >/dev/null; echo done > out.told; } | true`);
    shell("while [ ! -e out.told ]; do sleep 0.05; done");
    expect(readFileSync(`${folder}/out.csv`, "utf8").split("\n")).toHaveLength(180_002);
    expect(left().sort()).toEqual(["out.csv", "out.told"]);
    expect(existsSync(`${folder}/out.refused.csv`)).toBe(false);
  });
});
