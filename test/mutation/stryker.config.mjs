import { floors } from "./groups.mjs";

const group = process.env.MUTATION_GROUP ?? "amplitudes";

/** Mutation testing of one group of pure floors; `npm run mutation` runs all groups. */
export default {
  testRunner: "vitest",
  vitest: { configFile: "test/mutation/vitest.config.mjs", related: false },
  coverageAnalysis: "perTest",
  // lists of exports hold nothing to mutate
  mutate: [`src/{${floors().join(",")},none}/*.ts`, "!src/*/index.ts"],
  ignorePatterns: ["/.stryker-tmp", "/site", "/dist", "/reports", "/coverage"],
  // a value built on import is a table or a lookup made of one: tables are held against copies keyed by hand
  ignoreStatic: true,
  incremental: true,
  incrementalFile: `reports/mutation/${group}.incremental.json`,
  htmlReporter: { fileName: `reports/mutation/${group}.html` },
  jsonReporter: { fileName: `reports/mutation/${group}.json` },
  reporters: ["progress-append-only", "clear-text", "html", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: false },
  tempDirName: `.stryker-tmp/${group}`,
  concurrency: 2,
  timeoutMS: 5000,
  thresholds: { high: 95, low: 90, break: 90 },
};
