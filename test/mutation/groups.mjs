const shocks = "{front-end,largest-below,largest-shock,longest-burst,shock,shock-immunity,time-above,unit-pulse}";

const floors = (names, ...except) => ({
  // lists of exports hold nothing to mutate
  mutate: [`src/{${names},none}/*.ts`, "!src/*/index.ts", ...except],
  tests: [`test/{${names},none}/*.test.ts`],
});

/** What is mutated together, and the tests that hold it. */
const groups = {
  amplitudes: floors("core,units,detectors,frequency,amplitude"),
  severity: floors("severity"),
  protection: floors("protection,verification", `!src/protection/${shocks}.ts`),
  // waveforms, sample by sample: too slow to be run for every mutant of the trip logic they end in
  shocks: {
    mutate: [`src/protection/${shocks}.ts`],
    tests: ["test/protection/{shock,shock-forms,wording,junk}.test.ts"],
  },
};

export const names = Object.keys(groups);

/** The name of this run's group, told by the environment. */
export const name = process.env.MUTATION_GROUP ?? "amplitudes";

export const group = groups[name];
