import { group, name } from "./groups.mjs";

/** Mutation testing of one group of the pure floors; `npm run mutation` runs all groups. */
export default {
  testRunner: "vitest",
  vitest: { configFile: "test/mutation/vitest.config.mjs", related: false },
  coverageAnalysis: "perTest",
  mutate: group.mutate,
  ignorePatterns: ["/.stryker-tmp", "/site", "/dist", "/reports", "/coverage"],
  // a value built on import is a table or a lookup made of one: tables are held against copies keyed by hand
  ignoreStatic: true,
  incremental: true,
  incrementalFile: `reports/mutation/${name}.incremental.json`,
  htmlReporter: { fileName: `reports/mutation/${name}.html` },
  jsonReporter: { fileName: `reports/mutation/${name}.json` },
  reporters: ["progress-append-only", "clear-text", "html", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: false },
  tempDirName: `.stryker-tmp/${name}`,
  concurrency: 2,
  timeoutMS: 5000,
  thresholds: { high: 95, low: group.least, break: group.least },
};
