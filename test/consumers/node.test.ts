/** The packed tarball under each version of Node that it admits. Needs `dist/` and a registry of npm packages. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { stripVTControlCharacters } from "node:util";
import { afterAll, describe, expect, it } from "vitest";
import { entryNames, newConsumer, ran } from "../package/consumer";
import { answers, job, jobImports } from "../package/job";
import { nodeBinaries } from "./node-binaries";

const consumer = newConsumer();
const { binaries, end } = nodeBinaries();

afterAll(() => {
  consumer.remove();
  end();
});

/** What the calculator shows on a pseudo-terminal, made by script(1) of util-linux, for keys typed one after another. */
function shown(node: string, keys: readonly string[]): Promise<string> {
  const line = `"${node}" "${consumer.installed}/dist/cli.js"`;
  const env = { ...process.env, VELADIS_HISTORY: "", TERM: "xterm" };
  const child = spawn("script", ["-qec", line, "/dev/null"], { env });
  const left = [...keys];
  let screen = "";
  child.stdout.on("data", (text) => {
    screen += String(text);
    // a prompt: of a line, or of one that goes on
    if (/(> |\.\.\. |\| )$/.test(stripVTControlCharacters(screen))) child.stdin.write(left.shift() ?? "\x04");
  });
  return new Promise((resolve) => child.on("close", () => resolve(screen)));
}

const print = "console.log(JSON.stringify(result));";

for (const binary of binaries) {
  if ("missing" in binary) {
    console.warn(`Node ${binary.version} is not tried: ${binary.missing}`);
    it.skip(`Node ${binary.version}: ${binary.missing}`, () => undefined);
    continue;
  }

  describe(`Node ${binary.version}`, () => {
    const printed = (name: string, code: string): string => consumer.printed(name, code, binary.path);
    const command = (args: readonly string[], input = "", quiet = true): string =>
      ran(binary.path, [`${consumer.installed}/dist/cli.js`, ...args], consumer.folder, { input, quiet });

    it("does the main job from ES modules", () => {
      expect(JSON.parse(printed("job.mjs", `${jobImports()}\n${print}`))).toEqual(answers);
    });

    it("does the main job from CommonJS", () => {
      const loaded = ["veladis", "veladis/severity", "veladis/protection"].map((entry) => `...require("${entry}")`);
      const code = `const result = (${job})({ ${loaded.join(", ")} });\n${print}`;
      expect(JSON.parse(printed("job.cjs", code))).toEqual(answers);
    });

    it("does the main job in a worker thread", () => {
      consumer.write(
        "thread.mjs",
        `import { parentPort } from "node:worker_threads";\n${jobImports()}\nparentPort.postMessage(result);`,
      );
      const code = `import { Worker } from "node:worker_threads";
        const worker = new Worker(new URL("./thread.mjs", import.meta.url));
        worker.once("message", (result) => { ${print} });`;
      expect(JSON.parse(printed("main.mjs", code))).toEqual(answers);
    });

    it("loads every entry both ways", () => {
      const list = JSON.stringify(entryNames);
      // a dollar in front marks what no version promises: as an ES module alone
      const count = (load: string): string =>
        `let names = 0; for (const name of ${list}) names += Object.keys(${load}(name)).filter((one) => one[0] !== "$").length; console.log(names);`;
      const esm = printed("all.mjs", count("await import"));
      expect(Number(esm)).toBeGreaterThan(100);
      expect(printed("all.cjs", count("require"))).toBe(esm);
    });

    it.skipIf(!existsSync("/usr/bin/script"))("opens the calculator, whose lines may go on", async () => {
      expect(await shown(binary.path, ["rss(2.1 mm/s rms,\r", "0.8 mm/s rms)\r", "exit\r"])).toContain("2.25 mm/s rms");
    });

    it("runs the command: a line, an expression, a judgement, a trip", () => {
      expect(command(["0.25 in/s pk at 1500 r/min to mm/s rms"])).toBe(
        "0.25 in/s pk at 1500 r/min = 4.49 mm/s rms  (sine)\n",
      );
      expect(command([], "(2 mm/s rms + 1 mm/s rms) * 2\n")).toBe(
        "6.00 mm/s rms  (one frequency, in phase; root sum of squares 4.47)\n",
      );
      expect(command(["judge", "4.6 mm/s rms", "--machine", "motor 355 mm rigid"])).toContain("zone C");
      consumer.write("levels.csv", "level\n4\n4\n9\n9\n4\n8\n8\n8\n8\n4\n");
      const history = ["--file", "levels.csv", "--column", "level", "--every", "1", "--from", "mm/s rms"];
      const settings = ["--threshold", "7.1 mm/s rms", "--hysteresis", "5 %", "--delay", "3"];
      const kinds = ["--timer-resets", "threshold", "--non-latching"];
      // the account of the rows stands on standard error
      expect(command(["simulate", ...history, ...settings, ...kinds], "", false)).toMatch(
        /^ +8 +trip .*\n +9 +clear /m,
      );
    });
  });
}
