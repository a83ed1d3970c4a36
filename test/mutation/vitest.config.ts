import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The tests that hold the pure floors, in one process, with short property tests: each mutant runs them anew. */
export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^veladis$/, replacement: `${root}src/index.ts` },
      { find: /^veladis\/([a-z]+)$/, replacement: `${root}src/entries/$1.ts` },
      { find: /^fast-check$/, replacement: `${root}test/mutation/short-properties.ts` },
    ],
  },
  test: {
    include: ["test/{core,units,detectors,frequency,amplitude,severity,protection,verification}/*.test.ts"],
    testTimeout: 60_000,
  },
});
