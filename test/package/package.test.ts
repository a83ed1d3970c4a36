/** The packed tarball, installed into throw-away consumers as a user would. Needs the built `dist/`. */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../examples/fences";
import { type Consumer, entryNames, newConsumer, ran } from "./consumer";

let consumer: Consumer;

beforeAll(() => {
  consumer = newConsumer();
}, 120_000);

afterAll(() => consumer?.remove());

const printed = (name: string, code: string): string => consumer.printed(name, code);

/** Every string in a tree of conditions. */
function paths(tree: unknown): string[] {
  return typeof tree === "string" ? [tree] : Object.values(tree as object).flatMap(paths);
}

/** The files that the manifest names, and those that they load in turn. */
function reached(folder: string): Set<string> {
  const { exports, bin, main, module, types, typesVersions } = JSON.parse(
    readFileSync(join(folder, "package.json"), "utf8"),
  );
  const found = new Set<string>();
  const queue = paths([exports, bin, main, module, types, typesVersions]).map((path) => join(path));
  for (const file of queue) {
    if (found.has(file)) continue;
    found.add(file);
    const text = readFileSync(join(folder, file), "utf8");
    for (const [, to = ""] of text.matchAll(/(?:from|import|require|new URL)\s*\(?\s*["'](\.[^"']+)["']/g)) {
      const path = join(dirname(file), to);
      queue.push(/\.d\.c?ts$/.test(file) ? path.replace(/\.(c?)js$/, ".d.$1ts") : path);
    }
  }
  return found;
}

describe("the packed tarball", () => {
  it("holds what a user needs and nothing else", () => {
    const files = readdirSync(consumer.installed, { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile())
      .map(({ parentPath, name }) => join(parentPath, name).slice(consumer.installed.length + 1));
    const guides = readdirSync(`${root}/docs/guides`).map((name) => `docs/guides/${name}`);
    const pages = ["README.md", "LICENSE", "CHANGELOG.md", "DEVELOPERS.md", "SECURITY.md", ...guides];
    const wanted = new Set([...reached(consumer.installed), "package.json", ...pages]);
    expect(files.sort()).toEqual([...wanted].sort());
  });

  it("has a README whose links lead to other sites, or into the tarball", () => {
    const text = readFileSync(join(consumer.installed, "README.md"), "utf8");
    const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, to = ""]) => to);
    const within = links.filter((to) => !/^(https?:\/\/|#)/.test(to)).map((to) => to.replace(/#.*/, ""));
    expect(within.length).toBeGreaterThan(10);
    expect(within.filter((to) => !existsSync(join(consumer.installed, to)))).toEqual([]);
  });

  it("is what npm would publish, with nothing to correct or to warn of", () => {
    // an address where nobody answers: no registry is asked
    const options = ["--dry-run", "--ignore-scripts", "--registry", "http://127.0.0.1:9/", "--fetch-retries", "0"];
    const { status, stderr } = spawnSync("npm", ["publish", ...options], { cwd: root, encoding: "utf8" });
    const warnings = stderr.split("\n").filter((line) => /warn|error|correct/i.test(line));
    expect(warnings.filter((line) => !/requires you to be logged in .*\(dry-run\)/.test(line))).toEqual([]);
    expect(status).toBe(0);
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
    const list = JSON.stringify(entryNames);
    expect(
      printed("all.mjs", `for (const name of ${list}) console.log(Object.keys(await import(name)).length > 0);`),
    ).toBe(entryNames.map(() => "true").join("\n"));
    expect(printed("all.cjs", `for (const name of ${list}) console.log(Object.keys(require(name)).length > 0);`)).toBe(
      entryNames.map(() => "true").join("\n"),
    );
  });

  it("all entries throw one and the same error class, both ways", () => {
    const same = `[...new Set(errors)].length`;
    const list = JSON.stringify(entryNames);
    const esm = `const errors = []; for (const name of ${list}) { const { VeladisError } = await import(name); if (VeladisError) errors.push(VeladisError); } console.log(${same});`;
    const cjs = `const errors = []; for (const name of ${list}) { const { VeladisError } = require(name); if (VeladisError) errors.push(VeladisError); } console.log(${same});`;
    expect(printed("errors.mjs", esm)).toBe("1");
    expect(printed("errors.cjs", cjs)).toBe("1");
  });

  it("the command runs by its name", () => {
    const command = join(consumer.folder, "node_modules/.bin/veladis");
    const run = (...args: string[]): string => ran(command, args, consumer.folder);
    expect(run("0.25 in/s pk at 1500 r/min to mm/s rms")).toBe("0.25 in/s pk at 1500 r/min = 4.49 mm/s rms  (sine)\n");
    expect(run("--version").trim()).toMatch(/^\d+\.\d+\.\d+$/);
  });

  it.each([
    ["NodeNext", "NodeNext", "consumer.ts"],
    ["NodeNext", "NodeNext", "consumer.cts"],
    ["ESNext", "Bundler", "consumer.ts"],
    ["CommonJS", "node10", "consumer.ts"],
  ])("types: module %s, resolution %s, %s", (module, moduleResolution, file) => {
    consumer.write(
      file,
      `import { type Amplitude, convert, parseAmplitude } from "veladis";
       const reading: Amplitude = parseAmplitude("0.25 in/s pk at 1500 r/min");
       export const value: number = convert(reading.value, "in/s pk", "mil pp", { at: "1500 r/min" });
       // @ts-expect-error another quantity needs a frequency
       convert(0.25, "in/s pk", "mil pp");
       // @ts-expect-error a misspelt detector
       convert(0.25, "in/s pk", "mm/s rsm");
       ${entryNames.map((entry, i) => `import * as entry${i} from "${entry}"; export const used${i} = entry${i};`).join("\n")}
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
      // TypeScript 6 calls node10 deprecated
      ...(moduleResolution === "node10" ? ["--ignoreDeprecations", "6.0"] : []),
    ];
    expect(ran(process.execPath, [tsc, ...options, file], consumer.folder)).toBe("");
  });
});
