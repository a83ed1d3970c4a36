/** The packed tarball, installed into throw-away consumers as a user would. Needs the built `dist/`. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "./examples/fences";

const folder = mkdtempSync(join(tmpdir(), "veladis-consumer-"));
const manifest = JSON.parse(readFileSync(`${root}/package.json`, "utf8")) as {
  exports: Record<string, unknown>;
  dependencies: Record<string, string>;
};
const entries = Object.keys(manifest.exports)
  .filter((path) => path !== "./package.json")
  .map((path) => path.replace(/^\./, "veladis"));

function run(command: string, args: readonly string[], cwd = folder): string {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: "utf8" });
  if (status !== 0) throw new Error(`${command} ${args.join(" ")}\n${stdout}${stderr}`);
  return stdout;
}

/** Runs a script in the consumer's folder and gives what it printed. */
function printed(name: string, code: string): string {
  writeFileSync(join(folder, name), code);
  return run(process.execPath, [name]).trim();
}

beforeAll(() => {
  run("npm", ["pack", "--ignore-scripts", "--pack-destination", folder], root);
  const tarball = readdirSync(folder).find((name) => name.endsWith(".tgz")) as string;
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name: "consumer", private: true, type: "module" }));
  run("npm", ["install", "--ignore-scripts", "--prefer-offline", "--no-audit", "--no-fund", `./${tarball}`]);
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the packed tarball", () => {
  it("holds what a user needs and nothing else", () => {
    const files = readdirSync(join(folder, "node_modules/veladis"), { recursive: true, encoding: "utf8" });
    expect(files).toEqual(
      expect.arrayContaining(["README.md", "LICENSE", "CHANGELOG.md", "dist/index.js", "dist/cli.js"]),
    );
    expect(files.filter((name) => /^(src|test|docs|bench)\b|\.map$/.test(name))).toEqual([]);
  });

  it("works from ES modules", () => {
    const code = `import { convert } from "veladis"; console.log(convert(25.4, "mm/s pk", "in/s pk"));`;
    expect(printed("esm.mjs", code)).toBe("1");
  });

  it("works from CommonJS", () => {
    const code = `const { convert } = require("veladis"); console.log(convert(25.4, "mm/s pk", "in/s pk"));`;
    expect(printed("cjs.cjs", code)).toBe("1");
  });

  it("every entry loads both ways, and none brings what it must not", () => {
    const list = JSON.stringify(entries);
    expect(
      printed("all.mjs", `for (const name of ${list}) console.log(Object.keys(await import(name)).length > 0);`),
    ).toBe(entries.map(() => "true").join("\n"));
    expect(printed("all.cjs", `for (const name of ${list}) console.log(Object.keys(require(name)).length > 0);`)).toBe(
      entries.map(() => "true").join("\n"),
    );
  });

  it("all entries throw one and the same error class, both ways", () => {
    const same = `[...new Set(errors)].length`;
    const list = JSON.stringify(entries);
    const esm = `const errors = []; for (const name of ${list}) { const { VeladisError } = await import(name); if (VeladisError) errors.push(VeladisError); } console.log(${same});`;
    const cjs = `const errors = []; for (const name of ${list}) { const { VeladisError } = require(name); if (VeladisError) errors.push(VeladisError); } console.log(${same});`;
    expect(printed("errors.mjs", esm)).toBe("1");
    expect(printed("errors.cjs", cjs)).toBe("1");
  });

  it("the command runs by its name", () => {
    const command = join(folder, "node_modules/.bin/veladis");
    expect(run(command, ["0.25 in/s pk at 1500 r/min to mm/s rms"])).toBe(
      "0.25 in/s pk at 1500 r/min = 4.49 mm/s rms  (sine)\n",
    );
    expect(run(command, ["--version"]).trim()).toMatch(/^\d+\.\d+\.\d+$/);
  });

  it.each([
    ["NodeNext", "NodeNext", "consumer.ts"],
    ["NodeNext", "NodeNext", "consumer.cts"],
    ["ESNext", "Bundler", "consumer.ts"],
  ])("types: module %s, resolution %s, %s", (module, moduleResolution, file) => {
    writeFileSync(
      join(folder, file),
      `import { type Amplitude, convert, parseAmplitude } from "veladis";
       const reading: Amplitude = parseAmplitude("0.25 in/s pk at 1500 r/min");
       export const value: number = convert(reading.value, "in/s pk", "mil pp", { at: "1500 r/min" });
       // @ts-expect-error another quantity needs a frequency
       convert(0.25, "in/s pk", "mil pp");
       // @ts-expect-error a misspelt detector
       convert(0.25, "in/s pk", "mm/s rsm");
       ${entries.map((entry, i) => `import * as entry${i} from "${entry}"; export const used${i} = entry${i};`).join("\n")}
      `,
    );
    const tsc = `${root}/node_modules/typescript/bin/tsc`;
    const options = [
      "--strict",
      "--noEmit",
      "--target",
      "ES2022",
      "--module",
      module,
      "--moduleResolution",
      moduleResolution,
    ];
    expect(run(process.execPath, [tsc, ...options, file])).toBe("");
  });
});
