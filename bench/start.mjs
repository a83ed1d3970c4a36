// Start: import of the built core, and the one-line command, above an empty node.
import { spawn, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { bestOf, finish, report } from "./measure.mjs";

const dist = fileURLToPath(new URL("../dist/", import.meta.url));
const node =
  (...args) =>
  () => {
    const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
    if (status !== 0) throw new Error(stderr);
  };

/** Milliseconds until a script on a pseudo-terminal shows its prompt. */
const untilPrompt = (path) =>
  new Promise((resolve, reject) => {
    const start = process.hrtime.bigint();
    const child = spawn("script", ["-qec", `"${process.execPath}" "${path}"`, "/dev/null"], {
      env: { ...process.env, VELADIS_HISTORY: "" },
    });
    child.on("error", reject);
    child.stdout.on("data", (text) => {
      if (!String(text).includes("> ")) return;
      resolve(Number(process.hrtime.bigint() - start) / 1e6);
      child.kill("SIGKILL");
    });
  });

// Milliseconds: an operation is a million nanoseconds.
const best = bestOf(
  {
    emptyFile: [1e6, node(fileURLToPath(new URL("./empty.js", import.meta.url)))],
    command: [1e6, node(`${dist}cli.js`, "0.25 in/s pk at 1500 r/min to mm/s rms")],
  },
  40,
);

/** Median of the differences of two runs taken one after the other, in milliseconds: steadier than one of minima. */
function above(run, empty, rounds = 60) {
  const timed = (one) => {
    const start = process.hrtime.bigint();
    one();
    return Number(process.hrtime.bigint() - start) / 1e6;
  };
  const differences = Array.from({ length: rounds }, () => -timed(empty) + timed(run));
  return differences.sort((a, b) => a - b)[rounds >> 1];
}

const importCore = node("--input-type=module", "-e", `import ${JSON.stringify(`${dist}index.js`)}`);
// an empty file of the same package and kind costs the loader of modules its share; what our code adds is the rest
const empty = new URL("./empty.js", import.meta.url).href;
const importEmpty = node("--input-type=module", "-e", `import ${JSON.stringify(empty)}`);
report("import of the core above the import of an empty file", above(importCore, importEmpty), 2, "ms");
const requireCore = node("-e", `require(${JSON.stringify(`${dist}index.cjs`)})`);
report("require of the core above an empty node", above(requireCore, node("-e", "")), 5, "ms");
report("one-line command over an empty node", best.command / best.emptyFile, 1.6, "x");
const prompt = { empty: Number.POSITIVE_INFINITY, calculator: Number.POSITIVE_INFINITY };
for (let round = 0; round < 25; round++) {
  prompt.empty = Math.min(prompt.empty, await untilPrompt(fileURLToPath(new URL("./prompt.mjs", import.meta.url))));
  prompt.calculator = Math.min(prompt.calculator, await untilPrompt(`${dist}cli.js`));
}
report("prompt of the calculator over that of an empty node", prompt.calculator / prompt.empty, 1.7, "x");
console.log(`      empty node ${best.emptyFile.toFixed(1)} ms, one-line command ${best.command.toFixed(1)} ms`);
finish("Start");
