/** Mutation testing of the pure floors: `npm run mutation`. Takes about an hour on two cores; not part of `npm test`. */
export default {
  testRunner: "vitest",
  vitest: { configFile: "test/mutation/vitest.config.ts", related: true },
  coverageAnalysis: "perTest",
  mutate: [
    "src/{core,units,detectors,frequency,amplitude,severity,protection,verification}/*.ts",
    // lists of exports and of types hold nothing to mutate
    "!src/*/index.ts",
  ],
  ignorePatterns: ["/site", "/dist", "/reports", "/coverage"],
  // a value built on import is a table or a lookup made of one: tables are held against copies keyed by hand
  ignoreStatic: true,
  incremental: process.env.CI === undefined,
  incrementalFile: "reports/mutation/incremental.json",
  htmlReporter: { fileName: "reports/mutation/index.html" },
  jsonReporter: { fileName: "reports/mutation/mutants.json" },
  reporters: ["clear-text", "html", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: false },
  concurrency: 2,
  timeoutMS: 10_000,
  thresholds: { high: 95, low: 90, break: 90 },
};
