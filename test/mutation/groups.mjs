const floors = (names) => ({
  // lists of exports hold nothing to mutate
  mutate: [`src/{${names},none}/*.ts`, "!src/*/index.ts"],
  tests: [`test/{${names},none}/*.test.ts`],
});

/** Calls with arguments of no sense, to all that protects. */
const junk = "test/robustness/junk.test.ts";

const protection = floors("device,trip,setpoints,balance,verification");
const shocks = floors("shock");
const writing = floors("sql,report");
/** The texts of sheets and of SQL, read by their own tests; engines take too long to start for every mutant. */
const texts = [
  "test/sql/{expressions,written,wording,machines-written,machine-lists}.test.ts",
  "test/report/*.test.ts",
  "test/writing/sheets.test.ts",
];

/** A folder of the command, by the tests that hold it. */
const command = (folder, ...tests) => ({
  mutate: [`src/cli/${folder}/*.ts`],
  tests: tests.map((name) => `test/${name}.test.ts`),
  least: 95,
});

/** Without the two files that are a thread and its start: a mutant is switched on in one thread alone. */
const unthreaded = (group) => ({
  ...group,
  mutate: [...group.mutate, ...["parquet-worker", "started-thread"].map((name) => `!src/cli/parquet/${name}.ts`)],
});

/** What is mutated together, and the tests that hold it. */
const groups = {
  amplitudes: floors("core,units,detectors,frequency,reading,amplitude,vector"),
  severity: floors("severity"),
  protection: { ...protection, tests: [...protection.tests, junk] },
  // waveforms, sample by sample: too slow to be run for every mutant of the trip logic they end in
  shocks: { ...shocks, tests: [...shocks.tests, junk] },
  writing: { ...writing, tests: texts, least: 95 },
  // what is read from files, Parquet too, and what is made of it
  delimited: command(
    "delimited",
    "cli/{delimited,units}/*",
    "cli/{table,convert,inputs,whole-file,refused,decimal-words}",
  ),
  input: command(
    "input",
    "cli/{series,units}/*",
    "cli/{inputs,confirmed,convert,simulate,standard-input,refused,protection,check-files,decimal-words,machine-list}",
    "signal/command",
  ),
  parquet: unthreaded(command("parquet", "cli/parquet/*", "cli/{parquet*,table-sources,refused}")),
  table: command(
    "table",
    "cli/{table,units}/*",
    "cli/{table,table-rows,table-sources,table-outputs,confirmed,whole-file,outputs-settled,uncertain,explain,decimal-words,parquet,refused}",
    "severity/background",
  ),
};

export const names = Object.keys(groups);

/** The name of this run's group, told by the environment. */
export const name = process.env.MUTATION_GROUP ?? "amplitudes";

/** The group of this run; `least` is the score that it must reach, in per cent. */
export const group = { least: 90, ...groups[name] };
