// `npm run mutation`: every group in turn, and the score of all together.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { names } from "./groups.mjs";

const counts = {};
for (const group of names) {
  const { status } = spawnSync("stryker", ["run", "test/mutation/stryker.config.mjs", ...process.argv.slice(2)], {
    stdio: "inherit",
    shell: true,
    env: { ...process.env, MUTATION_GROUP: group },
  });
  if (status !== 0) process.exitCode = 1;
  const { files } = JSON.parse(readFileSync(`reports/mutation/${group}.json`, "utf8"));
  for (const { status: outcome } of Object.values(files).flatMap(({ mutants }) => mutants)) {
    counts[outcome] = (counts[outcome] ?? 0) + 1;
  }
}
const { Killed = 0, Timeout = 0, Survived = 0, NoCoverage = 0 } = counts;
const found = Killed + Timeout;
console.log(counts);
console.log(`score ${((100 * found) / (found + Survived + NoCoverage)).toFixed(2)} %`);
