/** The packed tarball, installed into throw-away consumers as a user would. Needs the built `dist/`. */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { SourceMap } from "node:module";
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

/** All files below a folder, by their path within it. */
function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1));
}

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
    const files = filesIn(consumer.installed);
    const guides = readdirSync(`${root}/docs/guides`).map((name) => `docs/guides/${name}`);
    const pages = ["README.md", "LICENSE", "CHANGELOG.md", "DEVELOPERS.md", "SECURITY.md", ...guides];
    const loaded = [...reached(consumer.installed)];
    const built = loaded.flatMap((file) => (file.startsWith("dist/") ? [file, `${file}.map`] : []));
    const source = filesIn(`${root}/src`).map((file) => `src/${file}`);
    const wanted = new Set([...built, ...source, "package.json", "dist/veladis.1", ...pages]);
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
    const told = stderr.split("\n").filter((line) => !/^npm notice [\d.]+k?B \S+$/.test(line));
    const warnings = told.filter((line) => /warn|error|correct/i.test(line));
    expect(warnings.filter((line) => !/requires you to be logged in .*\(dry-run\)/.test(line))).toEqual([]);
    expect(status).toBe(0);
  });

  it("has maps that lead from every built file to the source beside it", () => {
    const maps = filesIn(join(consumer.installed, "dist")).filter((file) => file.endsWith(".map"));
    expect(maps.length).toBeGreaterThan(100);
    for (const file of maps) {
      const path = join(consumer.installed, "dist", file);
      const { sources } = JSON.parse(readFileSync(path, "utf8")) as { sources: string[] };
      const lost = sources.filter((source) => !existsSync(join(dirname(path), source)));
      expect(lost, file).toEqual([]);
      const comments = readFileSync(path.slice(0, -4), "utf8").match(/^\/\/# sourceMappingURL=.*$/gm);
      expect(comments, file).toEqual([`//# sourceMappingURL=${file}`]);
    }
  });

  it.each([
    ["trace.mjs", 'import { convert } from "veladis";'],
    ["trace.cjs", 'const { convert } = require("veladis");'],
  ])("a trace of %s names functions; with maps, files and lines of the source", (name, load) => {
    const code = `${load} try { convert(1, "mm/s rsm", "in/s pk"); } catch (error) { console.log(error.stack); }`;
    const plain = printed(name, code).split("\n");
    expect(plain[0]).toBe('VeladisError: expected a detector, received "rsm"; did you mean rms?');
    expect(plain[1]).toMatch(/at unknownName \(.*dist.(?:index\.js|ground\.cjs):\d+:\d+\)$/);
    const mapped = ran(process.execPath, ["--enable-source-maps", name], consumer.folder).split("\n");
    const [, file = "", line = ""] = /unknownName \((.*):(\d+):\d+\)$/.exec(mapped[1] as string) ?? [];
    expect(file).toBe(join(consumer.installed, "src/core/unknown-name.ts"));
    expect(readFileSync(file, "utf8").split("\n")[Number(line) - 1]).toContain("new VeladisError(");
  });

  it.each([
    ["index.d.ts", "function convert<", "src/amplitude/convert.ts", "function convert<"],
    ["index.d.cts", "interface Converter extends", "src/amplitude/converter.ts", "interface Converter extends"],
  ])("the declarations of %s lead to the source", (file, declared, source, written) => {
    const path = join(consumer.installed, "dist", file);
    const map = new SourceMap(JSON.parse(readFileSync(`${path}.map`, "utf8")));
    const lines = readFileSync(path, "utf8").split("\n");
    const at = lines.findIndex((line) => line.includes(declared));
    expect(at).toBeGreaterThanOrEqual(0);
    const name = declared.split(/[ <]/)[1] as string;
    const entry = map.findEntry(at, (lines[at] as string).indexOf(name)) as {
      originalSource: string;
      originalLine: number;
    };
    expect(join("dist", entry.originalSource)).toBe(source);
    expect(readFileSync(join(consumer.installed, source), "utf8").split("\n")[entry.originalLine]).toContain(written);
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
