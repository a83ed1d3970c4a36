import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { group } from "./groups.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The tests that hold the pure floors, in one process, with short property tests: each mutant runs them anew. */
export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^veladis$/, replacement: `${root}src/index.ts` },
      { find: /^veladis\/([a-z]+)$/, replacement: `${root}src/entries/$1.ts` },
      { find: "../parquet/parquet-rows", replacement: `${root}test/mutation/same-thread.ts` },
      { find: /^fast-check$/, replacement: `${root}test/mutation/short-properties.ts` },
    ],
  },
  test: {
    include: group.tests,
    // the arithmetic is held without loading mathjs for every mutant, the pure floors without the command, and the
    // command without megabytes, threads and a test that moves this computer to another time zone
    exclude: [
      ...["test/amplitude/mathjs.test.ts", "test/severity/commands.test.ts", "test/severity/counts.test.ts"],
      ...[
        "test/cli/series/time-zone.test.ts",
        "test/cli/parquet-thread.test.ts",
        "test/cli/delimited/long-rows.test.ts",
      ],
    ],
    // the pure floors are loaded by their tests
    setupFiles: group.mutate[0].startsWith("src/cli/") ? ["test/mutation/loaded.ts"] : [],
    testTimeout: 60_000,
    isolate: false,
  },
});
